import { somePoints } from '../../core';
import type { RawScan, Up } from '../raw-scan';
import { type Extent, sizeOf } from './extent';

/** An axis must be this much longer than the usual one to be taken for the height instead. */
const clearly = 1.35;

/** Text files come from surveying, where z is the height; meshes and phones have y up. */
const usualAxis: Record<RawScan['format'], 1 | 2> = { text: 2, PLY: 2, OBJ: 1, glTF: 1 };

/** Of an axis, the bins that its points are counted in, and those at each end where floor and ceiling lie. */
const [bins, endBins] = [50, 8];
/** A flat face square to the axis holds at least this share of the points. */
const face = 0.05;
/** Points that are counted. */
const most = 40_000;

/**
 * The axis that points up: the one that the file says; else the usual one of its format. That gives way to the other of y
 * and z where the other alone ends in two faces, as between floor and ceiling, or where neither does and the other is
 * clearly longer, since an alcove by itself is higher than it is deep.
 */
export function guessUp({ up, format, positions }: Pick<RawScan, 'up' | 'format' | 'positions'>, extent: Extent): Up {
  if (up) return up;
  const size = sizeOf(extent);
  const usual = usualAxis[format];
  const other = usual === 1 ? 2 : 1;
  const some = somePoints(positions, most);
  const [atUsual, atOther] = [endsInFaces(some, usual, extent), endsInFaces(some, other, extent)];
  const turned = atUsual === atOther ? !atUsual && size[other] > clearly * size[usual] : atOther;
  return (turned ? other : usual) === 1 ? '+y' : '+z';
}

function endsInFaces(positions: Float32Array, axis: 1 | 2, { low, high }: Extent): boolean {
  const counts = new Array<number>(bins).fill(0);
  const margin = (high[axis] - low[axis]) / bins;
  const width = (high[axis] - low[axis] + 2 * margin) / bins;
  for (let at = axis; at < positions.length; at += 3) {
    const bin = Math.floor((positions[at]! - low[axis] + margin) / width);
    if (bin >= 0 && bin < bins) counts[bin]!++;
  }
  const enough = (face * positions.length) / 3;
  return [counts.slice(0, endBins), counts.slice(-endBins)].every((end) => Math.max(...end) >= enough);
}
