import type { Point } from '../../core';
import { around } from './rectangle';
import type { Shape } from './shape';

/** Lengths of the two strokes, mm: the longer one lies along the first flat axis. */
const AXIS_LONG = 40;
const AXIS_SHORT = 20;
/** The corner lies at whole multiples of this, mm. */
const GRID = 10;
const TEXT = 4;

/**
 * The mark by which a template is read back however it lies in its file: an L whose longer stroke points along the first
 * flat axis and whose shorter one along the second, with the flat coordinates of its corner beside it as `12.5 -700`.
 * @param sign -1 where the first flat axis is drawn to the left
 */
export function flatAxes({ outline, sign }: { outline: readonly Point[]; sign: 1 | -1 }): Shape[] {
  const { left, right, bottom, top } = around(outline);
  const [x, y] = [onGrid((left + right) / 2), onGrid((bottom + top) / 2)];
  const along = x + sign * AXIS_LONG;
  return [
    {
      kind: 'polyline',
      layer: 'axes',
      points: [
        [along, y],
        [x, y],
        [x, y + AXIS_SHORT],
      ],
      closed: false,
    },
    {
      kind: 'words',
      layer: 'axes',
      at: [x + sign, y + 1],
      text: `${sign * x + 0} ${y}`,
      size: TEXT,
      anchor: sign === 1 ? 'start' : 'end',
      angle: 0,
      bold: false,
    },
  ];
}

const onGrid = (value: number): number => Math.round(value / GRID) * GRID + 0;
