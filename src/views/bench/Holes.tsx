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
            <th scope="col">Centre from the plumb datum</th>
            <th scope="col">Centre from the level line</th>
            <th scope="col">Taken from</th>
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
              <td data-head="From the plumb datum">
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
            </tr>
          ))}
        </tbody>
      </table>
    </Card>
  );
}
