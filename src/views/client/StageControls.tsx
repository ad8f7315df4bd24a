import { useId } from 'react';
import { formatLength, MM_PER_INCH } from '../../core';
import type { Layers } from '../../scene';
import { Segments, Switch } from '../parts';
import styles from './client.module.css';
import { useStage, viewpointWords } from './stage-store';

const layerWords: readonly (readonly [keyof Layers, string])[] = [
  ['panels', 'Panels'],
  ['trim', 'Trim'],
  ['shelves', 'Shelves'],
  ['fixtures', 'Fixtures'],
  ['sealant', 'Sealant'],
];

interface StageControlsProps {
  unit: 'in' | 'mm';
  /** what figures can be shown; none where several sides are seen */
  figures: 'dimensions' | 'leans' | null;
  /** the layers of what is finished can be switched */
  finished: boolean;
}

/** Where one stands, how tall one is, and what is shown. */
export function StageControls({ unit, figures, finished }: StageControlsProps) {
  const id = useId();
  const { viewpoint, person, layers, dimensions, leans, asked, set } = useStage();
  const tall =
    unit === 'in'
      ? formatLength(MM_PER_INCH * Math.round(person / MM_PER_INCH), { unit, feet: true })
      : `${person / 10} cm`;
  return (
    <div className={styles.controls}>
      <Segments
        label="Seen"
        value={viewpoint}
        choices={viewpointWords}
        onChoose={(chosen) => set({ viewpoint: chosen, asked: asked + 1 })}
      />
      <button type="button" onClick={() => set({ asked: asked + 1 })}>
        First view
      </button>
      {viewpoint !== 'tub' && (
        <div className={styles.slider}>
          <label htmlFor={id}>
            By a person <strong>{tall}</strong> tall
          </label>
          <input
            id={id}
            type="range"
            min={1000}
            max={2050}
            step={10}
            value={person}
            aria-valuetext={tall}
            onChange={({ target }) => set({ person: target.valueAsNumber })}
          />
        </div>
      )}
      <div className={styles.switches}>
        {finished &&
          layerWords.map(([layer, words]) => (
            <Switch
              key={layer}
              label={words}
              on={layers[layer]}
              onChange={(on) => set({ layers: { ...layers, [layer]: on } })}
            />
          ))}
        {figures === 'dimensions' && (
          <Switch label="Dimensions" on={dimensions} onChange={(on) => set({ dimensions: on })} />
        )}
        {figures === 'leans' && <Switch label="Out of plumb" on={leans} onChange={(on) => set({ leans: on })} />}
      </div>
    </div>
  );
}
