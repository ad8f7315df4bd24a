import type { Panel, Problem } from './panel';

/** Least material to leave between a hole and an edge or another hole, mm (common practice, no source). */
export const LEAST_WEB = 12;

/** Holes off the panel, too near its edge or too near each other. */
export function holeProblems({ name, holes }: Panel): Problem[] {
  const where = (id: string): string => `panels.${name}.holes.${id}`;
  const problems: Problem[] = [];
  holes.forEach((hole, i) => {
    if (hole.edgeDistance < -hole.diameter) {
      problems.push({ where: where(hole.id), what: 'the hole lies off the panel', howMuch: -hole.edgeDistance });
    } else if (hole.edgeDistance < 0) {
      problems.push({
        where: where(hole.id),
        what: "the hole breaks through the panel's edge",
        howMuch: -hole.edgeDistance,
      });
    } else if (hole.edgeDistance < LEAST_WEB) {
      problems.push({
        where: where(hole.id),
        what: `less than ${LEAST_WEB} mm is left between the hole and the panel's edge`,
        howMuch: hole.edgeDistance,
      });
    }
    for (const other of holes.slice(i + 1)) {
      const web =
        Math.hypot(hole.sheet[0] - other.sheet[0], hole.sheet[1] - other.sheet[1]) -
        (hole.diameter + other.diameter) / 2;
      if (web < LEAST_WEB) {
        problems.push({
          where: where(hole.id),
          what:
            web < 0
              ? `the hole overlaps hole ${other.id}`
              : `less than ${LEAST_WEB} mm is left between the hole and hole ${other.id}`,
          howMuch: Math.abs(web),
        });
      }
    }
  });
  return problems;
}
