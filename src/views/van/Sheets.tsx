import type { Job, Result } from '../../core';
import { offcutWords, pieceTitle, placedWords, sizeWords, usedWords } from '../../output';
import { Card } from '../parts';
import { SheetPicture } from './SheetPicture';
import styles from './van.module.css';

/** What is cut from which sheet, and the offcuts worth keeping. */
export function Sheets({ job, result }: { job: Job; result: Result }) {
  const { sheets, unplaced } = result.layout;
  return (
    <Card title="Sheets">
      <p className={styles.about}>
        Seen from the face. Sizes are those to cut out roughly; each piece is then cut to its own template.{' '}
        {usedWords(result.layout)}
      </p>
      {unplaced.length > 0 && (
        <p>
          <strong>On no sheet:</strong> {unplaced.map((piece) => pieceTitle(piece, job, result)).join('; ')}.
        </p>
      )}
      {sheets.map((sheet, i) => {
        const title = `Sheet ${i + 1} of ${sheets.length}`;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a sheet is nothing but its place in the list
          <section key={i} className={styles.sheet} aria-label={title}>
            <h3>
              {title}: {sizeWords(sheet, job)}
            </h3>
            <div className={styles.sheetBody}>
              <SheetPicture sheet={sheet} title={title} />
              <div className={styles.legend}>
                <ol>
                  {sheet.placed.map((placed) => (
                    <li key={`${placed.piece} ${placed.part.number}`}>{placedWords(placed, job, result)}</li>
                  ))}
                </ol>
                <p className={styles.about}>{offcutWords(sheet, job)}</p>
              </div>
            </div>
          </section>
        );
      })}
    </Card>
  );
}
