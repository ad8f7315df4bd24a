import type { PanelDrawing } from '../../output';
import { Card } from '../parts';
import styles from './bench.module.css';

/** Where each hole goes on the panel. */
export function Holes({ drawing }: { drawing: PanelDrawing }) {
  if (drawing.holes.length === 0) return null;
  return (
    <Card title="Holes">
      <table className={styles.marks}>
        <thead>
          <tr>
            <th scope="col">Hole</th>
            <th scope="col">Across</th>
            <th scope="col">Centre from the plumb line</th>
            <th scope="col">Centre from the level line</th>
            <th scope="col">Taken from</th>
            <th scope="col">Cut with</th>
          </tr>
        </thead>
        <tbody>
          {drawing.holes.map((hole) => (
            <tr key={hole.id}>
              <th scope="row">
                {hole.id}
                {hole.kind !== hole.id && <span className={styles.holeKind}> {hole.kind}</span>}
              </th>
              <td data-head="Across" className={styles.whole}>
                Ø {hole.diameter.text}
              </td>
              <td data-head="From the plumb line">
                <strong>
                  {hole.fromDatum.text} {hole.side.across}
                </strong>{' '}
                {hole.plusMinus.across.text}
              </td>
              <td data-head="From the level line">
                <strong>
                  {hole.fromLevel.text} {hole.side.up}
                </strong>{' '}
                {hole.plusMinus.up.text}
              </td>
              <td data-head="Taken from">
                {hole.aboveRimWords}, {hole.fromWords}
              </td>
              <td data-head="Cut with">{hole.toolWords}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Advice drawing={drawing} />
    </Card>
  );
}

/** What published clauses and common practice say of where the fixtures are. */
function Advice({ drawing }: { drawing: PanelDrawing }) {
  const told = drawing.holes.flatMap(({ id, advice }) => advice.map((words) => ({ id, words })));
  if (told.length === 0) return null;
  return (
    <section aria-label="Advice on the holes">
      <h3>Advice</h3>
      <ul>
        {told.map(({ id, words }) => (
          <li key={id + words}>
            <strong>{id}:</strong> {words}
          </li>
        ))}
      </ul>
    </section>
  );
}
