import { formatLength, type Job, type Result } from '../../core';
import { adhesiveFigure, capital } from '../../output';
import { Card } from '../parts';
import { FigureView } from './FigureView';
import { typeSize } from './type-size';
import styles from './van.module.css';

/** Where adhesive and strips go behind each panel, and how much. */
export function Adhesive({ job, result }: { job: Job; result: Result }) {
  const { layout } = job.supplies.adhesive;
  const text = (mm: number) => formatLength(mm, { unit: job.display, denominator: 32 });
  return (
    <Card title="Adhesive layout">
      <p className={styles.about}>
        Seen facing each wall: {layout === 'dots' ? 'dots' : 'upright beads'}, and double-faced strips (dashed) that
        hold the panel meanwhile.
      </p>
      <FigureView figure={adhesiveFigure(job, result, typeSize(result))} />
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">Panel</th>
            <th scope="col">{layout === 'dots' ? 'Dots' : 'Beads'}</th>
            <th scope="col">Bed there</th>
            <th scope="col">Pressed</th>
            <th scope="col">Strips</th>
          </tr>
        </thead>
        <tbody>
          {(['back', 'left', 'right'] as const).map((name) => {
            const { dots, beads, bed, volume, strips } = result.materials.adhesive[name];
            return (
              <tr key={name}>
                <th scope="row">{capital(name)}</th>
                <td data-head={layout === 'dots' ? 'Dots' : 'Beads'}>{dots.length + beads.length}</td>
                <td data-head="Bed there">{bed === null ? '–' : rangeWords(text(bed.min), text(bed.max))}</td>
                <td data-head="Pressed">{Math.ceil(volume / 1000)} mL</td>
                <td data-head="Strips">{strips.length}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className={styles.about}>
        Where the bed is thicker, build the dots up so that they reach the wall. The adhesive’s own sheet goes first.
      </p>
    </Card>
  );
}

const rangeWords = (least: string, most: string): string => (least === most ? least : `${least} to ${most}`);
