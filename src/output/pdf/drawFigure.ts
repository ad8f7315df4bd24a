import type { Rectangle } from '../drawing';
import { type Figure, paints } from '../figure';
import type { Flow } from './flow';
import type { Pen } from './pen';

/** Draws a figure as large as a room on the page holds it, in its middle. */
function drawFigure(pen: Pen, { bounds, shapes, size }: Figure, room: Rectangle): void {
  const scale = Math.min(
    (room.right - room.left) / (bounds.right - bounds.left),
    (room.top - room.bottom) / (bounds.top - bounds.bottom),
  );
  const [dx, dy] = [
    (room.left + room.right) / 2 - (scale * (bounds.left + bounds.right)) / 2,
    (room.bottom + room.top) / 2 - (scale * (bounds.bottom + bounds.top)) / 2,
  ];
  const at = ([x, y]: readonly [number, number]): [number, number] => [dx + scale * x, dy + scale * y];
  for (const shape of shapes) {
    if (shape.kind === 'label') {
      pen.text(shape.text, at(shape.at), { size: scale * size, bold: shape.bold, align: shape.anchor });
      continue;
    }
    const paint = paints[shape.look];
    if (shape.kind === 'disc') {
      if (paint.fill !== undefined) pen.filledCircle(at(shape.centre), scale * shape.radius, paint.fill);
      pen.circle(at(shape.centre), scale * shape.radius, paint);
    } else {
      const points = shape.points.map(at);
      if (shape.closed && paint.fill !== undefined) pen.filled(points, paint.fill);
      pen.polyline(points, shape.closed, paint);
    }
  }
}

/** Sets a figure into the flow over the whole width, no higher than `height` mm, with type of `size` mm. */
export function setFigure(flow: Flow, make: (size: number) => Figure, height: number, size: number): void {
  flow.ensure(height + 4);
  const { left, right } = flow.leaf.content;
  const fit = ({ bounds }: Figure): number =>
    Math.min((right - left) / (bounds.right - bounds.left), height / (bounds.top - bounds.bottom));
  // The room that type takes depends on the scale and the scale on that room: a few rounds settle both.
  let figure = make(0);
  for (let round = 0; round < 6; round++) figure = make(size / fit(figure));
  const used = Math.min(height, fit(figure) * (figure.bounds.top - figure.bounds.bottom));
  drawFigure(flow.leaf.pen, figure, { left, right, top: flow.y - 3, bottom: flow.y - 3 - used });
  flow.y -= used + 5;
}
