import type { CSSProperties } from 'react';
import type { Job, Panel } from '../../core';
import { strainText, unfoldingWords } from '../../output';
import { Callout, Card } from '../parts';
import styles from './bench.module.css';
import map from './unfolding.module.css';

/** What laying the flat sheet on its wall leaves in it, in words and as a map. */
export function Unfolding({ panel, job }: { panel: Panel; job: Job }) {
  const { weight, head, more } = unfoldingWords(panel, job);
  const { strain, strains } = panel.flat.unfolding;
  if (strain === 0) return null;
  // The left panel is looked at from the room, where its stations run to the left.
  const rows = [...strains].reverse().map((row) => (panel.name === 'left' ? [...row].reverse() : row));
  return (
    <Card title="Laid on its wall">
      <Callout weight={weight}>
        <p>
          <strong>{head}</strong>
        </p>
        <p>{more}</p>
      </Callout>
      <details className={styles.more} open={weight === 'warn'}>
        <summary>Where it is left</summary>
        <figure className={map.figure}>
          <table className={map.map} aria-label="Strain left in the sheet, millionths, as seen from the room">
            <tbody>
              {rows.map((row, i) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: always the same rows in the same order
                <tr key={i}>
                  {row.map((value, k) => (
                    // biome-ignore lint/suspicious/noArrayIndexKey: always the same places in the same order
                    <td key={k} style={{ '--share': `${Math.round((60 * value) / strain)}%` } as CSSProperties}>
                      {Math.round(value * 1e6)}
                    </td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
          <figcaption className={styles.about}>
            Strain in millionths (thousandths of a mm for each metre), place by place as seen from the room; darker is
            more, the most is {strainText(strain)}.
          </figcaption>
        </figure>
      </details>
    </Card>
  );
}
