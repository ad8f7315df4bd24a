import { type Panel, type PanelName, type Piece, Z_95 } from '../../core';
import { useSessionState } from '../../job';
import { capital } from '../../output';
import { allPieces, panelTitle } from '../alcove';
import { useLengths } from '../parts';
import { addressOf } from '../place';
import styles from './site.module.css';

/** In short what the picked panel or piece is, and the way to its template. */
export function Picked({ item }: { item: string }) {
  const panel = useSessionState(({ result }) => result?.panels[item as PanelName]);
  const piece = useSessionState(({ result }) => result && allPieces(result).find(({ id }) => id === item));
  if (!panel && !piece) return null;
  return (
    <div className={styles.picked} role="status">
      {panel && <PanelWords panel={panel} />}
      {piece && <PieceWords piece={piece} />}
      <a className={styles.toTemplate} href={addressOf({ name: 'bench', item })}>
        See its template
      </a>
    </div>
  );
}

function PanelWords({ panel }: { panel: Panel }) {
  const lengths = useLengths();
  const us = panel.outline.map(([u]) => u);
  const vs = panel.outline.map(([, v]) => v);
  const spread = (values: number[]) => lengths.text(Math.max(...values) - Math.min(...values));
  return (
    <p>
      <strong>{panelTitle[panel.name]}</strong>, {spread(us)} × {spread(vs)} overall, edges known to{' '}
      {lengths.plusMinus(panel.worst95 / Z_95)} or better
      {panel.gaps.length > 0 && (
        <>
          , <strong>does not cover its wall</strong>
        </>
      )}
    </p>
  );
}

function PieceWords({ piece: { name, size, worst95 } }: { piece: Piece }) {
  const lengths = useLengths();
  return (
    <p>
      <strong>{capital(name)}</strong>, {lengths.fine(size.along)} × {lengths.fine(size.across)}, known to{' '}
      {lengths.plusMinus(worst95 / Z_95)} or better
    </p>
  );
}
