export { addressOf, goTo, type Place, placeOf, type SitePart, usePlace } from './place';
