import type { Point } from '../../core';
import type { Layer, Shape } from '../drawing';
import { hatchLines } from './hatchLines';
import type { Pen, Stroke } from './pen';

/**
 * Line widths and dashes in mm on the paper; layers differ by weight, dash and hatch, so that they read in black and
 * white.
 */
const strokes: Record<Layer, Stroke> = {
  sheet: { width: 0.18, gray: 0.35, dash: [2, 1.2] },
  sliver: { width: 0.12, gray: 0.45 },
  gap: { width: 0.3 },
  axes: { width: 0.1, gray: 0.5 },
  datum: { width: 0.22, dash: [5, 1, 0.8, 1] },
  tape: { width: 0.5, gray: 0.6, dash: [0.8, 0.8] },
  lip: { width: 0.15, gray: 0.3, dash: [0.9, 0.9] },
  back: { width: 0.2, dash: [2, 1] },
  cut: { width: 0.45 },
  hole: { width: 0.4 },
  mark: { width: 0.3 },
  text: { width: 0.12, gray: 0.5 },
};
const HATCH_SPACING = 1.6;

/** Paints shapes whose coordinates are mm on the paper; words only where the pen has fonts. */
export function drawShapes(pen: Pen, shapes: Shape[]): void {
  for (const shape of shapes) {
    switch (shape.kind) {
      case 'polyline':
        if (shape.layer === 'sliver') hatch(pen, shape.points, [45], { width: 0.1, gray: 0.5 });
        if (shape.layer === 'gap') hatch(pen, shape.points, [45, 135], { width: 0.2 });
        pen.polyline(shape.points, shape.closed, strokes[shape.layer]);
        break;
      case 'circle':
        pen.circle(shape.centre, shape.radius, strokes[shape.layer]);
        break;
      case 'words':
        pen.text(shape.text, shape.at, { size: shape.size, bold: shape.bold, align: shape.anchor, angle: shape.angle });
    }
  }
}

function hatch(pen: Pen, polygon: Point[], angles: number[], style: Stroke): void {
  pen.strokes(
    angles.flatMap((angle) => hatchLines(polygon, HATCH_SPACING, angle)),
    style,
  );
}
