export {
  addressOf,
  type BenchGroup,
  type ClientPart,
  goTo,
  type Place,
  placeOf,
  type SitePart,
  usePlace,
  type VanPart,
} from './place';
