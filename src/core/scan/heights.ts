import { evenlyAmong } from '../range';

/** Points of a surface as heights over a plane: places a and b, heights h, mm; `count` of them. */
export interface Heights {
  count: number;
  a: Float64Array;
  b: Float64Array;
  h: Float64Array;
}

/** Room for so many at first; it grows. */
export const roomForHeights = (first = 4096): Heights => ({
  count: 0,
  a: new Float64Array(first),
  b: new Float64Array(first),
  h: new Float64Array(first),
});

export function addHeight(heights: Heights, a: number, b: number, h: number): void {
  const i = heights.count++;
  if (i === heights.h.length) {
    heights.a = grown(heights.a);
    heights.b = grown(heights.b);
    heights.h = grown(heights.h);
  }
  heights.a[i] = a;
  heights.b[i] = b;
  heights.h[i] = h;
}

function grown(values: Float64Array): Float64Array {
  const larger = new Float64Array(2 * values.length + 1);
  larger.set(values);
  return larger;
}

/** At most `most` of them, evenly through all. */
export function fewerHeights(heights: Heights, most: number): Heights {
  if (heights.count <= most) return heights;
  const fewer = roomForHeights(most);
  for (const i of evenlyAmong(heights.count, most)) addHeight(fewer, heights.a[i]!, heights.b[i]!, heights.h[i]!);
  return fewer;
}
