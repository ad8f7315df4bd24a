import type { JobInput } from '../../../../src/core/job-file';

/** A job with every field and every kind of reading filled in. */
export const completeJob = (): JobInput => ({
  format: 'nookwright-job',
  version: 1,
  name: 'Fenholt 3',
  place: '14 Kiln Lane, upstairs bath',
  display: 'mm',
  levelAboveFloor: 1240,
  instruments: {
    tape: { sd: 0.8 },
    laser: { sd: 1.1 },
    level: { sd: 0.4 },
    rule: { sd: 0.6 },
    straightedge: { sd: 0.3 },
    angleFinder: { sd: 0.2 },
  },
  priors: { plumb: 7, square: 9, twist: 3, bow: 5, rimLevel: 4, frontPlumb: 6 },
  rim: {
    kind: 'shower-base',
    width: 800,
    apronHeight: 90,
    profile: [
      [0, 0],
      [20, -1],
    ],
    apron: [
      [0, -30],
      [-15, -85],
    ],
    contourSd: 0.8,
  },
  readings: [
    {
      id: 'r1',
      kind: 'tape-to-corner',
      side: 'left',
      height: 700,
      value: 752.4,
      instrument: 'laser',
      sd: 0.7,
      note: 'n',
      photos: ['p1'],
      off: true,
      repeats: [752.9],
      history: [{ value: 725.4, until: '2026-05-04T10:30:00Z' }],
    },
    { id: 'r2', kind: 'tape-to-rim', wall: 'back', at: -600, value: 741 },
    { id: 'r3', kind: 'span', height: 700, at: 600, value: 1520 },
    {
      id: 'r4',
      kind: 'plumb',
      wall: 'left',
      at: 300,
      gaps: [
        { height: 700, value: 30, sd: 0.4, history: [{ value: 31, until: '2026-05-04T10:31:00Z' }] },
        { height: -600, value: 34 },
      ],
    },
    {
      id: 'r5',
      kind: 'straightedge',
      wall: 'right',
      from: { at: 50, height: -600 },
      to: { at: 50, height: 800 },
      value: 3,
    },
    { id: 'r6', kind: 'square', side: 'right', height: 0, alongBack: 600, alongSide: 450, value: 752 },
    { id: 'r7', kind: 'angle', side: 'left', height: 0, value: 89.3 },
    {
      id: 'r8',
      kind: 'diagonal',
      from: { side: 'left', height: -600 },
      to: { side: 'right', height: 900 },
      value: 2130,
    },
    { id: 'r9', kind: 'depth', wall: 'right', height: 700, value: 764 },
  ],
  fixtures: [
    {
      id: 'valve',
      kind: 'valve',
      wall: 'right',
      aboveRim: 330,
      fromBack: 381,
      fromBackOf: 'wall',
      hole: 95,
      takenAt: 'wall',
    },
    { id: 'bar', kind: 'grab-bar', wall: 'back', aboveRim: 360, fromPlumbLine: -240, hole: 20, takenAt: 'face' },
  ],
  studs: [{ id: 's1', wall: 'right', at: 406, width: 45 }],
  fit: {
    wetWall: 'left',
    thickness: 8,
    bed: 3,
    cornerJoint: 2.5,
    rimJoint: 4,
    top: 960,
    frontSetBack: 12,
    markTolerance: 0.5,
    flexible: true,
    keep: { back: ['left', 'top'], left: ['front'], right: ['bottom'] },
  },
  sheets: {
    back: { width: 1600, height: 2400, grain: 'up' },
    left: { width: 820, height: 2400, grain: 'none' },
    right: { width: 820, height: 2400, grain: 'across' },
  },
  trim: {
    top: true,
    sideTops: false,
    verticals: true,
    insideCorners: true,
    width: 50,
    verticalWidth: 60,
    thickness: 8,
    lip: 5,
    rise: 15,
    overhang: 9,
    outerLine: { left: 770, right: 772 },
    joinery: 'mitre',
    joint: 0.5,
    foot: 'rim',
    floorGap: 4,
    angleStrip: { width: 25, thickness: 3 },
    tapeSpacing: 250,
    allowance: 10,
    stock: [{ length: 2400, onHand: 3 }, { length: 3000 }],
  },
  legs: { make: false, joint: 3, floorGap: 5 },
  shelves: [
    {
      id: 'soap',
      corner: 'left',
      aboveRim: 320,
      back: 200,
      side: 180,
      thickness: 15,
      slope: 12,
      gap: 3,
      front: 'returned',
      returns: 40,
    },
  ],
  cutting: { sheets: 'least', kerf: 2, margin: 5, turn: true, leastOffcut: 40 },
  supplies: {
    adhesive: {
      layout: 'beads',
      spacing: 120,
      edgeClear: 50,
      pressedWidth: 30,
      trimBead: 5,
      cartridge: 300,
      waste: 0.2,
    },
    sealant: { cartridge: 300, fillet: 5, toolingLoss: 0.1 },
    caulk: { cartridge: 310, fillet: 4, toolingLoss: 0.2 },
    widestJoint: 10,
    flashingTape: { overlap: 60, roll: 20000 },
    strips: { spacing: 600, edgeClear: 60, width: 20, roll: 5000 },
    backerRod: { roll: 5000 },
    movement: { expansion: 70, swing: 20, capability: 0.5 },
    brackets: { perShelf: 3, screws: 4, box: 100 },
    painterTape: { roll: 40000 },
    alcohol: { perSquareMetre: 60, bottle: 500 },
  },
  tolerances: { set: 'finished', own: { plumb: 3, flat: 4, square: 5, level: 2 } },
  schedule: {
    people: 2,
    start: '2026-03-02',
    from: 450,
    to: 960,
    days: [1, 2, 3, 4, 5, 6],
    rates: {
      shutOff: 10,
      prepareWall: 40,
      tapeMetre: 2,
      knifeMetre: 5,
      planeMetre: 7,
      jigsawMetre: 9,
      jointMetre: 4,
      hole: 15,
      dryFit: 20,
      adhesive: 10,
      setPanel: 12,
      leg: 30,
      trimPiece: 25,
      shelf: 35,
      clean: 30,
      plumbing: 90,
      handOver: 25,
    },
    cure: { adhesive: 48, sealant: 36 },
    temperature: 18,
    skinOver: 12,
  },
  finish: {
    look: 'stone',
    colour: '#e0e2dd',
    second: '#9aa39b',
    size: 420,
    seed: 17,
    gloss: 0.6,
    trim: '#5b5f5d',
  },
  choices: [
    {
      id: 'reeds',
      finish: {
        look: 'ribbed',
        colour: '#d8d2c4',
        second: '#b9b1a0',
        size: 18,
        seed: 3,
        gloss: 0.2,
        trim: '#d8d2c4',
      },
      trim: { width: 70, verticalWidth: 80, thickness: 9, lip: 4, rise: 20, overhang: 10, joinery: 'butt' },
      shelves: [
        {
          id: 'low',
          corner: 'right',
          aboveRim: 300,
          back: 210,
          side: 190,
          thickness: 14,
          slope: 13,
          gap: 2,
          front: 'round',
          returns: 50,
        },
      ],
    },
  ],
  prices: {
    currency: 'EUR',
    sheets: { back: 31000, left: 18000, right: 18500 },
    looks: { stone: 6000, ribbed: 7000, 'large-format': 8000 },
    trim: [{ upTo: 60, metre: 1250 }],
    angleStrip: 700,
    shelf: 5400,
    packs: {
      adhesive: 1900,
      sealant: 1100,
      caulk: 600,
      flashingTape: 1400,
      strips: 900,
      painterTape: 500,
      alcohol: 450,
    },
    labour: { hour: 6200, prepare: 5800, cut: 6100, fit: 6300, trim: 6400, seal: 6000, plumbing: 9500 },
    waste: 0.1,
    disposal: 12000,
    others: [{ label: 'delivery', amount: 8000, taxedAs: 'none' }],
    tax: { name: 'VAT', materials: 19, labour: 7 },
  },
  quote: {
    client: 'Fen family',
    from: 'Workshop by the mill',
    number: '12/3',
    date: '2026-02-27',
    validity: 21,
    exclusions: ['moving pipes'],
  },
});

export type Path = (string | number)[];

/** A copy of the value with what stands at the path replaced (undefined: taken out). */
export function withAt(value: unknown, path: Path, replacement: unknown): unknown {
  const copy = structuredClone(value);
  let parent = copy as Record<string | number, unknown>;
  for (const key of path.slice(0, -1)) parent = parent[key] as Record<string | number, unknown>;
  const last = path.at(-1)!;
  if (replacement === undefined) delete parent[last];
  else parent[last] = replacement;
  return copy;
}

/** Every place in a value, with what stands there. */
export function places(value: unknown, path: Path = []): { path: Path; value: unknown }[] {
  const inner =
    typeof value === 'object' && value !== null
      ? Object.entries(value).flatMap(([key, each]) =>
          places(each, [...path, Array.isArray(value) ? Number(key) : key]),
        )
      : [];
  return [{ path, value }, ...inner];
}
