export type { Alcove } from './alcove';
export { distance, insideCorner, type Place } from './corner';
export { type AlcoveModel, alcoveModel, type Parameter, type Unevenness } from './model';
export { type Beyond, restrained } from './restrained';
export { valuesOnly } from './valuesOnly';
