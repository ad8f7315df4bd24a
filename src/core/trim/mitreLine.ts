import type { TrimLines } from './site';

/** The joint in the face between a side top and a vertical, seen from the outer line, half its clearance to each piece. */
export interface MitreLine {
  /** where the side top ends at a height, from the outer line (0 or less) */
  sideTopFront(height: number): number;
  /** where the vertical ends at a distance from the outer line (0 or less) */
  verticalHead(fromOuter: number): number;
}

/** Line from where the inner edges of the two pieces cross to where their outer edges do. */
export function mitreLine({ lowerEdge, upperEdge, verticalWidth, trim }: TrimLines): MitreLine {
  const rise = upperEdge - lowerEdge;
  const long = Math.hypot(rise, verticalWidth);
  const half = trim.joint / 2;
  return {
    sideTopFront: (height) => ((height - upperEdge) / rise) * verticalWidth - (half * long) / rise,
    verticalHead: (fromOuter) => upperEdge + (fromOuter / verticalWidth) * rise - (half * long) / verticalWidth,
  };
}
