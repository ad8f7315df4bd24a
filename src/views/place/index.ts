export { guideFor } from './guideFor';
export {
  addressOf,
  type BenchGroup,
  type ClientPart,
  type GuideName,
  goTo,
  guideNames,
  type Place,
  placeOf,
  type SitePart,
  usePlace,
  type VanPart,
} from './place';
