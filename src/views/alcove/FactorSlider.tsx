import { useId } from 'react';
import styles from './alcove.module.css';
import { mostExaggerated, useDrawing } from './drawing-store';

/** How many times further out of true the alcove is drawn than it is. */
export function FactorSlider({ label }: { label: string }) {
  const { factor, set } = useDrawing();
  const id = useId();
  return (
    <div className={styles.slider}>
      <label htmlFor={id}>
        {label} <strong>× {factor}</strong>
      </label>
      <input
        id={id}
        type="range"
        min={1}
        max={mostExaggerated}
        step={1}
        value={factor}
        aria-valuetext={factor === 1 ? 'as it is' : `${factor} times further out of true than it is`}
        onChange={({ target }) => set({ factor: target.valueAsNumber })}
      />
    </div>
  );
}
