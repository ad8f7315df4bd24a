import type { PanelDrawing } from '../../output';
import { Card } from '../parts';
import styles from './bench.module.css';
import { MarkPlusMinus } from './MarkPlusMinus';

/** Every mark of every edge, with its ±, what to cut off there and how. */
export function Edges({ drawing }: { drawing: PanelDrawing }) {
  return (
    <Card title="Edges and marks">
      <p className={styles.about}>
        Number as on the template. Each ± holds 19 times in 20. A star: too uncertain to cut to the line; leave extra
        and scribe on dry fit.
      </p>
      {drawing.edges.map((edge) => (
        <section key={edge.name} className={styles.edge} aria-label={edge.title}>
          <h3>{edge.title}</h3>
          <p>
            <strong>{edge.methodWords}</strong>; {edge.sliverWords}
            {edge.leave && (
              <>
                ; <strong>{edge.leave.words}</strong>
              </>
            )}
          </p>
          {edge.marks.length > 0 && (
            <table className={styles.marks}>
              <thead>
                <tr>
                  <th scope="col">Mark</th>
                  <th scope="col">From the control line</th>
                  <th scope="col">±</th>
                  <th scope="col">Along the edge</th>
                  <th scope="col">Strip</th>
                </tr>
              </thead>
              <tbody>
                {edge.marks.map((mark) => (
                  <tr key={mark.number}>
                    <th scope="row">{mark.number}</th>
                    <td data-head="From the control line">
                      <strong>{mark.acrossWords}</strong>
                    </td>
                    <td data-head="±">
                      <MarkPlusMinus mark={mark} />
                    </td>
                    <td data-head="Along the edge">{mark.alongWords}</td>
                    <td data-head="Strip">{mark.sliverWords}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          )}
        </section>
      ))}
    </Card>
  );
}
