import { Cross } from '../parts';
import rows from './rows.module.css';

/** Name of a fixture or stud with what removes it. */
export function RowHead({ name, onRemove }: { name: string; onRemove: () => void }) {
  return (
    <div className={rows.foot}>
      <p className={rows.fixtureName}>{name}</p>
      <button type="button" className={rows.more} aria-label={`Remove ${name}`} onClick={onRemove}>
        <Cross />
      </button>
    </div>
  );
}
