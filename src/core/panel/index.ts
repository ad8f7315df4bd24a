export { againstBack, besideWall, type EdgeAt, overRim } from './clearance';
export { contourKinks, contourRise } from './contour';
export { sampleEdge } from './curve';
export { PLANE_UP_TO } from './cutEdge';
export { frontLine, type PanelEdges, panelEdges } from './edges';
export { fewestMarks } from './fewestMarks';
export { fitPanel, type Seated } from './fitPanel';
export { flatMapOf } from './flatMapOf';
export { LEAST_WEB } from './holeProblems';
export { type HoleTool, holeTool, LARGEST_OVERSIZE } from './holeTool';
export { crossings, distanceToOutline, polygonArea } from './outline';
export type {
  CutMethod,
  EdgeName,
  Gap,
  Mark,
  Panel,
  PanelEdge,
  PanelHole,
  PanelName,
  Point,
  Problem,
  Unfolding,
} from './panel';
export { panelRegion } from './panelRegion';
export { settingOrder } from './settingOrder';
