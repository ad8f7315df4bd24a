import type { ReactNode } from 'react';
import styles from './scene.module.css';

interface NoDrawingProps {
  sentence: string;
  /** a flat picture below the sentence */
  instead?: ReactNode;
  again?: (() => void) | undefined;
}

/** What stands in the place of a drawing that cannot be shown. */
export function NoDrawing({ sentence, instead, again }: NoDrawingProps) {
  return (
    <div className={styles.noDrawing} data-flat={instead !== undefined || undefined}>
      {instead}
      <div role="status">
        <p>{sentence}</p>
        {again && (
          <button type="button" onClick={again}>
            Draw it again
          </button>
        )}
      </div>
    </div>
  );
}
