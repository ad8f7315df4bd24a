import { formatPlusMinus, type Job, type Piece, type Result } from '../../core';
import { capital } from '../../output';
import { Card, lengthsIn } from '../parts';
import styles from './van.module.css';

const groups = [
  ['trim', 'Trim'],
  ['legs', 'Legs'],
  ['shelves', 'Shelves'],
  ['fillers', 'Fillers'],
] as const;

/** Every piece beside the panels with its size, ± and what to mind. */
export function Pieces({ job, result }: { job: Job; result: Result }) {
  const shown = groups.filter(([name]) => result.pieces[name].length > 0);
  return (
    <Card title="Pieces">
      {shown.length === 0 && <p>This job has no trim, legs or shelves.</p>}
      {shown.length > 0 && <p className={styles.about}>Each ± is the widest of the piece and holds 19 times in 20.</p>}
      {shown.map(([name, title]) => (
        <section key={name} className={styles.column} aria-label={title}>
          <h3>{title}</h3>
          <PieceTable pieces={result.pieces[name]} job={job} />
        </section>
      ))}
    </Card>
  );
}

function PieceTable({ pieces, job }: { pieces: Piece[]; job: Job }) {
  const { fine, text, unit } = lengthsIn(job.display);
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">Piece</th>
          <th scope="col">Length</th>
          <th scope="col">Width</th>
          <th scope="col">±</th>
          <th scope="col">Cut from</th>
        </tr>
      </thead>
      <tbody>
        {pieces.map((piece) => (
          <tr key={piece.id}>
            <th scope="row">
              {capital(piece.name)}
              {piece.notes.map((note) => (
                <p key={note.text} className={styles.note}>
                  {capital(note.text)}
                  {note.howMuch !== null && `: ${text(note.howMuch)}`}
                </p>
              ))}
            </th>
            <td data-head="Length">
              <strong>{fine(piece.size.along)}</strong>
            </td>
            <td data-head="Width">{fine(piece.size.across)}</td>
            <td data-head="Within">{formatPlusMinus(piece.worst95, { unit, denominator: 32 })}</td>
            <td data-head="Cut from">{piece.stock.replace('-', ' ')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
