export {
  addressOf,
  type BenchGroup,
  benchGroups,
  type ClientPart,
  goTo,
  type Place,
  placeOf,
  type SitePart,
  usePlace,
  type VanPart,
} from './place';
