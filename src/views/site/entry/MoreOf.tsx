import { editableLength } from '../../../core';
import { historyAt, useDraft, useSession } from '../../../job';
import { useLengths } from '../../parts';
import { ReadingRest, RepeatWords, Sentence } from '../readings';
import { type Active, fieldsOf, pathOf, useSurvey } from '../survey';
import styles from './entry.module.css';
import { Photos } from './Photos';

/** What else there is to a reading: taken again, earlier values, note, where it was taken, left out. */
export function MoreOf({ active }: { active: Active }) {
  const { place } = active;
  const reading = useDraft(({ draft }) =>
    place.list === 'readings' && place.id !== null ? draft.job.readings.find(({ id }) => id === place.id) : undefined,
  );
  const { entry } = useSurvey();
  const { addPlaced } = useSession().draft.getState();
  if (!reading) return null;
  const again = () => {
    if (reading.kind === 'plumb') {
      const { id: _, note: __, photos: ___, off: ____, ...where } = reading;
      const gaps = (where.gaps ?? []).map(({ height }) => ({ height: height ?? 0 }));
      const id = addPlaced({ ...where, wall: where.wall ?? 'back', at: where.at ?? 0, gaps });
      const next = { ...reading, id, gaps };
      entry.getState().open({ key: `readings/${id}`, list: 'readings', id, where: next, times: 1 }, 0);
      return;
    }
    const times = 2 + (reading.repeats?.length ?? 0);
    entry.getState().open({ ...place, where: reading, times } as typeof place, times - 1);
  };
  const canRepeat = reading.kind === 'plumb' || reading.value !== undefined;
  return (
    <details className={styles.more}>
      <summary>More about this reading</summary>
      <div className={styles.moreBody}>
        <div className={styles.row}>
          <button type="button" disabled={!canRepeat} onClick={again}>
            {reading.kind === 'plumb' ? 'Hang the line again' : 'Take it again'}
          </button>
        </div>
        <RepeatWords reading={reading} />
        <History active={active} />
        <Photos reading={reading} />
        <Sentence reading={reading} />
        <ReadingRest reading={reading} />
      </div>
    </details>
  );
}

/** The values that stood here before, each to be brought back. */
function History({ active }: { active: Active }) {
  const { place, field } = active;
  const of = fieldsOf(place)[field];
  const path = of ? pathOf(place, of) : null;
  const job = useDraft(({ draft }) => draft.job);
  const { entry } = useSurvey();
  const lengths = useLengths();
  if (!of || path === null || path.at(-1) !== 'value') return null;
  const history = historyAt(job, path);
  if (history.length === 0) return null;
  return (
    <div>
      <h3>Earlier values</h3>
      <ul className={styles.history}>
        {[...history].reverse().map(({ value, until }) => (
          <li key={until}>
            <span>
              <strong>{of.kind === 'degrees' ? `${value.toFixed(1)}°` : lengths.fine(value)}</strong> until{' '}
              <time dateTime={until}>
                {new Date(until).toLocaleString([], { dateStyle: 'short', timeStyle: 'short' })}
              </time>
            </span>
            <button
              type="button"
              onClick={() => {
                entry.getState().open(place, field);
                entry.getState().put({
                  text: of.kind === 'length' ? editableLength(value, job.display) : String(value),
                  fresh: true,
                });
              }}
            >
              Bring back
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
