/** Points of a surface as heights over a plane: places a and b, heights h, mm; `count` of them. */
export interface Heights {
  count: number;
  a: Float64Array;
  b: Float64Array;
  h: Float64Array;
}

/** Room for at most so many. */
export const roomForHeights = (most: number): Heights => ({
  count: 0,
  a: new Float64Array(most),
  b: new Float64Array(most),
  h: new Float64Array(most),
});

export function addHeight(heights: Heights, a: number, b: number, h: number): void {
  const i = heights.count++;
  heights.a[i] = a;
  heights.b[i] = b;
  heights.h[i] = h;
}

/** Every k-th, so that no more than `most` are left. */
export function fewerHeights(heights: Heights, most: number): Heights {
  const step = Math.max(1, Math.ceil(heights.count / most));
  if (step === 1) return heights;
  const fewer = roomForHeights(Math.ceil(heights.count / step));
  for (let i = 0; i < heights.count; i += step) addHeight(fewer, heights.a[i]!, heights.b[i]!, heights.h[i]!);
  return fewer;
}
