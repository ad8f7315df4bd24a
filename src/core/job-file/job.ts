import { z } from 'zod';
import { bedding } from './bedding';
import { carrying } from './carrying';
import { choice } from './choice';
import { cutting } from './cutting';
import { distinctIds } from './distinctIds';
import { idText, lineText, millimetres, standardDeviation } from './field';
import { finish } from './finish';
import { legs } from './leg';
import { prices } from './prices';
import { LEAST_PROFILE_STEP } from './profileStep';
import { quote } from './quote';
import { reading } from './reading';
import { scan } from './scan';
import { schedule } from './schedule';
import { shelves } from './shelf';
import { supplies } from './supplies';
import { tolerances } from './tolerances';
import { trim } from './trim';

/** One-sigma accuracy of each instrument. Defaults and their sources: core/survey/instruments.ts. */
const instruments = z.strictObject({
  /** mm; without it the tape's class II error grows with the length measured */
  tape: z.strictObject({ sd: standardDeviation(50) }).optional(),
  laser: z.strictObject({ sd: standardDeviation(50) }).optional(),
  /** mm per m; kept with the job, for no kind of reading is taken with a level alone */
  level: z.strictObject({ sd: standardDeviation(50) }).optional(),
  /** a gap read with a rule, mm */
  rule: z.strictObject({ sd: standardDeviation(50) }).optional(),
  straightedge: z.strictObject({ sd: standardDeviation(50) }).optional(),
  /** degrees */
  angleFinder: z.strictObject({ sd: standardDeviation(10) }).optional(),
});

/** Weak priors, 1 sigma. mm/m for slopes, mm/m² for the quadratic and twist coefficients. */
const priors = z.strictObject({
  plumb: standardDeviation(200).default(8),
  square: standardDeviation(200).default(10),
  twist: standardDeviation(200).default(4),
  bow: standardDeviation(200).default(4),
  rimLevel: standardDeviation(200).default(5),
  frontPlumb: standardDeviation(200).default(8),
});

const rim = z
  .strictObject({
    kind: z.enum(['tub', 'shower-base']).default('tub'),
    /** mm from the back wall to the apron's outer face */
    width: millimetres(300, 2500).default(760),
    /** mm from the floor to the rim at the apron */
    apronHeight: millimetres(0, 1200).default(500),
    /**
     * Contour of the rim where it rolls over towards the apron: points [outward, rise] in mm; outward runs from where
     * the rim leaves its plane to the apron's outer face (the last point lies at z = width), rise is negative downwards.
     */
    profile: z
      .array(z.tuple([millimetres(0, 500), millimetres(-500, 100)]))
      .max(200)
      .default([])
      .refine(
        (points) => points.every((point, i) => i === 0 || point[0] >= points[i - 1]![0] + LEAST_PROFILE_STEP),
        `each point must lie at least ${LEAST_PROFILE_STEP} mm further out than the one before`,
      ),
    /**
     * Contour of the apron below that: points [outward, rise] in mm from the apron's outer face (z = width) and from the
     * rim's plane, downwards; outward is negative where the apron stands back. Without points the apron is plumb.
     */
    apron: z
      .array(z.tuple([millimetres(-300, 300), millimetres(-1500, 0)]))
      .max(400)
      .default([])
      .refine(
        (points) => points.every((point, i) => i === 0 || point[1] < points[i - 1]![1]),
        'each point must lie lower than the one before',
      ),
    /**
     * standard deviation (1 sigma) of the contour's points across the apron, mm: contour gauge or offsets, and the
     * width
     */
    contourSd: standardDeviation(50).default(1),
  })
  .refine(({ profile, width }) => (profile.at(-1)?.[0] ?? 0) <= width, {
    path: ['profile'],
    message: 'reaches further out than the rim is wide; correct the outward distances or the width',
  });

const fixtureCommon = {
  id: idText,
  kind: z.enum(['valve', 'spout', 'shower-head', 'hand-shower', 'body-spray', 'grab-bar', 'other']),
  /** mm from the finished rim straight up to the centre */
  aboveRim: millimetres(-200, 2600),
  /** diameter in mm of the hole to cut */
  hole: millimetres(4, 400),
  /**
   * where both distances were taken: at the finished panel's face, or at the bare wall where a pipe comes out of it, which
   * then stands square to the wall
   */
  takenAt: z.enum(['face', 'wall']).default('face'),
};
const sideFixture = z.strictObject({
  ...fixtureCommon,
  wall: z.enum(['left', 'right']),
  /** mm from the back to the centre, horizontally */
  fromBack: millimetres(0, 3000),
  /** what `fromBack` is measured from: the bare back wall or the face of the back panel */
  fromBackOf: z.enum(['panel', 'wall']).default('panel'),
});
const backFixture = z.strictObject({
  ...fixtureCommon,
  wall: z.literal('back'),
  /** mm from the plumb line to the centre, right positive */
  fromPlumbLine: millimetres(-3000, 3000),
});
const fixture = z.discriminatedUnion('wall', [
  sideFixture.extend({ wall: z.literal('left') }),
  sideFixture.extend({ wall: z.literal('right') }),
  backFixture,
]);

/** Edges whose factory edge is kept; along an axis with none kept the sheet is centred. */
const backLay = z
  .array(z.enum(['left', 'right', 'top', 'bottom']))
  .default(['top'])
  .refine((kept) => !(kept.includes('left') && kept.includes('right')), 'keep either left or right, not both')
  .refine((kept) => !(kept.includes('top') && kept.includes('bottom')), 'keep either top or bottom, not both');
const sideLay = z
  .array(z.enum(['back', 'front', 'top', 'bottom']))
  .default(['top'])
  .refine((kept) => !(kept.includes('back') && kept.includes('front')), 'keep either back or front, not both')
  .refine((kept) => !(kept.includes('top') && kept.includes('bottom')), 'keep either top or bottom, not both');

const fit = z.strictObject({
  wetWall: z.enum(['left', 'right', 'back']).default('right'),
  /** panel thickness, mm */
  thickness: millimetres(0.5, 50).default(6),
  /** adhesive bed between wall and panel, mm */
  bed: millimetres(0, 30).default(2),
  /** clearance to the neighbouring surface at an inside corner, flashing tape included, mm */
  cornerJoint: millimetres(0, 30).default(2),
  /** clearance to the rim, mm */
  rimJoint: millimetres(0, 30).default(3),
  /** height of the panels' top above the level line, mm */
  top: millimetres(-1000, 3000).default(980),
  /** distance the side panels stop short of the wall's front edge, mm */
  frontSetBack: millimetres(-300, 1000).default(0),
  /** a straight cut between marks keeps within this of the true curve, mm */
  markTolerance: millimetres(0.05, 10).default(0.8),
  /** the sheet follows a bowed wall; otherwise it is as stiff as `bedding` says */
  flexible: z.boolean().default(false),
  /** factory edges to keep, per panel */
  keep: z
    .strictObject({ back: backLay, left: sideLay, right: sideLay })
    .default({ back: ['top'], left: ['top'], right: ['top'] }),
});

const sheet = z.strictObject({
  width: millimetres(100, 6000),
  height: millimetres(100, 6000),
  /** which way grain or pattern runs on the sheet as it stands: along its height, its width, or neither */
  grain: z.enum(['none', 'up', 'across']).default('none'),
});

/** A stud or blocking behind a wall, upright. Lengths in mm. */
const stud = z.strictObject({
  id: idText,
  wall: z.enum(['left', 'back', 'right']),
  /** of its middle: from the plumb line on the back wall, right positive; out from the back wall on a side wall */
  at: millimetres(-3000, 3000),
  width: millimetres(10, 300).default(38),
});

/** A whole job as saved to a file: readings and choices, nothing derived. Lengths in mm. */
export const jobSchema = z.strictObject({
  format: z.literal('nookwright-job'),
  version: z.literal(1),
  name: lineText(200).default('Untitled job'),
  /** where the alcove is, as the person would find the job again */
  place: lineText(200).optional(),
  display: z.enum(['in', 'mm']).default('in'),
  levelAboveFloor: millimetres(100, 3000).default(1250),
  instruments: instruments.default({}),
  priors: priors.prefault({}),
  rim: rim.prefault({}),
  readings: z.array(reading).max(2000).check(distinctIds('readings')),
  /** what scanners saw: readings of thousands of cells, so in a list of their own */
  scans: z.array(scan).max(8).check(distinctIds('scans')).default([]),
  fixtures: z.array(fixture).max(100).check(distinctIds('fixtures')).default([]),
  /** what is known to stand behind the walls */
  studs: z.array(stud).max(100).check(distinctIds('studs')).default([]),
  fit: fit.prefault({}),
  bedding: bedding.prefault({}),
  sheets: z.strictObject({ back: sheet, left: sheet, right: sheet }),
  trim: trim.prefault({}),
  legs: legs.prefault({}),
  shelves: shelves.default([]),
  cutting: cutting.prefault({}),
  supplies: supplies.prefault({}),
  carrying: carrying.prefault({}),
  schedule: schedule.prefault({}),
  finish: finish.prefault({}),
  /** other ways to finish, to be compared with the job as it stands */
  choices: z
    .array(choice)
    .check(distinctIds('choices'))
    .refine((list) => list.length <= 3, 'must be three at most; take one out first')
    .default([]),
  prices: prices.prefault({}),
  quote: quote.prefault({}),
  tolerances: tolerances.prefault({}),
});

/** A validated job, every default filled in. */
export type Job = z.infer<typeof jobSchema>;
/** A job as it may stand in a file, defaults left out. */
export type JobInput = z.input<typeof jobSchema>;
export type Fixture = Job['fixtures'][number];
export type Stud = Job['studs'][number];
export type Fit = Job['fit'];
export type Bedding = Job['bedding'];
export type Rim = Job['rim'];
export type Priors = Job['priors'];
export type Instruments = Job['instruments'];
export type Sheet = Job['sheets']['back'];
export type Cutting = Job['cutting'];
export type Supplies = Job['supplies'];
export type Carrying = Job['carrying'];
export type Schedule = Job['schedule'];
export type Tolerances = Job['tolerances'];
