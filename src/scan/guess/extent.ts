import { somePoints } from '../../core';

/** So many points tell the size as well as all. */
const most = 6000;
/** Of the points, left out at each end of an axis: stray ones say nothing of the size. */
const stray = 0.01;

export interface Extent {
  low: [number, number, number];
  high: [number, number, number];
}

/** The box that holds the points but the strays, in their own axes and unit. */
export function extentOf(positions: Float32Array): Extent {
  const some = somePoints(positions, most);
  const extent: Extent = { low: [0, 0, 0], high: [0, 0, 0] };
  for (const axis of [0, 1, 2] as const) {
    const values = new Float32Array(some.length / 3);
    for (let i = 0; i < values.length; i++) values[i] = some[3 * i + axis]!;
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
