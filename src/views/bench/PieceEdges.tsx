import type { PieceDrawing } from '../../output';
import { Card } from '../parts';
import styles from './bench.module.css';
import { MarkPlusMinus } from './MarkPlusMinus';

/** Every mark of a piece's edges with its ±, the angles of its ends, notches, tapes and bracket lines. */
export function PieceEdges({ drawing }: { drawing: PieceDrawing }) {
  const features = [...drawing.notches, ...drawing.tapes, ...drawing.brackets];
  return (
    <Card title="Edges and marks">
      <p className={styles.about}>
        Number as on the template, from the piece’s own left and lower ends. Each ± holds 19 times in 20. A star: too
        uncertain to cut to the line; leave extra and scribe on dry fit.
      </p>
      {drawing.edges.map((edge) => (
        <section key={edge.name} className={styles.edge} aria-label={edge.title}>
          <h3>{edge.title}</h3>
          <p>
            <strong>{edge.methodWords}</strong>
            {edge.angles.map((angle) => `; ${angle}`)}
            {edge.leave && (
              <>
                ; <strong>{edge.leave}</strong>
              </>
            )}
          </p>
          <table className={styles.marks}>
            <thead>
              <tr>
                <th scope="col">Mark</th>
                <th scope="col">From left</th>
                <th scope="col">Up</th>
                <th scope="col">±</th>
              </tr>
            </thead>
            <tbody>
              {edge.marks.map((mark) => (
                <tr key={mark.number}>
                  <th scope="row">{mark.number}</th>
                  <td data-head="From left">
                    <strong>{mark.fromLeft.text}</strong>
                  </td>
                  <td data-head="Up">
                    <strong>{mark.up.text}</strong>
                  </td>
                  <td data-head="±">
                    <MarkPlusMinus mark={mark} />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      {features.length > 0 && (
        <section className={styles.edge} aria-label="Notches, tape and brackets">
          <h3>Notches, tape and brackets</h3>
          <ul className={styles.notes}>
            {features.map(({ lines }) => (
              <li key={lines.join()}>{lines.join(', ')}</li>
            ))}
          </ul>
        </section>
      )}
    </Card>
  );
}
