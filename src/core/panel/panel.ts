import type { WallName } from '../job-file';

/**
 * Coordinates used throughout this folder, all mm:
 * - wall coordinates (u, v): v = height from the level line; u = x from the plumb line on the back wall,
 *   u = z from the back wall's origin plane on a side wall. On the left wall u grows to the viewer's left as seen
 *   from the room; a template is drawn as seen from the panel's face.
 * - sheet coordinates: the same point on the flat sheet, true lengths in the plane of the sheet, same origin, with
 *   the sheet's first axis tangent to the level line at the origin.
 */
export type Point = [number, number];

export type PanelName = WallName;
/** Back panel: left, right, bottom, top. Side panels: back, front, bottom, top. */
export type EdgeName = 'left' | 'right' | 'back' | 'front' | 'bottom' | 'top';

/** A pencil mark on a cut edge. */
export interface Mark {
  u: number;
  v: number;
  /** standard deviation (1 sigma), mm, of the edge's position across the edge */
  sd: number;
  /** the mark on the flat sheet */
  sheet: Point;
  /** width of the strip to cut off at this mark, mm; negative = the sheet does not reach */
  sliver: number;
}

/** How an edge is made. `factory`: the sheet's own edge is kept; `plane`: plane or sand; `knife`: score and snap. */
export type CutMethod = 'factory' | 'plane' | 'knife' | 'jigsaw';

export interface PanelEdge {
  /** from bottom to top, or in the direction of growing u; fewest that keep straight cuts within the tolerance */
  marks: Mark[];
  /** widths of the strip cut off along the edge, mm; a negative `min` is a gap */
  sliver: { min: number; max: number };
  method: CutMethod;
  /** largest distance between the straight cuts and the true curve, mm */
  misfit: number;
}

export interface PanelHole {
  id: string;
  kind: string;
  u: number;
  v: number;
  /** centre on the flat sheet */
  sheet: Point;
  diameter: number;
  /** standard deviation of the centre, mm, along u and v */
  sd: { u: number; v: number };
  /** from the finished rim, and from the back (or from the plumb line on the back wall), as the job gives them */
  aboveRim: number;
  from: { of: 'panel' | 'wall' | 'plumb-line'; distance: number };
  /** least material between the hole and a panel edge, mm */
  edgeDistance: number;
}

/** A stretch of an edge that the sheet does not reach. */
export interface Gap {
  edge: EdgeName;
  from: Point;
  to: Point;
  /** by how much it falls short at most, mm */
  max: number;
}

/** Strain, dimensionless, that laying the flat sheet on its wall leaves in its plane, over the panel's extent. */
export interface Unfolding {
  strain: number;
  /** stations and heights on the wall, mm, and the strain at each: a row for each height */
  at: number[];
  height: number[];
  strains: number[][];
}

export interface Panel {
  name: PanelName;
  /** counter-clockwise in (u, v), not closed; straight joins keep within 0.05 mm of the true edge */
  outline: Point[];
  edges: Partial<Record<EdgeName, PanelEdge>>;
  holes: PanelHole[];
  gaps: Gap[];
  /** the flat sheet: outline in sheet coordinates, same order as `outline`, and the rectangle of the sheet laid on it */
  flat: {
    outline: Point[];
    sheet: { left: number; right: number; bottom: number; top: number };
    /**
     * End points, in sheet coordinates, of the level line v = 0 and of the plumb datum u = `at`: the plumb line on the
     * back panel; on a side panel the plumb line through its back edge at the level line.
     */
    levelLine: [Point, Point];
    plumbDatum: { at: number; line: [Point, Point] };
    /** left in the sheet's own plane when it is laid on its wall; nothing where the wall can be developed */
    unfolding: Unfolding;
  };
  thickness: number;
  /** finished area, mm² */
  area: number;
  /** largest thickness of the adhesive bed, mm */
  bedMax: number;
  /** largest strain from bending to the wall and from unfolding, dimensionless */
  strainMax: number;
  /** largest 95 % half-width over all marks, mm */
  worst95: number;
}

/** A thing that keeps the job from being built as it stands. `howMuch` in mm where it is a length. */
export interface Problem {
  where: string;
  what: string;
  howMuch: number | null;
}
