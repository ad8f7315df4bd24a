/** Points as read from a file: mm, y up, relative to `origin` so that single precision carries a hundredth of a mm. */
export interface PointCloud {
  /** x, y, z of one point after the other */
  positions: Float32Array;
  /** what was taken off every point, mm */
  origin: [number, number, number];
}

export const pointCount = ({ positions }: PointCloud): number => Math.floor(positions.length / 3);
