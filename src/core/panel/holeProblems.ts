import type { Fit } from '../job-file';
import { crossings } from './outline';
import type { PanelHole, PanelName, Point, Problem } from './panel';

/** Least material to leave between a hole and an edge or another hole, mm (common practice, no source). */
export const LEAST_WEB = 12;

/** Holes off the panel, too near its edge, behind the panel beside it or too near each other. */
export function holeProblems(
  panel: PanelName,
  holes: readonly PanelHole[],
  outline: readonly Point[],
  fit: Pick<Fit, 'bed' | 'thickness' | 'cornerJoint'>,
): Problem[] {
  return holes.flatMap((hole, i) => {
    const where = `panels.${panel}.holes.${hole.id}`;
    return [
      ...(panel === 'back' ? seamFaults(hole, outline, fit) : []).map((fault) => ({ where, ...fault })),
      ...edgeFaults(hole).map((fault) => ({ where, ...fault })),
      ...holes.slice(i + 1).flatMap((other) => neighbourFaults(hole, other).map((fault) => ({ where, ...fault }))),
    ];
  });
}

type Fault = Omit<Problem, 'where'>;

/** A side panel stands on the back panel's face, so that the last of it in the corner is out of reach. */
function seamFaults(
  { u, v, diameter, edgeDistance }: PanelHole,
  outline: readonly Point[],
  { bed, thickness, cornerJoint }: Pick<Fit, 'bed' | 'thickness' | 'cornerJoint'>,
): Fault[] {
  const ends = crossings(outline, 1, v);
  if (ends.length === 0 || edgeDistance < LEAST_WEB) return [];
  const covered = bed + thickness - cornerJoint;
  const sides: [string, number][] = [
    ['left', u - diameter / 2 - (Math.min(...ends) + covered)],
    ['right', Math.max(...ends) - covered - (u + diameter / 2)],
  ];
  return sides
    .filter(([, clear]) => clear < LEAST_WEB)
    .map(([side, clear]) =>
      clear < 0
        ? { what: `the hole reaches into the seam behind the ${side} side panel`, howMuch: -clear }
        : { what: `too little is left between the hole and the seam at the ${side} side panel`, howMuch: clear },
    );
}

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
