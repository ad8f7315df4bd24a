import type { Panel, Point, WallName } from '../../core';
import type { FigureShape } from './figure';

/** A panel's outline with its holes. */
export function panelShapes(
  { name, outline, holes }: Pick<Panel, 'name' | 'outline' | 'holes'>,
  place: (wall: WallName, point: Point) => Point,
): FigureShape[] {
  return [
    { kind: 'path', points: outline.map((point) => place(name, point)), closed: true, look: 'panel' },
    ...holes.map(
      ({ u, v, diameter }): FigureShape => ({
        kind: 'disc',
        centre: place(name, [u, v]),
        radius: diameter / 2,
        look: 'hole',
      }),
    ),
  ];
}

/** The name of each wall over its panel. */
export const wallLabels = (middle: Record<WallName, Point>, top: number, size: number): FigureShape[] =>
  (['left', 'back', 'right'] as const).map((wall) => ({
    kind: 'label',
    text: `${wall} wall`,
    at: [middle[wall][0], top + 0.9 * size],
    anchor: 'middle',
    bold: true,
  }));
