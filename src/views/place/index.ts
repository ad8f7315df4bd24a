export {
  addressOf,
  type BenchGroup,
  benchGroups,
  goTo,
  type Place,
  placeOf,
  type SitePart,
  usePlace,
  type VanPart,
} from './place';
