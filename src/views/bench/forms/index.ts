export { CuttingForm } from './CuttingForm';
export { LegForm } from './LegForm';
export { ShelfForm } from './ShelfForm';
export { StockForm } from './StockForm';
export { TrimForm } from './TrimForm';
