import { useDraft } from '../../../job';
import { useLengths } from '../../parts';
import { type Active, inReadingOrder, type PlaceField, unreadIn, useSurvey, valueIn } from '../survey';
import styles from './entry.module.css';

/** The numbers of one place, in the order in which they are read: gaps from the top down as a column, or one by one. */
export function Fields({ active, fields }: { active: Active; fields: readonly PlaceField[] }) {
  const { entry } = useSurvey();
  const { job, typed } = useDraft(({ draft }) => draft);
  const lengths = useLengths();
  const { place } = active;
  const named = (field: PlaceField, i: number): string => {
    if (place.list === 'readings' && place.where.kind === 'plumb') {
      const height = place.where.gaps?.[i]?.height;
      if (height === undefined) return field.label;
      return Math.abs(height) < 1 ? 'level' : `${lengths.text(Math.abs(height))} ${height > 0 ? 'up' : 'down'}`;
    }
    return field.label;
  };
  const taken = ({ kind }: PlaceField, value: number | undefined): string =>
    value === undefined ? '–' : kind === 'degrees' ? `${value.toFixed(1)}°` : lengths.fine(value);
  const isColumn = place.list === 'readings' && place.where.kind === 'plumb';
  return (
    <ol className={styles.fields} data-column={isColumn || undefined} aria-label="Numbers of this place">
      {inReadingOrder(place, fields.length).map((i) => {
        const field = fields[i]!;
        const value = valueIn(job, place, field);
        const unread = unreadIn(typed, place, field);
        return (
          <li key={field.path.join('/')}>
            <button
              type="button"
              className={styles.field}
              data-field={i}
              aria-current={i === active.field || undefined}
              onClick={() => entry.getState().open(place, i)}
            >
              <span className={styles.fieldName}>{named(field, i)}</span>
              <strong>{unread === undefined ? taken(field, value) : unread || '–'}</strong>
            </button>
          </li>
        );
      })}
    </ol>
  );
}
