export { type EdgeAt, type PanelEdges, panelEdges } from './edges';
export { fewestMarks } from './fewestMarks';
export { fitPanel, Z_95 } from './fitPanel';
export { holeProblems, LEAST_WEB } from './holeProblems';
export { distanceToOutline, polygonArea } from './outline';
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
} from './panel';
