/**
 * What is read at most, so that reading, the walls' sums and the drawing together stay under 1 GB of memory.
 */
export interface ScanLimits {
  /** points kept; over this they are thinned on a grid of cubes while they are read */
  points: number;
  /** corners of a mesh, which cannot be thinned while it is read */
  corners: number;
  triangles: number;
  /** bytes of a file that is read whole (glTF) */
  wholeFile: number;
  /** bytes of a file that is read piece by piece */
  file: number;
}

export const scanLimits: ScanLimits = {
  points: 10_000_000,
  corners: 10_000_000,
  triangles: 20_000_000,
  wholeFile: 400_000_000,
  file: 8_000_000_000,
};

/** Fewer say nothing of three walls. */
export const fewestPoints = 1000;
