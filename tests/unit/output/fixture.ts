import {
  type EdgeName,
  type Job,
  type JobInput,
  type Mark,
  type Panel,
  type PanelEdge,
  type PanelHole,
  type PanelName,
  type Point,
  parseJob,
  type Result,
  solve,
} from '../../../src/core';

export const jobInput: JobInput = {
  format: 'nookwright-job',
  version: 1,
  name: 'Alcove of the ground-floor bath',
  display: 'in',
  readings: [
    { id: 'c1', kind: 'tape-to-corner', side: 'left', height: 700, value: 752.4 },
    { id: 'c2', kind: 'tape-to-corner', side: 'left', height: -700, value: 748.9, note: 'behind the soap dish' },
    { id: 'c3', kind: 'tape-to-corner', side: 'right', height: 0, value: 757.2 },
    { id: 'm1', kind: 'tape-to-rim', wall: 'back', at: -600, value: 741.3 },
    { id: 's1', kind: 'span', height: 0, at: 600, value: 1519.1 },
    {
      id: 'p1',
      kind: 'plumb',
      wall: 'right',
      at: 400,
      gaps: [
        { height: -700, value: 31 },
        { height: 0, value: 28.5 },
        { height: 900, value: 22 },
      ],
    },
    {
      id: 'e1',
      kind: 'straightedge',
      wall: 'right',
      from: { at: 100, height: -700 },
      to: { at: 100, height: 900 },
      value: 6,
    },
    { id: 'q1', kind: 'square', side: 'left', height: 0, alongBack: 600, alongSide: 600, value: 851.4 },
    { id: 'a1', kind: 'angle', side: 'right', height: 0, value: 89.4 },
    {
      id: 'd1',
      kind: 'diagonal',
      from: { side: 'left', height: -700 },
      to: { side: 'right', height: 700 },
      value: 2068.4,
      off: true,
    },
    { id: 'f1', kind: 'depth', wall: 'right', height: 0, value: 771.5 },
  ],
  fixtures: [
    { id: 'valve', kind: 'valve', wall: 'right', aboveRim: 330, fromBack: 381, hole: 95 },
    { id: 'spout', kind: 'spout', wall: 'right', aboveRim: 100, fromBack: 381, hole: 32 },
    { id: 'head', kind: 'shower-head', wall: 'right', aboveRim: 1500, fromBack: 381, fromBackOf: 'wall', hole: 22 },
  ],
  sheets: {
    back: { width: 1575, height: 2440 },
    left: { width: 815, height: 2440 },
    right: { width: 815, height: 2440 },
  },
};

export function fixtureJob(change: Partial<JobInput> = {}): Job {
  const parsed = parseJob({ ...jobInput, ...change });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
}

interface PanelPlan {
  name: PanelName;
  /** u of the edge at low u and of the one at high u, at a height */
  low: (v: number) => number;
  high: (v: number) => number;
  bottom: (u: number) => number;
  top: number;
  datum: number;
  sheet: { width: number; height: number };
  methods: Partial<Record<EdgeName, PanelEdge['method']>>;
  sd: number;
  holes?: PanelHole[];
}

/** The flat sheet differs a little from wall coordinates, so that a mix-up shows. */
const flatten = ([u, v]: Point): Point => [u * 1.0002 + 0.001 * v, v * 1.0001];

/** A panel by straight evaluation of its edge functions; no clipping rules in here. */
export function fixturePanel(plan: PanelPlan): Panel {
  const { name, low, high, top } = plan;
  const [lowName, highName]: [EdgeName, EdgeName] = name === 'back' ? ['left', 'right'] : ['back', 'front'];
  const corner = (edge: (v: number) => number): Point => {
    let v = plan.bottom(edge(-700));
    for (let i = 0; i < 20; i++) v = plan.bottom(edge(v));
    return [edge(v), v];
  };
  const [bl, br] = [corner(low), corner(high)];
  const between = (n: number) => Array.from({ length: n - 1 }, (_, i) => (i + 1) / n);
  const mix = (a: number, b: number, s: number) => a + (b - a) * s;
  const outline: Point[] = [
    bl,
    ...between(20).map((s): Point => [mix(bl[0], br[0], s), plan.bottom(mix(bl[0], br[0], s))]),
    br,
    ...between(24).map((s): Point => [high(mix(br[1], top, s)), mix(br[1], top, s)]),
    [high(top), top],
    [low(top), top],
    ...between(24).map((s): Point => [low(mix(top, bl[1], s)), mix(top, bl[1], s)]),
  ];
  const flat = outline.map(flatten);
  const [left, right] = [Math.min(...flat.map(([x]) => x)), Math.max(...flat.map(([x]) => x))];
  const highest = Math.max(...flat.map(([, y]) => y));
  const spare = plan.sheet.width - (right - left);
  const sheet = { left: left - spare / 2, right: right + spare / 2, bottom: highest - plan.sheet.height, top: highest };
  const mark = (point: Point, sd: number, sliver: number): Mark => ({
    u: point[0],
    v: point[1],
    sd,
    sheet: flatten(point),
    sliver,
  });
  const upright = (edge: (v: number) => number, from: number, sign: 1 | -1) =>
    between(4)
      .concat(0, 1)
      .sort()
      .map((s) => {
        const v = mix(from, top, s);
        const point: Point = [edge(v), v];
        return mark(point, plan.sd, sign * (flatten(point)[0] - (sign === 1 ? sheet.left : sheet.right)));
      });
  const level = (at: (u: number) => number, from: number, to: number, side: 'bottom' | 'top') =>
    [0, 0.5, 1].map((s) => {
      const u = mix(from, to, s);
      const point: Point = [u, at(u)];
      return mark(point, side === 'top' ? 0.1 : plan.sd * 0.7, side === 'top' ? 0 : flatten(point)[1] - sheet.bottom);
    });
  const edge = (edgeName: EdgeName, marks: Mark[]): PanelEdge => ({
    marks,
    sliver: { min: Math.min(...marks.map((m) => m.sliver)), max: Math.max(...marks.map((m) => m.sliver)) },
    method: plan.methods[edgeName] ?? 'knife',
    misfit: 0.3,
  });
  const gaps =
    right - left > plan.sheet.width
      ? [{ edge: highName, from: [br[0], br[1]] as Point, to: [high(top), top] as Point, max: -spare / 2 }]
      : [];
  const ends = (y: number): [Point, Point] => [
    [left, y],
    [right, y],
  ];
  return {
    name,
    outline,
    holes: plan.holes ?? [],
    gaps,
    edges: {
      [lowName]: edge(lowName, upright(low, bl[1], 1)),
      [highName]: edge(highName, upright(high, br[1], -1)),
      bottom: edge('bottom', level(plan.bottom, bl[0], br[0], 'bottom')),
      top: edge(
        'top',
        level(() => top, low(top), high(top), 'top'),
      ),
    },
    flat: {
      outline: flat,
      sheet,
      levelLine: ends(0),
      unfolding: { strain: 0, at: [], height: [], strains: [] },
      plumbDatum: {
        at: plan.datum,
        line: [
          [plan.datum, Math.min(...flat.map(([, y]) => y))],
          [plan.datum, highest],
        ],
      },
    },
    thickness: 6,
    area: 2.4e6,
    bedMax: 4.4,
    strainMax: 0.00012,
    worst95: 1.96 * plan.sd,
  };
}

const hole = (
  id: string,
  kind: string,
  u: number,
  v: number,
  diameter: number,
  aboveRim: number,
  of: 'panel' | 'wall',
): PanelHole => ({
  id,
  kind,
  u,
  v,
  sheet: flatten([u, v]),
  diameter,
  sd: { u: 0.9, v: 0.6 },
  aboveRim,
  from: { of, distance: 381 },
  edgeDistance: 120,
});

/** A solved job whose panels are exchanged for ones of simple, known geometry. */
export function fixtureResult(): Result {
  const back = fixturePanel({
    name: 'back',
    low: (v) => -752 + 0.004 * v + 0.000006 * v * v,
    high: (v) => 757 - 0.006 * v,
    bottom: (u) => -742 + 0.003 * u,
    top: 980,
    datum: 0,
    sheet: { width: 1575, height: 2440 },
    methods: { left: 'jigsaw', top: 'factory' },
    sd: 0.7,
  });
  const left = fixturePanel({
    name: 'left',
    low: (v) => 9 + 0.003 * v,
    high: (v) => 765 + 0.002 * v,
    bottom: (u) => -744 - 0.002 * u,
    top: 980,
    datum: 380,
    sheet: { width: 755, height: 2440 },
    methods: { back: 'plane', front: 'plane', top: 'factory' },
    sd: 0.3,
  });
  const right = fixturePanel({
    name: 'right',
    low: (v) => 10 + 0.00001 * v * v - 0.002 * v,
    high: (v) => 771 - 0.004 * v,
    bottom: (u) => -739 + 0.001 * u,
    top: 980,
    datum: 390,
    sheet: { width: 815, height: 2440 },
    methods: { back: 'jigsaw', top: 'factory' },
    sd: 0.8,
    holes: [
      hole('valve', 'valve', 391, -409, 95, 330, 'panel'),
      hole('spout', 'spout', 391, -639, 32, 100, 'panel'),
      hole('head', 'shower-head', 381, 761, 22, 1500, 'wall'),
    ],
  });
  return {
    ...solve(fixtureJob()),
    panels: { back, left, right },
    problems: [{ where: 'panels.left', what: 'the sheet is too narrow; lay a wider one', howMuch: 12.5 }],
  };
}
