export { shoppingListCsv } from './shoppingListCsv';
