import type { Point } from '../../../core';
import { useSession } from '../../../job';
import { Cross, RemoveButton, SidedField } from '../../parts';
import styles from '../bench.module.css';

interface PointRowsProps {
  list: 'profile' | 'apron';
  title: string;
  about: string;
  points: readonly Point[];
  /** the point to add after the last one; null where none fits */
  next: Point | null;
}

/** Offsets of a contour, a row a point. */
export function PointRows({ list, title, about, points, next }: PointRowsProps) {
  const { addTo, removeFrom } = useSession().draft.getState();
  const path = ['rim', list] as const;
  return (
    <section className={styles.edge} aria-label={title} data-rows>
      <h3>{title}</h3>
      <p className={styles.about}>{about}</p>
      <ol className={styles.rows}>
        {points.map((_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a point is nothing but its place on the line
          <li key={i} className={styles.pointRow} data-row>
            <span className={styles.pointNumber}>{i + 1}</span>
            <SidedField path={[...path, i, 0]} label={`${title}, point ${i + 1}: out`} sides={['out', 'back']} />
            <SidedField path={[...path, i, 1]} label={`${title}, point ${i + 1}: height`} sides={['up', 'down']} />
            <RemoveButton aria-label={`${title}: remove point ${i + 1}`} onRemove={() => removeFrom(path, i)}>
              <Cross />
            </RemoveButton>
          </li>
        ))}
      </ol>
      <div>
        <button type="button" data-adds disabled={next === null} onClick={() => addTo(path, next)}>
          Add a point<span className="unseen"> to: {title}</span>
        </button>
      </div>
    </section>
  );
}
