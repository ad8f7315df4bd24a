import type { Job, Point, Result, WallName } from '../../core';
import type { Figure, FigureShape } from './figure';
import { panelShapes, wallLabels } from './panelShapes';
import { unfolded } from './unfolded';

/**
 * Dots or beads and double-faced strips behind each panel, as seen facing the wall.
 * @param size height of type, mm on the wall
 */
export function adhesiveFigure(job: Job, { panels, materials }: Result, size: number): Figure {
  const { place, bounds, middle } = unfolded({ panels });
  const { pressedWidth } = job.supplies.adhesive;
  const upright = (wall: WallName, [[u, from], [, to]]: [Point, Point], width: number, look: 'strip' | 'adhesive') => {
    const corners: Point[] = [
      [u - width / 2, from],
      [u + width / 2, from],
      [u + width / 2, to],
      [u - width / 2, to],
    ];
    return { kind: 'path', points: corners.map((point) => place(wall, point)), closed: true, look } as const;
  };
  const shapes = (['left', 'back', 'right'] as const).flatMap((wall): FigureShape[] => {
    const { dots, beads, strips } = materials.adhesive[wall];
    return [
      ...panelShapes(panels[wall], place),
      ...strips.map((strip) => upright(wall, strip, job.supplies.strips.width, 'strip')),
      ...beads.map((bead) => upright(wall, bead, pressedWidth, 'adhesive')),
      ...dots.map(
        (dot): FigureShape => ({ kind: 'disc', centre: place(wall, dot), radius: pressedWidth / 2, look: 'adhesive' }),
      ),
    ];
  });
  return {
    title: 'Adhesive and double-faced strips behind the left, back and right panel, seen facing each wall',
    bounds: { ...bounds, top: bounds.top + 2.2 * size },
    size,
    shapes: [...shapes, ...wallLabels(middle, bounds.top, size)],
  };
}
