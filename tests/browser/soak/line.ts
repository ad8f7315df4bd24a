/** A straight line through samples. */
export interface Line {
  slope: number;
  /** standard error of the slope, from what is left; infinite below three samples */
  error: number;
}

/** Least squares of y over x, with the usual standard error of a slope. */
export function lineThrough(points: readonly (readonly [x: number, y: number])[]): Line {
  const n = points.length;
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / n;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / n;
  const sxx = points.reduce((sum, [x]) => sum + (x - meanX) ** 2, 0);
  const slope = points.reduce((sum, [x, y]) => sum + (x - meanX) * (y - meanY), 0) / sxx;
  const left = points.reduce((sum, [x, y]) => sum + (y - meanY - slope * (x - meanX)) ** 2, 0);
  return { slope, error: n < 3 ? Number.POSITIVE_INFINITY : Math.sqrt(left / (n - 2) / sxx) };
}
