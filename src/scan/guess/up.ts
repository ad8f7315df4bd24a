import type { RawScan, Up } from '../raw-scan';
import { type Extent, sizeOf } from './extent';

/** An axis must be this much longer than the usual one to be taken for the height instead. */
const clearly = 1.35;

/** Text files come from surveying, where z is the height; meshes and phones have y up. */
const usualAxis: Record<RawScan['format'], 1 | 2> = { text: 2, PLY: 2, OBJ: 1, glTF: 1 };

/**
 * The axis that points up: the one that the file says; else the usual one of its format, unless the other of y and z
 * is clearly longer, since an alcove is higher than it is deep.
 */
export function guessUp({ up, format }: Pick<RawScan, 'up' | 'format'>, extent: Extent): Up {
  if (up) return up;
  const size = sizeOf(extent);
  const usual = usualAxis[format];
  const other = usual === 1 ? 2 : 1;
  const axis = size[other] > clearly * size[usual] ? other : usual;
  return axis === 1 ? '+y' : '+z';
}
