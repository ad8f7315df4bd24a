export { planSheets } from './planSheets';
export type { PlacedPiece, Rectangle, SheetInUse, SheetLayout } from './sheetLayout';
