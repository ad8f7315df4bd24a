import { Matrix } from 'ml-matrix';
import { fitPieces } from '../../../src/core/fitPieces';
import { fitPanel, type PanelName } from '../../../src/core/panel';
import { jobWith, plausibleAlcove, surfacesOf } from '../../simulate';
import { type Misfit, pieceMisfits } from './pieceMisfits';

/** Misfits of every piece in a random alcove: trim on three sides, legs past a narrow tub, fillers, two shelves. */
export function randomMisfits(seed: number): Misfit[] {
  const truth = plausibleAlcove(seed);
  const rim = { width: [700, 745, 800][seed % 3]! };
  const job = jobWith([], { rim, trim: { rise: 20 }, shelves: [{}, { corner: 'left', aboveRim: 900 }] });
  const alcove = surfacesOf(truth);
  const covariance = Matrix.eye(25, 25, 0);
  const panel = (name: PanelName) => fitPanel(alcove, covariance, job, name).panel;
  const { pieces } = fitPieces(alcove, covariance, job, {
    back: panel('back'),
    left: panel('left'),
    right: panel('right'),
  });
  return pieceMisfits(truth, job, pieces);
}
