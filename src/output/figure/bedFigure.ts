import type { BedReport, Job, Point, Result, WallName } from '../../core';
import type { Figure, FigureShape, Look } from './figure';
import { panelShapes, wallLabels } from './panelShapes';
import { unfolded } from './unfolded';

const looks: Look[] = ['bed-0', 'bed-1', 'bed-2', 'bed-3', 'bed-4'];

/** Steps of thickness over the even bed that the grays stand for, mm, up to the thickest of all three panels. */
export function bedSteps(job: Job, { bedding }: Pick<Result, 'bedding'>): number[] {
  const most = Math.max(...Object.values(bedding).map(({ thickest }) => thickest.value - job.fit.bed), 0.5);
  return looks.map((_, k) => job.fit.bed + (most * k) / looks.length);
}

/** How thick the bed is behind each panel, darker where thicker, and where shims go by their number. */
export function bedFigure(job: Job, result: Result, size: number): Figure {
  const { place, bounds, middle } = unfolded(result);
  const steps = bedSteps(job, result);
  const shapes = (['left', 'back', 'right'] as const).flatMap((wall): FigureShape[] => [
    ...panelShapes({ ...result.panels[wall], holes: [] }, place),
    ...cells(wall, result.bedding[wall], place, steps),
    {
      kind: 'path',
      points: result.panels[wall].outline.map((point) => place(wall, point)),
      closed: true,
      look: 'measure',
    },
    ...shims(wall, result.bedding[wall], place, size),
  ]);
  return {
    title:
      'Thickness of the bed behind the left, back and right panel, darker where thicker, with the numbers of the shims',
    bounds: { ...bounds, top: bounds.top + 2.2 * size },
    size,
    shapes: [...shapes, ...wallLabels(middle, bounds.top, size)],
  };
}

function cells(
  wall: WallName,
  { map: { at, height, value } }: BedReport,
  place: (wall: WallName, point: Point) => Point,
  steps: readonly number[],
): FigureShape[] {
  const shapes: FigureShape[] = [];
  for (let i = 0; i + 1 < height.length; i++) {
    // Cells of one gray in a row are drawn as one.
    let start = 0;
    for (let j = 0; j + 1 < at.length; j++) {
      const gray = grayAt(value, i, j, steps);
      if (j + 2 < at.length && grayAt(value, i, j + 1, steps) === gray) continue;
      const corners: Point[] = [
        [at[start]!, height[i]!],
        [at[j + 1]!, height[i]!],
        [at[j + 1]!, height[i + 1]!],
        [at[start]!, height[i + 1]!],
      ];
      shapes.push({
        kind: 'path',
        points: corners.map((point) => place(wall, point)),
        closed: true,
        look: looks[gray]!,
      });
      start = j + 1;
    }
  }
  return shapes;
}

function grayAt(value: number[][], i: number, j: number, steps: readonly number[]): number {
  const mean = (value[i]![j]! + value[i]![j + 1]! + value[i + 1]![j]! + value[i + 1]![j + 1]!) / 4;
  return Math.max(
    0,
    steps.findLastIndex((step) => mean >= step - 1e-9),
  );
}

const shims = (
  wall: WallName,
  { shims: { list } }: BedReport,
  place: (wall: WallName, point: Point) => Point,
  size: number,
): FigureShape[] =>
  list.flatMap(({ u, v }, k): FigureShape[] => {
    const centre = place(wall, [u, v]);
    return [
      { kind: 'disc', centre, radius: 0.85 * size, look: 'hole' },
      { kind: 'label', text: String(k + 1), at: [centre[0], centre[1] - 0.34 * size], anchor: 'middle', bold: false },
    ];
  });
