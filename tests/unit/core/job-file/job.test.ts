import { describe, expect, it } from 'vitest';
import { type Fault, parseJob, pathText } from '../../../../src/core/job-file';
import { completeJob, type Path, places, withAt } from './completeJob';

const faultsOf = (value: unknown): Fault[] => {
  const parsed = parseJob(value);
  return parsed.ok ? [] : parsed.faults;
};

/** Every number of a job with the least and the most it may be, and the unit that messages name. */
const RANGES: [path: Path, least: number, most: number, unit: string][] = [
  [['levelAboveFloor'], 100, 3000, ' mm'],
  [['instruments', 'tape', 'sd'], 1e-6, 50, ''],
  [['instruments', 'laser', 'sd'], 1e-6, 50, ''],
  [['instruments', 'level', 'sd'], 1e-6, 50, ''],
  [['instruments', 'rule', 'sd'], 1e-6, 50, ''],
  [['instruments', 'straightedge', 'sd'], 1e-6, 50, ''],
  [['instruments', 'angleFinder', 'sd'], 1e-6, 10, ''],
  ...['plumb', 'square', 'twist', 'bow', 'rimLevel', 'frontPlumb'].map((name): [Path, number, number, string] => [
    ['priors', name],
    1e-6,
    200,
    '',
  ]),
  [['rim', 'width'], 300, 2500, ' mm'],
  [['rim', 'apronHeight'], 0, 1200, ' mm'],
  [['rim', 'profile', 1, 1], -500, 100, ' mm'],
  [['rim', 'apron', 0, 0], -300, 300, ' mm'],
  [['rim', 'apron', 1, 0], -300, 300, ' mm'],
  [['rim', 'contourSd'], 1e-6, 50, ''],
  [['readings', 0, 'sd'], 1e-6, 100, ''],
  [['readings', 0, 'height'], -3000, 3000, ' mm'],
  [['readings', 1, 'at'], -3000, 3000, ' mm'],
  [['readings', 1, 'value'], -3000, 3000, ' mm'],
  [['readings', 2, 'height'], -3000, 3000, ' mm'],
  [['readings', 2, 'at'], 0, 3000, ' mm'],
  [['readings', 3, 'gaps', 0, 'height'], -3000, 3000, ' mm'],
  [['readings', 3, 'gaps', 0, 'value'], -300, 600, ' mm'],
  [['readings', 3, 'gaps', 0, 'sd'], 1e-6, 100, ''],
  [['readings', 3, 'gaps', 0, 'history', 0, 'value'], -300, 600, ' mm'],
  [['readings', 4, 'from', 'height'], -3000, 3000, ' mm'],
  [['readings', 4, 'to', 'height'], -3000, 3000, ' mm'],
  [['readings', 4, 'value'], -150, 150, ' mm'],
  [['readings', 5, 'height'], -3000, 3000, ' mm'],
  [['readings', 6, 'height'], -3000, 3000, ' mm'],
  [['readings', 6, 'value'], 60, 120, '°'],
  [['readings', 7, 'from', 'height'], -3000, 3000, ' mm'],
  [['readings', 7, 'to', 'height'], -3000, 3000, ' mm'],
  [['readings', 8, 'height'], -3000, 3000, ' mm'],
  [['fixtures', 0, 'aboveRim'], -200, 2600, ' mm'],
  [['fixtures', 0, 'fromBack'], 0, 3000, ' mm'],
  [['fixtures', 0, 'hole'], 4, 400, ' mm'],
  [['fixtures', 1, 'fromPlumbLine'], -3000, 3000, ' mm'],
  [['scans', 0, 'scaleSd'], 1e-6, 200, ''],
  [['scans', 0, 'tiltSd'], 1e-6, 200, ''],
  [['scans', 0, 'biasSd'], 1e-6, 50, ''],
  [['scans', 0, 'surfaces', 'back', 'noise'], 1e-6, 100, ''],
  ...['back', 'left', 'right', 'rim'].flatMap((surface): [Path, number, number, string][] => {
    const grid: Path = ['scans', 0, 'surfaces', surface];
    return [
      [[...grid, 'from', 0], -6000, 6000, ' mm'],
      [[...grid, 'from', 1], -6000, 6000, ' mm'],
      [[...grid, 'size'], 10, 300, ' mm'],
      [[...grid, 'value', 0], -10_000, 10_000, ' mm'],
      [[...grid, 'sd', 0], 1e-6, 100, ''],
    ];
  }),
  ...['left', 'right'].flatMap((side): [Path, number, number, string][] => {
    const edge: Path = ['scans', 0, 'front', side, 0];
    return [
      [[...edge, 'height'], -3000, 3000, ' mm'],
      [[...edge, 'value'], 0, 6000, ' mm'],
      [[...edge, 'sd'], 1e-6, 100, ''],
    ];
  }),
  [['studs', 0, 'at'], -3000, 3000, ' mm'],
  [['studs', 0, 'width'], 10, 300, ' mm'],
  [['fit', 'thickness'], 0.5, 50, ' mm'],
  [['fit', 'bed'], 0, 30, ' mm'],
  [['fit', 'cornerJoint'], 0, 30, ' mm'],
  [['fit', 'rimJoint'], 0, 30, ' mm'],
  [['fit', 'top'], -1000, 3000, ' mm'],
  [['fit', 'frontSetBack'], -300, 1000, ' mm'],
  [['fit', 'markTolerance'], 0.05, 10, ' mm'],
  [['bedding', 'modulusAcross'], 1, 500_000, ' N/mm²'],
  [['bedding', 'modulusUp'], 1, 500_000, ' N/mm²'],
  [['bedding', 'poisson'], 0, 0.49, ''],
  [['bedding', 'strainLimit'], 0.0001, 0.1, ''],
  [['bedding', 'reach'], 0.5, 60, ' mm'],
  [['bedding', 'pressing'], 0.1, 100_000, ' N/m²'],
  [['bedding', 'shimSpacing'], 50, 1500, ' mm'],
  [['bedding', 'leastShim'], 0.1, 10, ' mm'],
  ...['back', 'left', 'right'].flatMap((panel) =>
    ['width', 'height'].map((size): [Path, number, number, string] => [['sheets', panel, size], 100, 6000, ' mm']),
  ),
  [['trim', 'width'], 8, 300, ' mm'],
  [['trim', 'verticalWidth'], 8, 300, ' mm'],
  [['trim', 'thickness'], 1, 50, ' mm'],
  [['trim', 'lip'], 0, 60, ' mm'],
  [['trim', 'rise'], 0, 200, ' mm'],
  [['trim', 'overhang'], 0, 200, ' mm'],
  [['trim', 'outerLine', 'left'], 100, 3000, ' mm'],
  [['trim', 'outerLine', 'right'], 100, 3000, ' mm'],
  [['trim', 'joint'], 0, 10, ' mm'],
  [['trim', 'floorGap'], 0, 50, ' mm'],
  [['trim', 'angleStrip', 'width'], 10, 100, ' mm'],
  [['trim', 'angleStrip', 'thickness'], 0.5, 5, ' mm'],
  [['trim', 'tapeSpacing'], 50, 2000, ' mm'],
  [['trim', 'allowance'], 0, 200, ' mm'],
  [['trim', 'stock', 0, 'length'], 300, 8000, ' mm'],
  [['trim', 'stock', 0, 'onHand'], 0, 1000, ''],
  [['trim', 'stock', 1, 'length'], 300, 8000, ' mm'],
  [['legs', 'joint'], 0, 20, ' mm'],
  [['legs', 'floorGap'], 0, 50, ' mm'],
  [['shelves', 0, 'aboveRim'], 20, 2400, ' mm'],
  [['shelves', 0, 'back'], 60, 800, ' mm'],
  [['shelves', 0, 'side'], 60, 800, ' mm'],
  [['shelves', 0, 'thickness'], 2, 60, ' mm'],
  [['shelves', 0, 'slope'], 0, 100, ' mm/m'],
  [['shelves', 0, 'gap'], 0, 15, ' mm'],
  [['shelves', 0, 'returns'], 5, 300, ' mm'],
  [['cutting', 'kerf'], 0, 10, ' mm'],
  [['cutting', 'margin'], 0, 50, ' mm'],
  [['cutting', 'leastOffcut'], 1, 1000, ' mm'],
  [['supplies', 'adhesive', 'spacing'], 30, 600, ' mm'],
  [['supplies', 'adhesive', 'edgeClear'], 0, 200, ' mm'],
  [['supplies', 'adhesive', 'pressedWidth'], 5, 200, ' mm'],
  [['supplies', 'adhesive', 'trimBead'], 0, 30, ' mm'],
  [['supplies', 'adhesive', 'cartridge'], 20, 5000, ' mL'],
  [['supplies', 'adhesive', 'waste'], 0, 1, ''],
  ...['sealant', 'caulk'].flatMap((paste): [Path, number, number, string][] => [
    [['supplies', paste, 'cartridge'], 20, 5000, ' mL'],
    [['supplies', paste, 'fillet'], 0, 25, ' mm'],
    [['supplies', paste, 'toolingLoss'], 0, 1, ''],
  ]),
  [['supplies', 'widestJoint'], 3, 50, ' mm'],
  [['supplies', 'flashingTape', 'overlap'], 0, 500, ' mm'],
  [['supplies', 'flashingTape', 'roll'], 500, 100_000, ' mm'],
  [['supplies', 'strips', 'spacing'], 100, 2000, ' mm'],
  [['supplies', 'strips', 'edgeClear'], 0, 500, ' mm'],
  [['supplies', 'strips', 'width'], 5, 150, ' mm'],
  [['supplies', 'strips', 'roll'], 500, 100_000, ' mm'],
  [['supplies', 'backerRod', 'roll'], 500, 200_000, ' mm'],
  [['supplies', 'movement', 'expansion'], 0, 200, ' × 10⁻⁶/K'],
  [['supplies', 'movement', 'expansionMost'], 0, 200, ' × 10⁻⁶/K'],
  ...['swelling', 'swellingMost'].map((name): [Path, number, number, string] => [
    ['supplies', 'movement', name],
    0,
    200,
    ' × 10⁻⁶ per % RH',
  ]),
  [['supplies', 'movement', 'humidity'], 0, 100, ' %'],
  [['supplies', 'movement', 'swing'], 0, 80, ' °C'],
  [['supplies', 'movement', 'capability'], 0.05, 1, ''],
  [['supplies', 'brackets', 'perShelf'], 0, 20, ''],
  [['supplies', 'brackets', 'screws'], 0, 20, ''],
  [['supplies', 'brackets', 'box'], 0, 1000, ''],
  [['supplies', 'painterTape', 'roll'], 500, 200_000, ' mm'],
  [['supplies', 'alcohol', 'perSquareMetre'], 0, 1000, ' mL'],
  [['supplies', 'alcohol', 'bottle'], 50, 5000, ' mL'],
  [['carrying', 'ceiling'], -1000, 6000, ' mm'],
  [['carrying', 'header'], -1000, 6000, ' mm'],
  [['carrying', 'corridor', 'turn'], 10, 170, '°'],
  [['carrying', 'stair', 'pitch'], 10, 75, '°'],
  ...Object.keys(completeJob().schedule!.rates!).map((rate): [Path, number, number, string] => [
    ['schedule', 'rates', rate],
    0,
    1440,
    ' minutes',
  ]),
  [['schedule', 'cure', 'adhesive'], 0, 720, ' hours'],
  [['schedule', 'cure', 'sealant'], 0, 720, ' hours'],
  [['schedule', 'temperature'], -10, 45, ' °C'],
  [['schedule', 'skinOver'], 1, 240, ' minutes'],
  ...[['finish'], ['choices', 0, 'finish']].flatMap((at): [Path, number, number, string][] => [
    [[...at, 'size'], 4, 1500, ' mm'],
    [[...at, 'seed'], 0, 9999, ''],
    [[...at, 'gloss'], 0, 1, ''],
  ]),
  [['choices', 0, 'trim', 'width'], 8, 300, ' mm'],
  [['choices', 0, 'trim', 'verticalWidth'], 8, 300, ' mm'],
  [['choices', 0, 'trim', 'thickness'], 1, 50, ' mm'],
  [['choices', 0, 'trim', 'lip'], 0, 60, ' mm'],
  [['choices', 0, 'trim', 'rise'], 0, 200, ' mm'],
  [['choices', 0, 'trim', 'overhang'], 0, 200, ' mm'],
  [['choices', 0, 'shelves', 0, 'aboveRim'], 20, 2400, ' mm'],
  [['choices', 0, 'shelves', 0, 'back'], 60, 800, ' mm'],
  [['choices', 0, 'shelves', 0, 'side'], 60, 800, ' mm'],
  [['choices', 0, 'shelves', 0, 'thickness'], 2, 60, ' mm'],
  [['choices', 0, 'shelves', 0, 'slope'], 0, 100, ' mm/m'],
  [['choices', 0, 'shelves', 0, 'gap'], 0, 15, ' mm'],
  [['choices', 0, 'shelves', 0, 'returns'], 5, 300, ' mm'],
  ...(
    [
      ...['back', 'left', 'right'].map((panel) => ['prices', 'sheets', panel]),
      ...['stone', 'ribbed', 'large-format'].map((look) => ['prices', 'looks', look]),
      ['prices', 'trim', 0, 'metre'],
      ['prices', 'angleStrip'],
      ['prices', 'shelf'],
      ...Object.keys(completeJob().prices!.packs!).map((pack) => ['prices', 'packs', pack]),
      ...Object.keys(completeJob().prices!.labour!).map((rate) => ['prices', 'labour', rate]),
      ['prices', 'disposal'],
      ['prices', 'others', 0, 'amount'],
    ] satisfies Path[]
  ).map((path): [Path, number, number, string] => [path, 0, 1_000_000_000, '']),
  [['prices', 'trim', 0, 'upTo'], 8, 300, ' mm'],
  [['prices', 'waste'], 0, 1, ''],
  [['prices', 'tax', 'materials'], 0, 100, ' %'],
  [['prices', 'tax', 'labour'], 0, 100, ' %'],
  [['tolerances', 'own', 'plumb'], 0.1, 100, ' mm/m'],
  [['tolerances', 'own', 'flat'], 0.1, 100, ' mm'],
  [['tolerances', 'own', 'square'], 0.1, 100, ' mm/m'],
  [['tolerances', 'own', 'level'], 0.1, 100, ' mm/m'],
];
/** Lengths above zero: the most they may be. */
const POSITIVE: [path: Path, most: number][] = [
  [['carrying', 'door', 'width'], 5000],
  [['carrying', 'door', 'height'], 5000],
  [['carrying', 'corridor', 'before'], 10_000],
  [['carrying', 'corridor', 'after'], 10_000],
  [['carrying', 'corridor', 'height'], 6000],
  [['carrying', 'stair', 'width'], 5000],
  [['carrying', 'stair', 'headroom'], 6000],
  [['carrying', 'stair', 'landing'], 5000],
  [['readings', 0, 'value'], 4000],
  [['readings', 0, 'repeats', 0], 4000],
  [['readings', 0, 'history', 0, 'value'], 4000],
  [['readings', 2, 'value'], 6000],
  [['readings', 7, 'value'], 8000],
  [['readings', 8, 'value'], 4000],
];
/** Stations on a side wall: none behind the back wall. */
const STATIONS: Path[] = [
  ['readings', 3, 'at'],
  ['readings', 4, 'from', 'at'],
  ['readings', 4, 'to', 'at'],
];
/** Numbers that hang together with their neighbours; each has a test of its own. */
const TOGETHER = [
  'rim.profile[0][0]',
  'rim.profile[0][1]',
  'rim.profile[1][0]',
  'rim.apron[0][1]',
  'rim.apron[1][1]',
  'version',
  'scans[0].points',
  'scans[0].surfaces.back.points',
  ...['back', 'left', 'right', 'rim'].map((surface) => `scans[0].surfaces.${surface}.columns`),
  'readings[5].alongBack',
  'readings[5].alongSide',
  'readings[5].value',
  'readings[3].gaps[1].height',
  'readings[3].gaps[1].value',
  'fixtures[1].aboveRim',
  'fixtures[1].hole',
  'schedule.people',
  'quote.validity',
  'schedule.from',
  'schedule.to',
  ...[0, 1, 2, 3, 4, 5].map((i) => `schedule.days[${i}]`),
];

describe('job schema', () => {
  it('takes a complete job as it stands', () => {
    const parsed = parseJob(completeJob());
    expect(parsed).toEqual({ ok: true, job: completeJob() });
  });

  it('fills in the defaults of a job that gives only what has none', () => {
    const { format, version, readings, sheets } = completeJob();
    const parsed = parseJob({ format, version, readings, sheets });
    expect(parsed).toEqual({
      ok: true,
      job: {
        format,
        version,
        readings,
        sheets,
        name: 'Untitled job',
        display: 'in',
        levelAboveFloor: 1250,
        instruments: {},
        priors: { plumb: 8, square: 10, twist: 4, bow: 4, rimLevel: 5, frontPlumb: 8 },
        rim: { kind: 'tub', width: 760, apronHeight: 500, profile: [], apron: [], contourSd: 1 },
        fixtures: [],
        scans: [],
        studs: [],
        fit: {
          wetWall: 'right',
          thickness: 6,
          bed: 2,
          cornerJoint: 2,
          rimJoint: 3,
          top: 980,
          frontSetBack: 0,
          markTolerance: 0.8,
          flexible: false,
          keep: { back: ['top'], left: ['top'], right: ['top'] },
        },
        bedding: {
          stiffness: 'rigid',
          edges: 'even',
          modulusAcross: 3000,
          modulusUp: 3000,
          poisson: 0.35,
          strainLimit: 0.003,
          reach: 9.525,
          pressing: 100,
          shimTo: 'flat',
          shimSpacing: 406.4,
          leastShim: 0.79375,
        },
        trim: {
          top: true,
          sideTops: true,
          verticals: true,
          insideCorners: false,
          width: 38,
          thickness: 6,
          lip: 0,
          rise: 12,
          overhang: 0,
          outerLine: {},
          joinery: 'butt',
          joint: 1,
          foot: 'floor',
          floorGap: 3,
          angleStrip: { width: 19, thickness: 2 },
          tapeSpacing: 300,
          allowance: 6,
          stock: [{ length: 2440 }],
        },
        legs: { make: true, joint: 2, floorGap: 3 },
        shelves: [],
        cutting: { sheets: 'own', kerf: 3, margin: 3, turn: false, leastOffcut: 25 },
        supplies: {
          adhesive: {
            layout: 'dots',
            spacing: 101.6,
            edgeClear: 38.1,
            pressedWidth: 38.1,
            trimBead: 6,
            cartridge: 828.1,
            waste: 0.1,
          },
          sealant: { cartridge: 298.7, fillet: 6.35, toolingLoss: 0.15 },
          caulk: { cartridge: 298.7, fillet: 6.35, toolingLoss: 0.15 },
          widestJoint: 12.7,
          flashingTape: { overlap: 50.8, roll: 10000 },
          strips: { spacing: 762, edgeClear: 50.8, width: 25.4, roll: 10000 },
          backerRod: { roll: 6000 },
          movement: { expansion: 30, swelling: 0, humidity: 20, swing: 15, capability: 0.25 },
          brackets: { perShelf: 2, screws: 2, box: 50 },
          painterTape: { roll: 50000 },
          alcohol: { perSquareMetre: 50, bottle: 473 },
        },
        tolerances: { set: 'trade', own: {} },
        carrying: { door: {}, corridor: { turn: 90 }, stair: { pitch: 38, turn: 'quarter' } },
        schedule: {
          people: 1,
          from: 480,
          to: 990,
          days: [1, 2, 3, 4, 5],
          rates: {
            shutOff: 15,
            prepareWall: 30,
            tapeMetre: 3,
            knifeMetre: 4,
            planeMetre: 6,
            jigsawMetre: 8,
            jointMetre: 3,
            hole: 12,
            dryFit: 15,
            adhesive: 15,
            setPanel: 15,
            leg: 25,
            trimPiece: 20,
            shelf: 25,
            clean: 25,
            plumbing: 60,
            handOver: 20,
          },
          cure: { adhesive: 24, sealant: 24 },
          temperature: 21,
          skinOver: 10,
        },
        finish: {
          look: 'plain',
          colour: '#eceae4',
          second: '#c9c4b8',
          size: 300,
          seed: 1,
          gloss: 0.45,
          trim: '#f4f3ef',
        },
        choices: [],
        prices: {
          currency: 'USD',
          sheets: {},
          looks: {},
          trim: [],
          packs: {},
          labour: {},
          waste: 0,
          others: [],
          tax: { name: 'Tax', materials: 0, labour: 0 },
        },
        quote: {
          client: '',
          from: '',
          number: '',
          validity: 30,
          exclusions: [
            'repair of framing, wallboard or damp found behind the old walls',
            'moving pipes, valves or drains, and new plumbing parts',
            'electrical work',
            'testing for and removing asbestos or lead',
            'permits and inspections',
          ],
        },
      },
    });
  });

  it('measures a side fixture from the back panel unless told otherwise', () => {
    const parsed = parseJob(withAt(completeJob(), ['fixtures', 0, 'fromBackOf'], undefined));
    expect(parsed.ok && parsed.job.fixtures[0]).toMatchObject({ fromBackOf: 'panel' });
  });

  it.each(['format', 'version', 'readings', 'sheets'])('needs %s', (key) => {
    const [fault, ...more] = faultsOf(withAt(completeJob(), [key], undefined));
    expect(fault!.path).toBe(key);
    expect(fault!.message).toMatch(/^is missing; it must be /);
    expect(more).toEqual([]);
  });

  it('says what is wrong with a value of the wrong type, at its place, for every place', () => {
    for (const { path, value } of places(completeJob()).slice(1)) {
      const at = pathText(path);
      const wrong = typeof value === 'string' ? 5 : 'five';
      const expected: Record<string, string> = {
        number: 'must be (a number|1|one of 1, 2); found "five"',
        string: 'must be (a text in quotes|one of ".*|"nookwright-job"|"scan"); found 5',
        boolean: 'must be true or false; found "five"',
        object: `must be a ${Array.isArray(value) ? 'list in \\[ \\]' : 'group in { }'}; found "five"`,
      };
      const [fault, ...more] = faultsOf(withAt(completeJob(), path, wrong));
      expect(fault?.path, at).toBe(at);
      expect(fault?.message, at).toMatch(new RegExp(`^${expected[typeof value]}$`));
      expect(more, at).toEqual([]);
    }
  });

  it('refuses a number that is not finite, for every number', () => {
    for (const { path, value } of places(completeJob())) {
      if (typeof value !== 'number') continue;
      for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
        const faults = faultsOf(withAt(completeJob(), path, bad));
        expect(
          faults.map((fault) => fault.path),
          `${pathText(path)} ${bad}`,
        ).toEqual([pathText(path)]);
        expect(faults[0]!.message).toMatch(/^must be (a number|1|one of 1, 2); found /);
      }
    }
  });

  it('refuses an unknown key in every group', () => {
    for (const { path, value } of places(completeJob())) {
      if (typeof value !== 'object' || value === null || Array.isArray(value)) continue;
      const at = pathText([...path, 'unheard']);
      expect(faultsOf(withAt(completeJob(), [...path, 'unheard'], 1)), at).toEqual([
        { path: at, message: 'is not a known key; remove it or correct its spelling' },
      ]);
    }
  });

  it.each(RANGES)('keeps %j from %d to %d', (path, least, most, unit) => {
    const at = pathText(path);
    const step = (most - least) * 1e-9;
    expect(faultsOf(withAt(completeJob(), path, most))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), path, most + step))).toEqual([
      { path: at, message: `must be at most ${most}${unit}; found ${most + step}` },
    ]);
    expect(faultsOf(withAt(completeJob(), path, least))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), path, least - step))).toEqual([
      { path: at, message: `must be at least ${least}${unit}; found ${least - step}` },
    ]);
  });

  it.each(POSITIVE)('keeps %j above 0 and up to %d', (path, most) => {
    const at = pathText(path);
    expect(faultsOf(withAt(completeJob(), path, 1e-9))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), path, 0))).toEqual([
      { path: at, message: 'must be more than 0 mm; found 0' },
    ]);
    expect(faultsOf(withAt(completeJob(), path, most))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), path, most + 1)).map((fault) => fault.path)).toEqual([at]);
  });

  it.each(STATIONS)('keeps the station %s %s %s before the back wall and within 3 m', (...path) => {
    const at = pathText(path);
    expect(faultsOf(withAt(completeJob(), path, 0))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), path, 3000))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), path, 3001)).map((fault) => fault.path)).toEqual([at]);
    expect(faultsOf(withAt(completeJob(), path, -1))).toEqual([
      { path: at, message: 'is measured out from the back wall on a side wall; it must be at least 0 mm' },
    ]);
  });

  it('has a range test for every number of the complete job', () => {
    const tested = new Set([
      ...[...RANGES, ...POSITIVE].map(([path]) => pathText(path)),
      ...STATIONS.map((path) => pathText(path)),
      ...TOGETHER,
    ]);
    const numbers = places(completeJob())
      .filter(({ value }) => typeof value === 'number')
      .map(({ path }) => pathText(path));
    expect(numbers.filter((at) => !tested.has(at))).toEqual([]);
  });

  it('wants one or two people, days of the week, and a day of at least an hour', () => {
    const schedule = (path: Path, value: unknown) => faultsOf(withAt(completeJob(), ['schedule', ...path], value));
    expect(schedule(['people'], 3)).toEqual([{ path: 'schedule.people', message: 'must be one of 1, 2; found 3' }]);
    for (const day of [0, 8, 1.5])
      expect(schedule(['days', 0], day).map(({ path }) => path)).toEqual(['schedule.days[0]']);
    expect(schedule(['days'], []).map(({ path }) => path)).toEqual(['schedule.days']);
    expect(schedule(['to'], 450 + 60)).toEqual([]);
    expect(schedule(['to'], 450 + 59)).toEqual([
      { path: 'schedule.to', message: 'must be at least an hour after `from`' },
    ]);
    expect(schedule(['from'], -1).map(({ path }) => path)).toEqual(['schedule.from']);
    expect(schedule(['to'], 1441).map(({ path }) => path)).toEqual(['schedule.to']);
  });

  it('wants whole cents, whole days of validity, capital letters of a currency and written-out colours', () => {
    const fault = (path: Path, value: unknown) => faultsOf(withAt(completeJob(), path, value)).map((each) => each.path);
    expect(fault(['prices', 'shelf'], 12.5)).toEqual(['prices.shelf']);
    expect(fault(['prices', 'labour', 'hour'], 0.1)).toEqual(['prices.labour.hour']);
    for (const validity of [0, 1.5, 366]) expect(fault(['quote', 'validity'], validity)).toEqual(['quote.validity']);
    for (const validity of [1, 365]) expect(fault(['quote', 'validity'], validity)).toEqual([]);
    for (const currency of ['usd', 'US', 'EURO', '']) {
      expect(fault(['prices', 'currency'], currency)).toEqual(['prices.currency']);
    }
    for (const colour of ['#fff', 'red', '#GGGGGG', '#ECEAE4', 'url(x)']) {
      expect(fault(['finish', 'colour'], colour)).toEqual(['finish.colour']);
      expect(fault(['choices', 0, 'finish', 'trim'], colour)).toEqual(['choices[0].finish.trim']);
    }
  });

  it('takes three other choices at most, each under an id of its own', () => {
    const choices = (ids: string[]) =>
      faultsOf(
        withAt(
          completeJob(),
          ['choices'],
          ids.map((id) => ({ id })),
        ),
      );
    expect(choices(['a', 'b', 'c'])).toEqual([]);
    expect(choices(['a', 'b', 'c', 'd']).map(({ path }) => path)).toEqual(['choices']);
    expect(choices(['a', 'a']).map(({ path }) => path)).toEqual(['choices[1].id']);
  });

  it('takes an apron contour whose points run downwards', () => {
    const apron = (points: unknown) => faultsOf(withAt(completeJob(), ['rim', 'apron'], points));
    expect(
      apron([
        [0, 0],
        [-12, -1500],
      ]),
    ).toEqual([]);
    expect(
      apron([
        [0, -20],
        [0, -20],
      ]),
    ).toEqual([{ path: 'rim.apron', message: 'each point must lie lower than the one before' }]);
    expect(apron([[0, 1]]).map((fault) => fault.path)).toEqual(['rim.apron[0][1]']);
    expect(apron([[0, -1501]]).map((fault) => fault.path)).toEqual(['rim.apron[0][1]']);
  });

  it('takes a rim contour whose points run outward and stay within the rim', () => {
    const contour = (profile: unknown) => faultsOf(withAt(completeJob(), ['rim', 'profile'], profile));
    expect(contour([])).toEqual([]);
    expect(
      contour([
        [0, 0],
        [0.1, -300],
      ]),
    ).toEqual([]);
    expect(
      contour([
        [0, 0],
        [0.05, -300],
      ]),
    ).toEqual([
      { path: 'rim.profile', message: 'each point must lie at least 0.1 mm further out than the one before' },
    ]);
    expect(
      contour([
        [20, 0],
        [10, -3],
      ]).map(({ path }) => path),
    ).toEqual(['rim.profile']);
    expect(
      contour([
        [0, 0],
        [501, -3],
      ]).map(({ path }) => path),
    ).toEqual(['rim.profile[1][0]']);
    expect(contour([[0]])).toEqual([{ path: 'rim.profile[0]', message: 'must have at least 2 entries; found 1' }]);
    expect(
      faultsOf({
        ...completeJob(),
        rim: {
          width: 300,
          profile: [
            [0, 0],
            [320, -3],
          ],
        },
      }),
    ).toEqual([
      {
        path: 'rim.profile',
        message: 'reaches further out than the rim is wide; correct the outward distances or the width',
      },
    ]);
  });

  it('keeps one factory edge of a pair', () => {
    const keep = (panel: string, edges: string[]) => faultsOf(withAt(completeJob(), ['fit', 'keep', panel], edges));
    expect(keep('back', ['left', 'right'])).toEqual([
      { path: 'fit.keep.back', message: 'keep either left or right, not both' },
    ]);
    expect(keep('back', ['top', 'bottom'])).toEqual([
      { path: 'fit.keep.back', message: 'keep either top or bottom, not both' },
    ]);
    expect(keep('left', ['back', 'front'])).toEqual([
      { path: 'fit.keep.left', message: 'keep either back or front, not both' },
    ]);
    expect(keep('right', ['top', 'bottom'])).toEqual([
      { path: 'fit.keep.right', message: 'keep either top or bottom, not both' },
    ]);
    expect(keep('back', ['front'])).toEqual([
      { path: 'fit.keep.back[0]', message: 'must be one of "left", "right", "top", "bottom"; found "front"' },
    ]);
    expect(keep('left', [])).toEqual([]);
  });

  it('refuses a distance from the back for a fixture on the back wall', () => {
    const bar = { id: 'b', kind: 'grab-bar', wall: 'back', aboveRim: 300, fromBack: 10, hole: 20 };
    expect(
      faultsOf({ ...completeJob(), fixtures: [bar] })
        .map(({ path }) => path)
        .sort(),
    ).toEqual(['fixtures[0].fromBack', 'fixtures[0].fromPlumbLine']);
  });

  it('holds names and notes to lengths that fit a drawing', () => {
    expect(faultsOf(withAt(completeJob(), ['name'], 'n'.repeat(200)))).toEqual([]);
    expect(faultsOf(withAt(completeJob(), ['name'], 'n'.repeat(201)))).toEqual([
      { path: 'name', message: 'must have at most 200 characters; found 201' },
    ]);
    expect(faultsOf(withAt(completeJob(), ['readings', 0, 'note'], 'n'.repeat(2001)))).toHaveLength(1);
    expect(faultsOf(withAt(completeJob(), ['name'], 'two\nlines'))).toEqual([
      { path: 'name', message: 'must be one line without control characters' },
    ]);
  });
});
