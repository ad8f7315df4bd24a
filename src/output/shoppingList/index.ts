export { amountText, shoppingListCsv } from './shoppingListCsv';
