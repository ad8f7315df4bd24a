export { addressOf, goTo, type Place, placeOf, type SitePart, usePlace, type VanPart } from './place';
