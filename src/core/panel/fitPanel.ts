import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import { developMap, type FlatMap, planeMap, type Region } from '../flatten';
import type { Job } from '../job-file';
import { bendingStrain, largestCurvature } from './bending';
import { type EdgeSample, sampleEdge } from './curve';
import { cutEdge, type RawEdge, wallPoint } from './cutEdge';
import { meet, type PanelEdges, panelEdges } from './edges';
import { holeCentre } from './holes';
import { laySheet } from './lay';
import { distanceToOutline, polygonArea } from './outline';
import type { EdgeName, Panel, PanelEdge, PanelHole, PanelName, Point, Problem } from './panel';
import { hollowBehindRigidSheet, intoRoom } from './resting';

/** A panel that the readings leave less than this to is drawn this high or deep, mm, and reported. */
const LEAST_SIZE = 50;
/** 95 % of a normal distribution lies within this many standard deviations. */
export const Z_95 = 1.959964;

/** Clips a panel to the alcove, lays its sheet on it and finds slivers, gaps, marks and holes (design section 5). */
export function fitPanel(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  name: PanelName,
): { panel: Panel; problems: Problem[] } {
  const problems: Problem[] = [];
  const edges = withRoom(panelEdges(alcove, job, name), job, name, problems);
  const raw = rawEdges(edges);
  const outline = outlineOf(raw);
  const region = regionOf(outline);
  const flat = job.fit.flexible ? developMap(alcove[name], region) : planeMap(alcove[name], region);
  const flatOutline = outline.map(([u, v]) => flat.toSheet(u, v));
  const laid = laySheet(flatOutline, job.sheets[name], job.fit.keep[name], {
    lower: raw.lower.name,
    upper: raw.upper.name,
  });

  const cut: Partial<Record<EdgeName, PanelEdge>> = {};
  const gaps: Panel['gaps'] = [];
  for (const [edge, sheetSide] of [
    [raw.lower, 'left'],
    [raw.upper, 'right'],
    [raw.bottom, 'bottom'],
    [raw.top, 'top'],
  ] as const) {
    const done = cutEdge(edge, flat, laid, sheetSide, covariance, job.fit.markTolerance);
    cut[edge.name] = done.edge;
    gaps.push(...done.gaps);
  }
  for (const gap of gaps) {
    problems.push({ where: `panels.${name}`, what: `the sheet falls short at the ${gap.edge} edge`, howMuch: gap.max });
  }

  const bend = job.fit.flexible ? bendingStrain(job.fit.thickness, largestCurvature(alcove[name], region)) : 0;
  const hollow = job.fit.flexible ? 0 : hollowBehindRigidSheet(intoRoom(alcove[name], name), region);
  const sds = Object.values(cut).flatMap(({ marks }) => marks.map(({ sd }) => sd));
  const panel: Panel = {
    name,
    outline,
    edges: cut,
    holes: holesOf(alcove, covariance, job, name, outline, flat),
    gaps,
    flat: {
      outline: flatOutline,
      sheet: laid,
      ...controlLines(flat, region, name === 'back' ? 0 : raw.lower.at(0).value),
    },
    thickness: job.fit.thickness,
    area: polygonArea(flatOutline),
    bedMax: job.fit.bed + hollow,
    strainMax: bend + flat.strain,
    worst95: Z_95 * Math.max(...sds),
  };
  return { panel, problems };
}

interface RawEdges {
  lower: RawEdge;
  upper: RawEdge;
  bottom: RawEdge;
  top: RawEdge;
}

/** The four edges between the corners where they meet. */
function rawEdges({ lower, upper, bottom, bottomKinks, top }: PanelEdges): RawEdges {
  const middle: Point = [(lower.at(0).value + upper.at(0).value) / 2, 0];
  const lowerBottom = meet(lower.at, bottom, middle);
  const upperBottom = meet(upper.at, bottom, middle);
  const lowerTop = meet(lower.at, top, middle);
  const upperTop = meet(upper.at, top, middle);
  const upright = (name: EdgeName, at: RawEdge['at'], from: Point, to: Point): RawEdge => ({
    name,
    upright: true,
    at,
    kinks: [],
    samples: sampleEdge(at, from[1], to[1]),
  });
  const level = (name: EdgeName, at: RawEdge['at'], from: Point, to: Point, kinks: number[] = []): RawEdge => ({
    name,
    upright: false,
    at,
    kinks,
    samples: sampleEdge(at, from[0], to[0], kinks),
  });
  return {
    lower: upright(lower.name, lower.at, lowerBottom, lowerTop),
    upper: upright(upper.name, upper.at, upperBottom, upperTop),
    bottom: level('bottom', bottom, lowerBottom, upperBottom, bottomKinks),
    top: level('top', top, lowerTop, upperTop),
  };
}

/** Counter-clockwise in (u, v): along the bottom, up the far side, back along the top, down. Corners once each. */
function outlineOf({ lower, upper, bottom, top }: RawEdges): Point[] {
  const points = (edge: RawEdge, samples: EdgeSample[]): Point[] =>
    samples.slice(0, -1).map((each) => wallPoint(edge, each));
  return [
    ...points(bottom, bottom.samples),
    ...points(upper, upper.samples),
    ...points(top, [...top.samples].reverse()),
    ...points(lower, [...lower.samples].reverse()),
  ];
}

const regionOf = (outline: Point[]): Region => {
  const us = outline.map(([u]) => u);
  const vs = outline.map(([, v]) => v);
  return { u: [Math.min(...us), Math.max(...us)], v: [Math.min(...vs), Math.max(...vs)] };
};

/** Moves top and front out where the readings leave the panel no height or depth, so that it draws, and says so. */
function withRoom(edges: PanelEdges, job: Job, name: PanelName, problems: Problem[]): PanelEdges {
  let { top, upper } = edges;
  const ends = [edges.lower.at(0).value, edges.upper.at(0).value];
  const lowest = Math.max(...ends.map((u) => edges.bottom(u).value));
  const height = job.fit.top - lowest;
  if (height < LEAST_SIZE) {
    problems.push({
      where: `panels.${name}`,
      what: 'the top of the panels is no higher than the rim; raise the top or check the drops to the rim',
      howMuch: height,
    });
    top = () => ({ value: lowest + LEAST_SIZE, gradient: null });
  }
  const depth = edges.upper.at(0).value - edges.lower.at(0).value;
  if (depth < LEAST_SIZE) {
    problems.push({
      where: `panels.${name}`,
      what:
        name === 'back'
          ? 'the corners leave no width; check the readings to them'
          : 'the front edge leaves no depth; check the depth readings and the set-back',
      howMuch: depth,
    });
    const lower = edges.lower.at;
    upper = { name: upper.name, at: (height) => ({ ...lower(height), value: lower(height).value + LEAST_SIZE }) };
  }
  return { ...edges, top, upper };
}

function holesOf(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  name: PanelName,
  outline: Point[],
  flat: FlatMap,
): PanelHole[] {
  return job.fixtures
    .filter(({ wall }) => wall === name)
    .map((fixture) => {
      const { u, v, from } = holeCentre(alcove, job, fixture);
      return {
        id: fixture.id,
        kind: fixture.kind,
        u: u.value,
        v: v.value,
        sheet: flat.toSheet(u.value, v.value),
        diameter: fixture.hole,
        sd: { u: standardDeviation(u, covariance), v: standardDeviation(v, covariance) },
        aboveRim: fixture.aboveRim,
        from,
        edgeDistance: distanceToOutline([u.value, v.value], outline) - fixture.hole / 2,
      };
    });
}

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
