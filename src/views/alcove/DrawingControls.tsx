import { useId } from 'react';
import type { PanelName } from '../../core';
import { Segments, Switch, useLengths } from '../parts';
import styles from './alcove.module.css';
import { furthestOff, mostExaggerated, useDrawing } from './drawing-store';
import { panelWords } from './panel-words';

interface DrawingControlsProps {
  picked: PanelName | null;
  onPick: (panel: PanelName) => void;
}

/** What sets how the alcove is drawn, and which panel is picked. */
export function DrawingControls({ picked, onPick }: DrawingControlsProps) {
  const { factor, off, showPanels, tags, set } = useDrawing();
  const lengths = useLengths();
  const id = useId();
  return (
    <div className={styles.controls}>
      <div className={styles.slider}>
        <label htmlFor={`${id}-factor`}>
          Out of true, drawn <strong>× {factor}</strong>
        </label>
        <input
          id={`${id}-factor`}
          type="range"
          min={1}
          max={mostExaggerated}
          step={1}
          value={factor}
          aria-valuetext={factor === 1 ? 'as it is' : `${factor} times further out of true than it is`}
          onChange={({ target }) => set({ factor: target.valueAsNumber })}
        />
      </div>
      <div className={styles.pick}>
        <span aria-hidden="true">Pick a panel</span>
        <Segments label="Pick a panel" value={picked} choices={panelWords} onChoose={onPick} />
      </div>
      <details className={styles.rest}>
        <summary>More about the drawing</summary>
        <div className={styles.slider}>
          <label htmlFor={`${id}-off`}>
            Panels drawn <strong>{off === 0 ? 'on the walls' : `${lengths.text(off)} off the walls`}</strong>
          </label>
          <input
            id={`${id}-off`}
            type="range"
            min={0}
            max={furthestOff}
            step={20}
            value={off}
            disabled={!showPanels}
            aria-valuetext={off === 0 ? 'on the walls' : `${lengths.text(off)} off the walls`}
            onChange={({ target }) => set({ off: target.valueAsNumber })}
          />
        </div>
        <div className={styles.row}>
          <Switch label="Panels" on={showPanels} onChange={(on) => set({ showPanels: on })} />
          <Switch label="Labels" on={tags} onChange={(on) => set({ tags: on })} />
        </div>
      </details>
    </div>
  );
}
