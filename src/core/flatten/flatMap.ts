/** Where a point of the wall lies on the flat sheet. */
export interface FlatMap {
  /** wall coordinates (u, v) to sheet coordinates, both mm from the crossing of the control lines */
  toSheet(u: number, v: number): [number, number];
  /** largest strain that laying the flat sheet on the wall needs in its own plane; 0 where the wall can be developed */
  strain: number;
  /** the same at a place of the wall */
  strainAt(u: number, v: number): number;
}
