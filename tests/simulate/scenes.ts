import type { JobInput, Reading } from '../../src/core/job-file';
import { fullPlan } from './fullPlan';
import { writtenDown } from './noise';
import type { TrueAlcove } from './trueAlcove';

/** A demo job and the alcove it was measured in. */
export interface Scene {
  file: string;
  alcove: TrueAlcove;
  job: JobInput;
}

const inches = (value: number): number => Number((25.4 * value).toFixed(3));

const nearlyTrue: TrueAlcove = {
  back: { y: 1.1e-3, xy: 0.5e-6, xx: -0.6e-6, yy: 0.9e-6 },
  left: { c: -764, y: 1.6e-3, z: -1.4e-3, yz: 0.8e-6, yy: -0.7e-6, zz: 0.6e-6 },
  right: { c: 760, y: 0.9e-3, z: 1.8e-3, yz: -0.6e-6, yy: 0.8e-6, zz: -0.9e-6 },
  rim: { c: -748, x: 0.8e-3, z: 0.6e-3, xx: 0.3e-6, zz: -0.5e-6 },
  front: { left: { f0: 768, f1: 0.9e-3 }, right: { f0: 771, f1: -1.2e-3 } },
  humps: [],
};

const skewed: TrueAlcove = {
  back: { y: -9.5e-3, xy: 6.2e-6, xx: 4.4e-6, yy: 3.1e-6 },
  left: { c: -741, y: -11.8e-3, z: 16.5e-3, yz: 5.2e-6, yy: 2.4e-6, zz: -3.5e-6 },
  right: { c: 772, y: 9.2e-3, z: 13.8e-3, yz: -6.6e-6, yy: 13.5e-6, zz: 7.2e-6 },
  rim: { c: -744, x: 6.1e-3, z: -4.2e-3, xx: 1.4e-6, zz: 2.1e-6 },
  front: { left: { f0: 759, f1: 10.4e-3 }, right: { f0: 782, f1: -7.8e-3 } },
  humps: [],
};

const showerBase: TrueAlcove = {
  back: { y: 0.7e-3, xy: -0.4e-6, xx: 0.8e-6, yy: -0.6e-6 },
  left: { c: -601, y: 21.5e-3, z: -3.2e-3, yz: 3.8e-6, yy: -4.1e-6, zz: 1.2e-6 },
  right: { c: 604, y: -0.9e-3, z: 2.1e-3, yz: 0.5e-6, yy: 0.7e-6, zz: -0.4e-6 },
  rim: { c: -1109, x: 1.2e-3, z: -1.6e-3, xx: 0.2e-6, zz: 0.4e-6 },
  front: { left: { f0: 905, f1: 1.4e-3 }, right: { f0: 902, f1: -2.2e-3 } },
  humps: [],
};

/** An invented price list, cents. */
const priceList: JobInput['prices'] = {
  sheets: { back: 31900, left: 18900, right: 18900 },
  looks: { stone: 6500, ribbed: 9500, 'large-format': 7800 },
  trim: [
    { upTo: 40, metre: 1140 },
    { upTo: 60, metre: 1480 },
    { upTo: 90, metre: 1960 },
  ],
  angleStrip: 690,
  shelf: 6200,
  packs: {
    adhesive: 1650,
    sealant: 1190,
    caulk: 580,
    flashingTape: 2150,
    strips: 1340,
    painterTape: 720,
    backerRod: 650,
    brackets: 540,
    screws: 980,
    alcohol: 610,
  },
  labour: { hour: 6800, plumbing: 11500 },
  waste: 0.05,
  disposal: 9500,
  tax: { name: 'Sales tax', materials: 7.25 },
};

/** Finishes of invented looks. */
const finishes = {
  saltpan: { look: 'stone', colour: '#e6e4de', second: '#a8a59c', size: 520, seed: 12, gloss: 0.55, trim: '#f4f3ef' },
  reedbank: { look: 'ribbed', colour: '#d9d5c9', second: '#b5ae9d', size: 22, seed: 4, gloss: 0.25, trim: '#d9d5c9' },
  flagfield: {
    look: 'large-format',
    colour: '#cfd3d0',
    second: '#f1f1ee',
    size: 610,
    seed: 8,
    gloss: 0.4,
    trim: '#6b706f',
  },
} as const;

/**
 * The demo jobs, all invented: chosen alcoves, measured on a full plan with seeded instrument errors and rounded to what
 * a tape shows.
 */
export const scenes: Scene[] = [
  scene(
    'nearly-true',
    nearlyTrue,
    { seed: 1, top: inches(36), display: 'in' },
    {
      name: 'Quillmarsh Row 4: hall bath, nearly true',
      levelAboveFloor: inches(49),
      rim: {
        kind: 'tub',
        width: inches(28.5),
        apronHeight: inches(19.5),
        profile: [
          [0, 0],
          [10, -0.8],
          [20, -3.4],
          [26, -7],
          [30, -12],
        ],
        apron: [
          [-2, -40],
          [-3, -220],
          [0, -460],
        ],
      },
      fixtures: [
        { id: 'valve', kind: 'valve', wall: 'right', aboveRim: inches(13), fromBack: inches(15), hole: inches(4) },
        { id: 'spout', kind: 'spout', wall: 'right', aboveRim: inches(5), fromBack: inches(15), hole: inches(1.25) },
        {
          id: 'shower head',
          kind: 'shower-head',
          wall: 'right',
          aboveRim: inches(58),
          fromBack: inches(15),
          hole: inches(1.25),
        },
      ],
      fit: { wetWall: 'right', thickness: inches(0.25), top: inches(36) },
      finish: finishes.flagfield,
      prices: priceList,
      sheets: {
        back: { width: inches(62), height: inches(96) },
        left: { width: inches(32), height: inches(96) },
        right: { width: inches(32), height: inches(96) },
      },
      trim: {
        width: inches(1.5),
        thickness: inches(0.25),
        lip: inches(0.25),
        rise: inches(0.5),
        overhang: inches(0.25),
      },
      shelves: [{ id: 'soap', corner: 'left', aboveRim: inches(20), back: inches(9), side: inches(9) }],
    },
  ),
  scene(
    'skewed-bowed-wet-wall',
    skewed,
    { seed: 2, top: inches(38), display: 'in' },
    {
      name: 'Vexleigh 12: upstairs bath, skewed, wet wall bowed',
      levelAboveFloor: inches(49),
      rim: {
        kind: 'tub',
        width: inches(27.5),
        apronHeight: inches(19.5),
        profile: [
          [0, 0],
          [12, -1.1],
          [22, -4],
          [30, -9],
          [36, -16],
        ],
        apron: [
          [-4, -30],
          [-12, -90],
          [-18, -240],
          [-14, -400],
          [-2, -470],
        ],
      },
      fixtures: [
        {
          id: 'valve',
          kind: 'valve',
          wall: 'right',
          aboveRim: inches(12.5),
          fromBack: inches(15.5),
          fromBackOf: 'wall',
          hole: inches(3.75),
        },
        {
          id: 'spout',
          kind: 'spout',
          wall: 'right',
          aboveRim: inches(4.5),
          fromBack: inches(15.25),
          fromBackOf: 'wall',
          hole: inches(1.25),
        },
        {
          id: 'shower head',
          kind: 'shower-head',
          wall: 'right',
          aboveRim: inches(60),
          fromBack: inches(15.5),
          fromBackOf: 'wall',
          hole: inches(1.25),
        },
        {
          id: 'grab bar, left end',
          kind: 'grab-bar',
          wall: 'back',
          aboveRim: inches(14.5),
          fromPlumbLine: inches(-12),
          hole: inches(1),
        },
        {
          id: 'grab bar, right end',
          kind: 'grab-bar',
          wall: 'back',
          aboveRim: inches(14.5),
          fromPlumbLine: inches(12),
          hole: inches(1),
        },
      ],
      fit: { wetWall: 'right', thickness: inches(0.125), flexible: true, top: inches(38) },
      finish: finishes.saltpan,
      choices: [
        {
          id: 'Narrow trim, ribbed',
          finish: finishes.reedbank,
          trim: { width: inches(1.25), verticalWidth: inches(0.625) },
          shelves: [],
        },
        {
          id: 'Wide dark trim, two shelves',
          finish: { ...finishes.saltpan, trim: '#4c5150' },
          trim: { width: inches(2.25) },
          shelves: [
            { id: 'upper', corner: 'left', aboveRim: inches(38) },
            { id: 'lower', corner: 'left', aboveRim: inches(22) },
          ],
        },
      ],
      prices: priceList,
      sheets: {
        back: { width: inches(62), height: inches(96) },
        left: { width: inches(32), height: inches(96) },
        right: { width: inches(32), height: inches(96) },
      },
      trim: {
        width: inches(2),
        verticalWidth: inches(1.5),
        thickness: inches(0.25),
        joinery: 'mitre',
        insideCorners: true,
      },
      shelves: [
        { id: 'low', corner: 'left', aboveRim: inches(16), back: inches(9), side: inches(9), front: 'returned' },
        { id: 'high', corner: 'left', aboveRim: inches(32), back: inches(9), side: inches(9), front: 'returned' },
      ],
    },
    (readings) => afterAnInchMisread(readings, 'corner-right-2'),
  ),
  scene(
    'shower-base-one-wall-out',
    showerBase,
    { seed: 3, top: 1000, display: 'mm' },
    {
      name: 'Ostrigg House, flat 7: shower base, left wall far out of plumb',
      levelAboveFloor: 1200,
      rim: { kind: 'shower-base', width: 900, apronHeight: 90, profile: [] },
      fixtures: [
        { id: 'valve', kind: 'valve', wall: 'right', aboveRim: 1080, fromBack: 450, hole: 110 },
        { id: 'hand shower', kind: 'hand-shower', wall: 'right', aboveRim: 1080, fromBack: 250, hole: 30 },
        { id: 'shower head', kind: 'shower-head', wall: 'right', aboveRim: 1960, fromBack: 450, hole: 30 },
        { id: 'grab bar, lower end', kind: 'grab-bar', wall: 'left', aboveRim: 780, fromBack: 350, hole: 25 },
        { id: 'grab bar, upper end', kind: 'grab-bar', wall: 'left', aboveRim: 1280, fromBack: 350, hole: 25 },
      ],
      fit: { wetWall: 'right', thickness: 8, bed: 3, cornerJoint: 3, rimJoint: 4, top: 1000, markTolerance: 0.5 },
      finish: finishes.reedbank,
      prices: { ...priceList, currency: 'EUR', tax: { name: 'VAT', materials: 19, labour: 19 } },
      sheets: {
        back: { width: 1250, height: 2400 },
        left: { width: 950, height: 2400 },
        right: { width: 950, height: 2400 },
      },
      trim: {
        width: 50,
        thickness: 8,
        stock: [{ length: 2400 }, { length: 3000 }],
      },
      shelves: [
        { id: 'corner', corner: 'left', aboveRim: 900, back: 250, side: 250, slope: 18 },
        { id: 'foot rest', corner: 'right', aboveRim: 420, back: 180, side: 180, front: 'straight', slope: 18 },
      ],
    },
  ),
];

function scene(
  file: string,
  alcove: TrueAlcove,
  { seed, top, display }: { seed: number; top: number; display: 'in' | 'mm' },
  { name, ...choices }: Omit<JobInput, 'format' | 'version' | 'display' | 'readings'>,
  retake: (readings: Reading[]) => Reading[] = (readings) => readings,
): Scene {
  const grid = display === 'in' ? 25.4 : 10;
  const readings = retake(writtenDown(fullPlan(alcove, { top, seed, grid }), display, seed));
  return {
    file: `${file}.json`,
    alcove,
    job: { format: 'nookwright-job', version: 1, name, display, ...choices, readings },
  };
}

/** A first try at a reading, an inch long, kept beside the one that replaced it. */
function afterAnInchMisread(readings: Reading[], id: string): Reading[] {
  return readings.flatMap((reading): Reading[] => {
    if (reading.id !== id || reading.kind === 'plumb') return [reading];
    const misread: Reading = {
      ...reading,
      id: `${id}-misread`,
      value: Number((reading.value + 25.4).toFixed(5)),
      off: true,
      note: 'Read an inch long; taken again.',
    };
    return [misread, reading];
  });
}
