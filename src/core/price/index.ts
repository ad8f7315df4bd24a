export type { PriceGroup, PriceLine, PriceUnit } from './line';
export { editableMoney, minorDigits, moneyText, type ParsedMoney, parseMoney } from './money';
export { type Price, priceOf, ROUNDING_WORDS, type TaxLine } from './price';
export { priceAMetre, priceSold, type SoldLength, soldLength } from './soldLength';
