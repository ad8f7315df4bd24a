import styles from './scene.module.css';

/** What stands in the place of a drawing that cannot be shown. */
export function NoDrawing({ sentence, again }: { sentence: string; again?: () => void }) {
  return (
    <div className={styles.noDrawing} role="status">
      <p>{sentence}</p>
      {again && (
        <button type="button" onClick={again}>
          Draw it again
        </button>
      )}
    </div>
  );
}
