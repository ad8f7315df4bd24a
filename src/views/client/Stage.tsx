import { useMemo, useState } from 'react';
import type { Photographer, Side } from '../../scene';
import { FirstPicture, useCalm } from '../alcove';
import { lengthsIn, loaded, useTouched } from '../parts';
import styles from './client.module.css';
import { useStage } from './stage-store';

const FinishedView = loaded(() => import('../../scene').then((scene) => scene.FinishedView));

interface StageProps {
  sides: readonly Side[];
  /** divided by a line that can be moved, instead of side by side */
  wiped: boolean;
  description: string;
  onPhotographer?: (photographer: Photographer | null) => void;
}

const nobody = () => undefined;

/** The finished alcove in 3D, or several sides of it; a drawing in lines until somebody touches the page. */
export function Stage({ sides, wiped, description, onPhotographer = nobody }: StageProps) {
  const touched = useTouched();
  const calm = useCalm();
  const { viewpoint, person, layers, dimensions, leans, asked } = useStage();
  const [wipe, setWipe] = useState(50);
  const { job, result, bare } = sides[0]!;
  const lengths = useMemo(() => lengthsIn(job.display), [job.display]);
  return (
    <div className={styles.stage} data-testid="finished" data-count={sides.length} data-wiped={wiped || undefined}>
      <FirstPicture {...{ job, result }}>
        {(instead) => (
          <FinishedView
            {...{ sides, layers, viewpoint, person, calm, description, onPhotographer, instead }}
            wipe={wiped && sides.length === 2 ? wipe / 100 : null}
            reset={asked}
            figures={sides.length === 1 && (bare ? leans : dimensions) ? lengths : null}
          />
        )}
      </FirstPicture>
      {wiped && sides.length === 2 && touched && (
        <>
          <div className={styles.wipeLine} style={{ left: `${wipe}%` }} aria-hidden="true" />
          <input
            className={styles.wipe}
            type="range"
            min={0}
            max={100}
            value={wipe}
            aria-label={`Line between ${sides[0]!.name} and ${sides[1]!.name}`}
            aria-valuetext={`${wipe} % ${sides[0]!.name}`}
            onChange={({ target }) => setWipe(target.valueAsNumber)}
          />
        </>
      )}
    </div>
  );
}
