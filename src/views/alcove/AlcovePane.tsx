import { useState } from 'react';
import { useSessionState } from '../../job';
import { loaded, useLengths, useTouched } from '../parts';
import styles from './alcove.module.css';
import { DrawingControls } from './DrawingControls';
import { useDrawing } from './drawing-store';
import { FirstPicture } from './FirstPicture';
import { itemTitle } from './item-title';
import { useCalm } from './useCalm';

const AlcoveView = loaded(() => import('../../scene').then((scene) => scene.AlcoveView));

interface AlcovePaneProps {
  /** a panel by its name, or a piece by its id */
  picked: string | null;
  onPick: (item: string) => void;
}

/** The alcove in 3D with what sets how it is drawn. */
export function AlcovePane({ picked, onPick }: AlcovePaneProps) {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  const working = useSessionState((state) => state.working);
  const { factor, off, layers, tags, traced, tried } = useDrawing();
  const lengths = useLengths();
  const calm = useCalm();
  // The plain picture before that is not exaggerated and cannot be turned.
  const touched = useTouched();
  const [reset, setReset] = useState(0);
  const description =
    `The alcove as measured, drawn ${factor} times further out of true than it is` +
    `${picked === null ? '' : `, ${itemTitle(picked, result).toLowerCase()} picked`}. The figures beside it say the same in words.`;
  return (
    <section className={styles.pane} aria-label="The alcove in 3D">
      <div className={styles.stage} data-testid="alcove">
        {result && job ? (
          <FirstPicture {...{ result, job }}>
            {(instead) => (
              <AlcoveView
                {...{
                  result,
                  job,
                  factor,
                  off,
                  layers,
                  tags,
                  traced,
                  picked,
                  onPick,
                  description,
                  calm,
                  reset,
                  instead,
                }}
                dryFit={tried?.of === result ? tried.dryFit : null}
                lengthText={lengths.text}
              />
            )}
          </FirstPicture>
        ) : (
          <p className={styles.wait}>{working ? 'Working out the alcove…' : 'Nothing to draw yet.'}</p>
        )}
        {touched && (
          <>
            <p className={styles.scale}>{factor === 1 ? 'drawn true' : `out of true × ${factor}`}</p>
            <button type="button" className={styles.reset} onClick={() => setReset((count) => count + 1)}>
              First view
            </button>
          </>
        )}
      </div>
      <DrawingControls picked={picked} onPick={onPick} />
    </section>
  );
}
