import { useId } from 'react';
import type { PanelName } from '../../core';
import type { Layer } from '../../scene';
import { Segments, Switch, useLengths } from '../parts';
import styles from './alcove.module.css';
import { furthestOff, useDrawing } from './drawing-store';
import { FactorSlider } from './FactorSlider';
import { panelOf, panelWords } from './panel-words';

interface DrawingControlsProps {
  /** a panel by its name, or a piece by its id */
  picked: string | null;
  onPick: (item: string) => void;
}

const layerWords: readonly (readonly [Layer, string])[] = [
  ['walls', 'Walls'],
  ['panels', 'Panels'],
  ['slivers', 'Slivers and gaps'],
  ['trim', 'Trim'],
  ['legs', 'Legs and fillers'],
  ['shelves', 'Shelves'],
];

/** What sets how the alcove is drawn, and which panel is picked. */
export function DrawingControls({ picked, onPick }: DrawingControlsProps) {
  const { off, layers, tags, set, show } = useDrawing();
  const lengths = useLengths();
  const id = useId();
  return (
    <div className={styles.controls}>
      <FactorSlider label="Out of true, drawn" />
      <div className={styles.pick}>
        <span aria-hidden="true">Pick a panel</span>
        <Segments<PanelName> label="Pick a panel" value={panelOf(picked)} choices={panelWords} onChoose={onPick} />
      </div>
      <details className={styles.rest}>
        <summary>More about the drawing</summary>
        <div className={styles.slider}>
          <label htmlFor={`${id}-off`}>
            Pieces drawn <strong>{off === 0 ? 'on the walls' : `${lengths.text(off)} off the walls`}</strong>
          </label>
          <input
            id={`${id}-off`}
            type="range"
            min={0}
            max={furthestOff}
            step={20}
            value={off}
            aria-valuetext={off === 0 ? 'on the walls' : `${lengths.text(off)} off the walls`}
            onChange={({ target }) => set({ off: target.valueAsNumber })}
          />
        </div>
        <div className={styles.row}>
          {layerWords.map(([layer, words]) => (
            <Switch key={layer} label={words} on={layers[layer]} onChange={(on) => show(layer, on)} />
          ))}
          <Switch label="Labels" on={tags} onChange={(on) => set({ tags: on })} />
        </div>
      </details>
    </div>
  );
}
