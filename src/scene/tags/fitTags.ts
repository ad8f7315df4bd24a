import type { DryFit } from '../../core';
import type { Vec3 } from '../geometry';
import type { Tag } from './tag';

/**
 * What the virtual dry fit found at each edge of the picked panel or piece, where it is worst. None while nothing is
 * picked: all edges together would hide the drawing.
 */
export function fitTags(dryFit: DryFit | null, picked: string | null, place: (point: Vec3) => Vec3): Tag[] {
  const found = dryFit?.pieces.find(({ piece }) => piece === picked || piece === `panels.${picked}`);
  if (!dryFit || !found) return [];
  return found.edges.map(({ edge, overlap, gap, at }) => {
    const within = Math.max(overlap, gap) <= dryFit.tolerance;
    const words = within ? 'fits' : overlap >= gap ? 'reaches too far' : 'falls short';
    return {
      key: `fit ${found.piece} ${edge}`,
      kind: within ? 'fit' : 'gap',
      text: `${edge}: ${words}, ${Math.max(overlap, gap).toFixed(2)} mm`,
      at: place(at),
    };
  });
}
