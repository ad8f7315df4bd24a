import { useId, useState } from 'react';
import { fieldKey, useDraft, useSession } from '../../../job';
import { useLengths } from '../../parts';
import styles from './contour.module.css';
import { gaugeText } from './gauge-text';
import { useContour } from './use-contour';

const path = ['rim', 'gauge'];

/** A contour gauge's line as numbers, typed or pasted. */
export function GaugeForm() {
  const id = useId();
  const text = useDraft(({ draft }) => draft.typed[fieldKey(path)] ?? '');
  const { jot, leave } = useSession().draft.getState();
  const { unit } = useLengths();
  const take = useContour();
  const [fault, setFault] = useState<string | null>(null);
  const use = () => {
    const read = gaugeText(text, unit);
    setFault(read.ok ? take(read.points) : read.message);
  };
  const example = unit === 'in' ? ['0; 0', '1/2; -1/16', '1 3/8; -5/8'] : ['0; 0', '12; -1.5', '35; -16'];
  return (
    <div className={styles.gauge}>
      <label htmlFor={id}>
        From a contour gauge: a point a line, how far out, then how far up (down with a minus), from where the rim
        leaves its plane to the floor
      </label>
      <textarea
        id={id}
        rows={5}
        value={text}
        placeholder={example.join('\n')}
        spellCheck={false}
        aria-invalid={fault !== null}
        aria-describedby={fault === null ? undefined : `${id}-fault`}
        onChange={({ target }) => {
          setFault(null);
          jot(path, target.value);
        }}
        onBlur={leave}
      />
      {fault !== null && (
        <p id={`${id}-fault`} className={styles.fault} role="alert">
          {fault}
        </p>
      )}
      <div>
        <button type="button" disabled={text.trim() === ''} onClick={use}>
          Use these points
        </button>
      </div>
    </div>
  );
}
