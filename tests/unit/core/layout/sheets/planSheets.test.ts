import { describe, expect, it } from 'vitest';
import type { JobInput } from '../../../../../src/core/job-file';
import { planSheets, type Rectangle, type SheetInUse } from '../../../../../src/core/layout';
import { fitPanel, type Panel, type PanelName } from '../../../../../src/core/panel';
import { makePiece, type Piece } from '../../../../../src/core/piece';
import { covarianceOf, jobOf } from '../../panel/fitting';
import { alcoveOf, alcoveWith, skewedParameters } from '../../skewedAlcove';

const box = alcoveOf({});

/** A strip of sheet, along × across. */
const strip = (id: string, along: number, across: number, kind: 'filler' | 'leg' = 'filler'): Piece => {
  const outline: [number, number][] = [
    [0, 0],
    [along, 0],
    [along, across],
    [0, across],
  ];
  return makePiece({
    id,
    kind,
    name: id,
    wall: 'back',
    outline,
    thickness: 6,
    bodies: [{ back: outline, face: outline, from: 0, to: 6 }],
    axis: 'x',
    edges: [],
    stations: [],
    stock: 'sheet',
    cautions: [],
  });
};

function planned(pieces: Piece[], choices: Partial<JobInput> = {}, alcove = box) {
  const job = jobOf(choices);
  const fit = (name: PanelName): Panel => fitPanel(alcove, covarianceOf(), job, name).panel;
  return planSheets(job, { back: fit('back'), left: fit('left'), right: fit('right') }, pieces);
}

const SHEETS: JobInput['sheets'] = {
  back: { width: 1575, height: 2440 },
  left: { width: 815, height: 2440 },
  right: { width: 815, height: 2440 },
};

/** Everything on a sheet lies on it, and no two things overlap or lie closer than a saw cut. */
function expectApart({ width, height, placed, offcuts }: SheetInUse, kerf: number): void {
  const all: Rectangle[] = [...placed, ...offcuts];
  for (const [i, a] of all.entries()) {
    expect(a.x).toBeGreaterThanOrEqual(-1e-6);
    expect(a.y).toBeGreaterThanOrEqual(-1e-6);
    expect(a.x + a.width).toBeLessThanOrEqual(width + 1e-6);
    expect(a.y + a.height).toBeLessThanOrEqual(height + 1e-6);
    for (const b of all.slice(i + 1)) {
      const apart = Math.max(b.x - a.x - a.width, a.x - b.x - b.width, b.y - a.y - a.height, a.y - b.y - b.height);
      expect(apart).toBeGreaterThanOrEqual(kerf - 0.25);
    }
  }
}

describe('planSheets, each panel from its own sheet', () => {
  it('lays panels where they were laid, seen from their face', () => {
    const { layout, problems } = planned([], {
      sheets: SHEETS,
      fit: { keep: { left: ['front', 'top'], right: ['front', 'top'] } },
    });
    expect(problems).toEqual([]);
    const [back, left, right] = layout.sheets;
    // 1516 wide in the middle of 1575, kept top; bottom at −737, 2440 below 980 is −1460
    expect(back!.placed).toEqual([
      {
        piece: 'panels.back',
        x: expect.closeTo(29.5, 6),
        y: expect.closeTo(723, 6),
        width: expect.closeTo(1516, 6),
        height: expect.closeTo(1717, 6),
        turned: false,
        part: { number: 1, of: 1 },
      },
    ]);
    // the front edge is at the left of a left panel seen from its face, and at the right of a right one
    expect(left!.placed[0]!.x).toBeCloseTo(0, 6);
    expect(right!.placed[0]!.x + right!.placed[0]!.width).toBeCloseTo(815, 6);
    expect(layout.bought).toBe(2440 * (1575 + 2 * 815));
    expect(layout.used).toBeCloseTo(1717 * (1516 + 2 * 745), 3);
  });

  it('keeps apart what is cut, and lists what is left, for any alcove', () => {
    const pieces = [
      strip('fillers.top', 1518, 11),
      strip('fillers.left.top', 750, 11),
      strip('legs.left', 490, 40, 'leg'),
    ];
    for (let seed = 1; seed <= 8; seed++) {
      const { layout } = planned(pieces, { sheets: SHEETS }, alcoveWith(skewedParameters(seed)));
      for (const sheet of layout.sheets) expectApart(sheet, 3);
      expect(layout.sheets.flatMap(({ placed }) => placed.map(({ piece }) => piece)).sort()).toEqual([
        'fillers.left.top',
        'fillers.top',
        'legs.left',
        'panels.back',
        'panels.left',
        'panels.right',
      ]);
    }
  });

  it('keeps a leg upright, and turns it where the sheet may be turned', () => {
    const leg = [strip('legs.left', 900, 40, 'leg')];
    const placed = (turn: boolean, sheets = SHEETS) =>
      planned(leg, { sheets, cutting: { turn } })
        .layout.sheets.flatMap((sheet) => sheet.placed)
        .find(({ piece }) => piece === 'legs.left')!;
    expect(placed(false)).toMatchObject({ width: 906, height: 46, turned: false });
    const narrow = {
      ...SHEETS,
      back: { width: 1520, height: 1800 },
      left: { width: 850, height: 1730 },
      right: { width: 815, height: 1730 },
    };
    expect(placed(true, narrow)).toMatchObject({ turned: true, width: 46, height: 906 });
  });

  it('makes up a long filler of several lengths rather than open another sheet', () => {
    const { layout } = planned([strip('fillers.left.vertical', 1700, 40)], { sheets: SHEETS });
    expect(layout.sheets).toHaveLength(3);
    const parts = layout.sheets.flatMap(({ placed }) => placed).filter(({ piece }) => piece.startsWith('fillers'));
    expect(parts.map(({ part }) => part)).toEqual([
      { number: 1, of: 2 },
      { number: 2, of: 2 },
    ]);
    for (const { width, height } of parts) expect(Math.max(width, height)).toBeCloseTo(850 + 6, 6);
  });

  it('opens another sheet for a leg that fits nowhere else', () => {
    const legs = [strip('legs.left', 900, 40, 'leg'), strip('legs.right', 900, 40, 'leg')];
    const tight = {
      back: { width: 1520, height: 1720 },
      left: { width: 750, height: 1720 },
      right: { width: 950, height: 1720 },
    };
    const { layout, problems } = planned(legs, { sheets: tight, fit: { keep: { right: ['back', 'top'] } } });
    expect(problems).toEqual([]);
    expect(layout.sheets.map(({ like }) => like)).toEqual(['back', 'left', 'right', 'right']);
    expect(layout.sheets[3]!.placed.map(({ piece }) => piece).sort()).toEqual(['legs.left', 'legs.right']);
  });

  it('tells a piece that no sheet can hold', () => {
    const { layout, problems } = planned([strip('legs.left', 2600, 40, 'leg')], { sheets: SHEETS });
    expect(layout.unplaced).toEqual(['legs.left']);
    expect(layout.used).toBeCloseTo(planned([], { sheets: SHEETS }).layout.used, 6);
    expect(problems).toEqual([
      { where: 'pieces.legs.left', what: expect.stringMatching(/larger than any/), howMuch: null },
    ]);
  });

  it('lists no offcut narrower than is worth keeping', () => {
    const sides = (leastOffcut: number) =>
      planned([], { sheets: SHEETS, cutting: { leastOffcut } }).layout.sheets[0]!.offcuts;
    expect(sides(20)).toHaveLength(3);
    expect(sides(30)).toEqual([{ x: 0, y: 0, width: 1575, height: expect.closeTo(720, 6) }]);
  });
});

describe('planSheets, as little sheet as possible', () => {
  const least = (sheets: JobInput['sheets'], turn = false) =>
    planned([], { sheets, cutting: { sheets: 'least', turn } }).layout;

  it('takes both side panels from one sheet where that is less', () => {
    // 2 × (745 + 6) + a saw cut is 1505
    const layout = least({ ...SHEETS, left: { width: 1520, height: 2440 }, right: { width: 1520, height: 2440 } });
    expect(layout.sheets.map(({ placed }) => placed.map(({ piece }) => piece).sort())).toEqual([
      expect.arrayContaining(['panels.back']),
      ['panels.left', 'panels.right'],
    ]);
    for (const sheet of layout.sheets) expectApart(sheet, 3);
  });

  it('keeps them apart where a smaller sheet each is less', () => {
    const layout = least({ ...SHEETS, left: { width: 780, height: 2440 }, right: { width: 780, height: 2440 } });
    expect(layout.sheets).toHaveLength(3);
    expect(layout.bought).toBe(2440 * (1575 + 2 * 780));
    // both sides on a second sheet like the back's are less than two sheets of 815
    expect(least(SHEETS).bought).toBe(2440 * 2 * 1575);
  });

  it('turns panels where it may', () => {
    const sheets = {
      back: { width: 1830, height: 2745 },
      left: { width: 1830, height: 2745 },
      right: { width: 1830, height: 2745 },
    };
    expect(least(sheets).sheets).toHaveLength(2);
    const turned = least(sheets, true);
    expect(turned.sheets).toHaveLength(2);
    for (const sheet of turned.sheets) expectApart(sheet, 3);
  });

  it('keeps a panel that no sheet can hold on its own', () => {
    const small = { ...SHEETS, back: { width: 1400, height: 2440 } };
    const { layout } = planned([], { sheets: small, cutting: { sheets: 'least' } });
    const back = layout.sheets.find(({ placed }) => placed.some(({ piece }) => piece === 'panels.back'))!;
    expect(back.placed[0]!.width).toBe(1400);
  });

  it('lays pieces that differ in the last bits out alike, whichever is the longer by a hair', () => {
    const layout = (hair: number) =>
      planned([strip('a', 600 + hair, 40), strip('b', 600, 40), strip('c', 300, 40 - hair)], { sheets: SHEETS }).layout;
    expect(layout(1e-9)).toEqual(layout(-1e-9));
  });
});
