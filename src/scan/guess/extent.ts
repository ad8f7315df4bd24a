const most = 200_000;
/** Of the points, left out at each end of an axis: stray ones say nothing of the size. */
const stray = 0.01;

export interface Extent {
  low: [number, number, number];
  high: [number, number, number];
}

/** The box that holds the points but the strays, in their own axes and unit. */
export function extentOf(positions: Float32Array): Extent {
  const count = positions.length / 3;
  const step = Math.max(1, Math.floor(count / most));
  const extent: Extent = { low: [0, 0, 0], high: [0, 0, 0] };
  for (const axis of [0, 1, 2] as const) {
    const values = new Float32Array(Math.ceil(count / step));
    for (let i = 0, at = axis; i < values.length; i++, at += 3 * step) values[i] = positions[at]!;
    values.sort();
    extent.low[axis] = values[Math.floor(stray * (values.length - 1))]!;
    extent.high[axis] = values[Math.ceil((1 - stray) * (values.length - 1))]!;
  }
  return extent;
}

export const sizeOf = ({ low, high }: Extent): [number, number, number] => [
  high[0] - low[0],
  high[1] - low[1],
  high[2] - low[2],
];
