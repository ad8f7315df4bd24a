import type { PanelHole, PanelName, Problem } from './panel';

/** Least material to leave between a hole and an edge or another hole, mm (common practice, no source). */
export const LEAST_WEB = 12;

/** Holes off the panel, too near its edge or too near each other. */
export function holeProblems(panel: PanelName, holes: readonly PanelHole[]): Problem[] {
  return holes.flatMap((hole, i) => {
    const where = `panels.${panel}.holes.${hole.id}`;
    return [
      ...edgeFaults(hole).map((fault) => ({ where, ...fault })),
      ...holes.slice(i + 1).flatMap((other) => neighbourFaults(hole, other).map((fault) => ({ where, ...fault }))),
    ];
  });
}

type Fault = Omit<Problem, 'where'>;

function edgeFaults({ edgeDistance, diameter }: PanelHole): Fault[] {
  if (edgeDistance <= -diameter) {
    return [{ what: 'the hole lies off the panel; check where the fixture is', howMuch: -edgeDistance - diameter }];
  }
  if (edgeDistance < 0) {
    return [{ what: "the hole breaks through the panel's edge; check where the fixture is", howMuch: -edgeDistance }];
  }
  if (edgeDistance < LEAST_WEB) {
    return [{ what: "too little material is left between the hole and the panel's edge", howMuch: edgeDistance }];
  }
  return [];
}

function neighbourFaults(hole: PanelHole, other: PanelHole): Fault[] {
  const apart = Math.hypot(hole.sheet[0] - other.sheet[0], hole.sheet[1] - other.sheet[1]);
  const web = apart - (hole.diameter + other.diameter) / 2;
  if (web < 0) return [{ what: `the hole overlaps the hole for ${other.id}`, howMuch: -web }];
  if (web < LEAST_WEB) {
    return [{ what: `too little material is left between the hole and the hole for ${other.id}`, howMuch: web }];
  }
  return [];
}
