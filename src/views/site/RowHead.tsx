import { Cross, RemoveButton } from '../parts';
import rows from './rows.module.css';

/** Name of a fixture or stud with what removes it. */
export function RowHead({ name, onRemove }: { name: string; onRemove: () => void }) {
  return (
    <div className={rows.foot}>
      <p className={rows.fixtureName}>{name}</p>
      <RemoveButton className={rows.more} aria-label={`Remove ${name}`} onRemove={onRemove}>
        <Cross />
      </RemoveButton>
    </div>
  );
}
