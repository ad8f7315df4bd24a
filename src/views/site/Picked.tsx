import { type PanelName, Z_95 } from '../../core';
import { useSessionState } from '../../job';
import { panelTitle } from '../alcove';
import { useLengths } from '../parts';
import { addressOf } from '../place';
import styles from './site.module.css';

/** In short what the picked panel is, and the way to its template. */
export function Picked({ panel }: { panel: PanelName }) {
  const found = useSessionState(({ result }) => result?.panels[panel]);
  const lengths = useLengths();
  if (!found) return null;
  const us = found.outline.map(([u]) => u);
  const vs = found.outline.map(([, v]) => v);
  const spread = (values: number[]) => lengths.text(Math.max(...values) - Math.min(...values));
  return (
    <div className={styles.picked} role="status">
      <p>
        <strong>{panelTitle[panel]}</strong>, {spread(us)} × {spread(vs)} overall, edges known to{' '}
        {lengths.plusMinus(found.worst95 / Z_95)} or better
        {found.gaps.length > 0 && (
          <>
            , <strong>does not cover its wall</strong>
          </>
        )}
      </p>
      <a className={styles.toTemplate} href={addressOf({ name: 'bench', panel })}>
        See its template
      </a>
    </div>
  );
}
