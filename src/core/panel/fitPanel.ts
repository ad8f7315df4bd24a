import type { Matrix } from 'ml-matrix';
import { type Alcove, valuesOnly } from '../alcove';
import type { FlatMap, Region } from '../flatten';
import type { Job } from '../job-file';
import { Z_95 } from '../reliability';
import { boundaryOf, outlineOf, regionOf } from './boundary';
import { cutEdge } from './cutEdge';
import { panelEdges } from './edges';
import { flatMapOf } from './flatMapOf';
import { holeProblems } from './holeProblems';
import { panelHoles } from './holes';
import { laySheet } from './lay';
import { polygonArea } from './outline';
import type { EdgeName, Gap, Panel, PanelEdge, PanelName, Problem } from './panel';
import { roomProblems, withRoom } from './room';
import { unfoldingOf } from './unfolding';

/** How a panel's sheet sits on its wall. */
export interface Seated {
  /** the alcove with its walls where the panels' backs stand, the even bed taken off */
  edges: Alcove;
  /** thickest bed, mm */
  bedMax: number;
  /** largest strain at a face of the sheet */
  bendingStrain: number;
}

/**
 * Clips a panel to the alcove, lays its sheet on it and finds slivers, gaps, marks and holes (design section 5).
 * Without word of how it sits it lies on an even bed.
 */
export function fitPanel(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  name: PanelName,
  { edges: seats, bedMax, bendingStrain }: Seated = { edges: alcove, bedMax: job.fit.bed, bendingStrain: 0 },
): { panel: Panel; problems: Problem[] } {
  const { fit } = job;
  const edges = panelEdges(alcove, job, name, seats);
  const { lower, upper, bottom, top } = withRoom(edges);
  const boundary = boundaryOf(withRoom(panelEdges(valuesOnly(alcove), job, name, valuesOnly(seats))));
  const outline = outlineOf(boundary);
  const region = regionOf(outline);
  const flat = flatMapOf(seats, job, name, outline);
  const flatOutline = outline.map(([u, v]) => flat.toSheet(u, v));
  const laid = laySheet(flatOutline, job.sheets[name], fit.keep[name], {
    lower: edges.lower.name,
    upper: edges.upper.name,
  });

  const cut: Partial<Record<EdgeName, PanelEdge>> = {};
  const gaps: Gap[] = [];
  for (const [side, sheetSide, exact] of [
    ['lower', 'left', lower.at],
    ['upper', 'right', upper.at],
    ['bottom', 'bottom', bottom],
    ['top', 'top', top],
  ] as const) {
    const done = cutEdge(boundary[side], exact, flat, laid, sheetSide, covariance, fit.markTolerance);
    cut[boundary[side].name] = done.edge;
    gaps.push(...done.gaps);
  }

  const holes = panelHoles(alcove, seats, covariance, job, name, flat, flatOutline);
  const sds = Object.values(cut).flatMap(({ marks }) => marks.map(({ sd }) => sd));
  return {
    panel: {
      name,
      outline,
      edges: cut,
      holes,
      gaps,
      flat: {
        outline: flatOutline,
        sheet: laid,
        ...controlLines(flat, region, name === 'back' ? 0 : edges.lower.at(0).value),
        unfolding: unfoldingOf(flat, region),
      },
      thickness: fit.thickness,
      area: polygonArea(flatOutline),
      bedMax,
      strainMax: bendingStrain + flat.strain,
      worst95: Z_95 * Math.max(...sds),
    },
    problems: [
      ...roomProblems(edges, boundary, name),
      ...gaps.map((gap) => gapProblem(name, gap)),
      ...holeProblems(name, holes, outline, fit),
    ],
  };
}

const gapProblem = (name: PanelName, { edge, max }: Gap): Problem => ({
  where: `panels.${name}`,
  what: `the sheet falls short at the ${edge} edge; take a larger sheet or lay it otherwise`,
  howMuch: max,
});

/** Level line and plumb datum u = `at` across the sheet. */
function controlLines(
  flat: FlatMap,
  { u: [u0, u1], v: [v0, v1] }: Region,
  at: number,
): Pick<Panel['flat'], 'levelLine' | 'plumbDatum'> {
  return {
    levelLine: [flat.toSheet(u0, 0), flat.toSheet(u1, 0)],
    plumbDatum: { at, line: [flat.toSheet(at, v0), flat.toSheet(at, v1)] },
  };
}
