import { useId, useState } from 'react';
import { LABEL_NAMES, parseLength } from '../../../core';
import { pointsInBox, type Range } from '../../../scan';
import { useLengths } from '../../parts';
import styles from './scan.module.css';
import { type Sorted, useScan } from './scan-store';

const axes = ['Across, right of the middle', 'Height above the level line', 'Out from the back wall'] as const;

/** Picks the points of a box, told by numbers; an empty field leaves its side open. */
export function PickByPlace({ positions, labels }: Sorted) {
  const id = useId();
  const { unit } = useLengths();
  const [texts, setTexts] = useState<string[]>(() => new Array<string>(6).fill(''));
  const [fault, setFault] = useState<string | null>(null);
  const pickBox = () => {
    const values = texts.map((text) => (text.trim() === '' ? null : parseLength(text, unit)));
    const bad = values.findIndex((value) => value !== null && !value.ok);
    if (bad >= 0) {
      const value = values[bad];
      setFault(
        `${axes[Math.floor(bad / 2)]}, ${bad % 2 === 0 ? 'from' : 'to'}: ${value && !value.ok ? value.message : ''}`,
      );
      return;
    }
    const ends = values.map((value) => (value?.ok ? value.mm : null));
    const ranges = [0, 1, 2].map((axis): Range => [ends[2 * axis]!, ends[2 * axis + 1]!]) as [Range, Range, Range];
    const { visible, pick } = useScan.getState();
    const points = pointsInBox(positions, ranges, (point) => visible.has(LABEL_NAMES[labels[point]!]!));
    setFault(points.length === 0 ? 'No point in sight lies there.' : null);
    pick({ points, how: 'by place' });
  };
  return (
    <div className={styles.place}>
      {axes.map((axis, i) => (
        <fieldset key={axis} className={styles.range}>
          <legend>{axis}</legend>
          {(['from', 'to'] as const).map((end, k) => (
            <label key={end} htmlFor={`${id}-${i}-${end}`}>
              {end}
              <input
                id={`${id}-${i}-${end}`}
                inputMode="text"
                autoComplete="off"
                placeholder="open"
                value={texts[2 * i + k]}
                onChange={({ target }) => setTexts(texts.with(2 * i + k, target.value))}
              />
              <span aria-hidden="true">{unit}</span>
            </label>
          ))}
        </fieldset>
      ))}
      {fault && <p className={styles.fault}>{fault}</p>}
      <button type="button" onClick={pickBox}>
        Pick these
      </button>
    </div>
  );
}
