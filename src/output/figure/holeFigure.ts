import { crossings, type Job, type Point } from '../../core';
import { around, lengthsOf, type MeasureText, type PanelDrawing, type Rectangle, spread } from '../drawing';
import type { Figure, FigureShape } from './figure';

/** Figures stand this far from the panel, heights of type. */
const OFF = 1.6;

/**
 * A panel with every hole measured straight to its edges and from rim and back: heights at its sides, distances under
 * and over it.
 * @param size height of type, mm on the panel
 */
export function holeFigure(drawing: PanelDrawing, job: Job, size: number, measure: MeasureText): Figure {
  const { outline, holes } = drawing;
  const { fine } = lengthsOf(job);
  const box = around(outline);
  const places = holes.map((hole) => ({ hole, to: edgeDistances(outline, hole.centre) }));
  const text = (mm: number | null): string => (mm === null ? '–' : fine(mm).text);
  const edge = (place: 'left' | 'right' | 'bottom' | 'top'): string =>
    drawing.edges.find((each) => each.place === place)?.title.toLowerCase() ?? place;
  const rows = places.map(({ hole, to }) => ({
    hole,
    left: `${hole.name}: ${hole.aboveRimWords}`,
    right: `${text(to.bottom)} up from the ${edge('bottom')}, ${text(to.top)} down from the top`,
  }));
  const [leftRoom, rightRoom] = (['left', 'right'] as const).map((which) =>
    Math.max(...rows.map((row) => measure(row[which], size, which === 'left'))),
  ) as [number, number];
  const heights = spread(
    holes.map(({ centre }) => centre[1]),
    1.35 * size,
    [box.bottom, box.top],
  );
  const shapes: FigureShape[] = [
    { kind: 'path', points: outline, closed: true, look: 'panel' },
    ...rows.flatMap(({ hole, left, right }, i): FigureShape[] => {
      const [, y] = hole.centre;
      const at = heights[i]!;
      const [near, far] = [box.left - OFF * size, box.right + OFF * size];
      return [
        {
          kind: 'path',
          points: [
            [near, at],
            [box.left, y],
            [box.right, y],
            [far, at],
          ],
          closed: false,
          look: 'measure',
        },
        { kind: 'label', text: left, at: [near - 0.3 * size, at - 0.36 * size], anchor: 'end', bold: true },
        { kind: 'label', text: right, at: [far + 0.3 * size, at - 0.36 * size], anchor: 'start', bold: false },
      ];
    }),
    ...columnShapes(places, box, size, text, edge),
    ...holes.flatMap(({ centre, diameter }): FigureShape[] => {
      const arm = Math.max(diameter.mm / 2, size) + 0.5 * size;
      const [x, y] = centre;
      return [
        { kind: 'disc', centre, radius: diameter.mm / 2, look: 'hole' },
        {
          kind: 'path',
          points: [
            [x - arm, y],
            [x + arm, y],
          ],
          closed: false,
          look: 'hole',
        },
        {
          kind: 'path',
          points: [
            [x, y - arm],
            [x, y + arm],
          ],
          closed: false,
          look: 'hole',
        },
      ];
    }),
  ];
  const columns = 2 * Math.max(1, columnsOf(places, size).length);
  return {
    title: `Holes of the ${drawing.title.toLowerCase()} with their distances from rim, back and edges`,
    bounds: {
      left: box.left - (OFF + 0.8) * size - leftRoom,
      right: box.right + (OFF + 0.8) * size + rightRoom,
      bottom: box.bottom - (OFF + 1.4 * columns) * size,
      top: box.top + size,
    },
    size,
    shapes,
  };
}

type Placed = { hole: PanelDrawing['holes'][number]; to: EdgeDistances };
type Name = (place: 'left' | 'right') => string;

/** Upright lines through the holes down to their distances; holes one over the other share one. */
function columnShapes(
  places: readonly Placed[],
  box: Rectangle,
  size: number,
  text: (mm: number | null) => string,
  edge: Name,
): FigureShape[] {
  const middle = (box.left + box.right) / 2;
  return columnsOf(places, size).flatMap((column, i): FigureShape[] => {
    const { hole, to } = column[0]!;
    const names =
      column.length === places.length && places.length > 1 ? 'all' : column.map((each) => each.hole.name).join(', ');
    const [x] = hole.centre;
    const y = box.bottom - (OFF + 2.8 * i + 0.8) * size;
    return [
      {
        kind: 'path',
        points: [
          [x, box.top],
          [x, box.bottom - 0.6 * size],
        ],
        closed: false,
        look: 'measure',
      },
      { kind: 'label', text: `${names}: ${hole.fromWords}`, at: [middle, y], anchor: 'middle', bold: true },
      {
        kind: 'label',
        text: `${text(to.left)} from the ${edge('left')}, ${text(to.right)} from the ${edge('right')}`,
        at: [middle, y - 1.3 * size],
        anchor: 'middle',
        bold: false,
      },
    ];
  });
}

/** Holes one over the other whose distances read the same. */
function columnsOf(places: readonly Placed[], size: number): Placed[][] {
  const columns: Placed[][] = [];
  for (const placed of places) {
    const same = columns.find(
      ([first]) =>
        first!.hole.fromWords === placed.hole.fromWords &&
        Math.abs(first!.hole.centre[0] - placed.hole.centre[0]) < Math.min(1, 0.1 * size),
    );
    if (same) same.push(placed);
    else columns.push([placed]);
  }
  return columns;
}

interface EdgeDistances {
  left: number | null;
  right: number | null;
  bottom: number | null;
  top: number | null;
}

/** Straight distances, mm, from a point to the outline along both axes; null where it is not met. */
function edgeDistances(outline: readonly Point[], [x, y]: Point): EdgeDistances {
  const nearest = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.min(...values));
  const across = crossings(outline, 1, y).map((at) => at - x);
  const up = crossings(outline, 0, x).map((at) => at - y);
  return {
    left: nearest(across.filter((d) => d <= 0).map((d) => -d)),
    right: nearest(across.filter((d) => d > 0)),
    bottom: nearest(up.filter((d) => d <= 0).map((d) => -d)),
    top: nearest(up.filter((d) => d > 0)),
  };
}
