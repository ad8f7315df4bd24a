import { beforeAll, describe, expect, it } from 'vitest';
import { formatLength, type PlaceVerdict, type Point, type Result, type Verdict } from '../../../../src/core';
import {
  jobDrawings,
  jobPackPdf,
  type OutputFonts,
  type PanelDrawing,
  pieceDrawing,
  pieceTitle,
} from '../../../../src/output';
import { papers } from '../../../../src/output/pdf';
import { printedCount, tilePlan } from '../../../../src/output/pdf/tilePlan';
import { fixtureJob, fixtureResult } from '../fixture';
import { type PaintedPath, type ReadPage, readPdf, testFonts } from './readPdf';

const job = fixtureJob();
const result = fixtureResult();
const drawings = jobDrawings(job, result);
const { trim, legs, shelves, fillers } = result.pieces;
const pieces = [...trim, ...legs, ...shelves, ...fillers].map((piece) => pieceDrawing(piece, job));
let fonts: OutputFonts;
let pages: ReadPage[];

beforeAll(async () => {
  fonts = await testFonts();
  pages = await readPdf(await jobPackPdf(job, result, fonts));
}, 60_000);

const pageOf = (title: string) => pages.findIndex(({ text }) => text.startsWith(title));
/** Tiles follow the map page of their panel. */
const tilesOf = (drawing: PanelDrawing) => {
  const map = pageOf(`${drawing.title}: full-size template`);
  const printed = tilePlan(drawing, papers.letter).tiles.filter((tile) => tile.printed);
  return printed.map((tile, i) => ({ tile, page: pages[map + 1 + i]! }));
};
const isLevel = ({ points: [a, b, ...more] }: PaintedPath) =>
  more.length === 0 && !!a && !!b && Math.abs(a[1] - b[1]) < 1e-6;
const length = ({ points: [a, b] }: PaintedPath) => Math.abs(b![0] - a![0]);

describe('pages of a job pack', () => {
  it('come as cover, survey record, cut cards, then map and tiles of each panel', () => {
    const titles = pages.flatMap(({ text }) => /^.*?(?:cut card|full-size template)/.exec(text)?.[0] ?? []);
    expect(titles.filter((title) => !title.startsWith(job.name))).toEqual([
      ...[...drawings, ...pieces].map(({ title }) => `${title}: cut card`),
      ...drawings.map(({ title }) => `${title}: full-size template`),
    ]);
    expect(pages[0]!.text).toMatch(new RegExp(`^${job.name}`));
    const tiles = drawings.reduce((sum, drawing) => sum + printedCount(tilePlan(drawing, papers.letter)), 0);
    const fromFirstMap = pages.length - pageOf(`${drawings[0]!.title}: full-size template`);
    expect(fromFirstMap).toBe(drawings.length + tiles);
  });

  it('tell which piece is sawn from which stock length, once that is planned', async () => {
    expect(pageOf('Stock lengths')).toBe(-1);
    const [one, two] = result.pieces.trim.map(({ id }) => id);
    const stock = {
      bars: [
        { length: 2440, cuts: [{ piece: one!, length: 1524 }], left: 913 },
        { length: 1830, cuts: [{ piece: two!, length: 762 }], left: 1065 },
      ],
      bought: 4270,
      lowerBound: 4270,
      waste: 0.46,
      optimal: true,
      unplaced: ['right'],
    };
    const planned = await readPdf(await jobPackPdf(job, { ...result, stock }, fonts, { paper: 'a3' }));
    const { text } = planned.find((page) => page.text.startsWith('Stock lengths'))!;
    expect(text).toContain(`${pieceTitle(one!, job, result)} ${formatLength(1524, { unit: 'in' })}`);
    expect(text).toContain('No other plan buys less.');
    expect(text).toContain('From no length');
    expect(planned[0]!.text).toContain('Stock lengths');
  }, 60_000);

  it('are numbered', () => {
    pages.forEach(({ text }, i) => {
      expect(text).toContain(`page ${i + 1} of ${pages.length}`);
    });
  });

  it('are Letter for a job in inches and A4 for one in mm, unless told otherwise', async () => {
    expect(pages[0]!.width).toBeCloseTo(215.9, 3);
    expect(pages[0]!.height).toBeCloseTo(279.4, 3);
    const metric = await readPdf(await jobPackPdf(fixtureJob({ display: 'mm' }), result, fonts), 1);
    expect([metric[0]!.width, metric[0]!.height].map(Math.round)).toEqual([210, 297]);
    const large = await readPdf(await jobPackPdf(job, result, fonts, { paper: 'a3' }));
    expect(Math.round(large[0]!.width)).toBe(297);
    expect(large.length).toBeLessThan(pages.length);
  }, 60_000);

  it('are listed on the cover', () => {
    const cover = pages[0]!.text.replaceAll('\n', ' ');
    for (const { title } of drawings) {
      const entry = `${title}: cut card`;
      expect(cover).toMatch(new RegExp(`${entry.replace(/[()]/g, '\\$&')} ?${pageOf(entry) + 1}\\b`));
    }
  });
});

type Suspect = Result['adjustment']['suspects'][number];

describe('the cover', () => {
  const withVerdicts = (verdict: Verdict, suspects: Suspect[] = []): Result => {
    const judged = <T extends { verdict: PlaceVerdict }>(place: T): T => ({
      ...place,
      verdict: { ...place.verdict, verdict },
    });
    const { walls, corners, rim, adjustment } = result;
    return {
      ...result,
      problems: [],
      adjustment: { ...adjustment, suspects },
      walls: {
        ...walls,
        back: judged(walls.back),
        left: { ...walls.left, verdict: { ...walls.left.verdict, verdict: 'fits' } },
        right: judged(walls.right),
      },
      corners: { left: judged(corners.left), right: judged(corners.right) },
      rim: judged(rim),
    };
  };
  const suspectAt = (at: number): Suspect => {
    const { id, kind } = job.readings[at]!;
    const told = { observed: 700, w: 9, fits: 713, fitsSd: 0.5, located: true };
    return { id, kind, ...told, alternatives: [], orShape: [], slip: null, ifOff: null };
  };
  const coverOf = async (of: Result) =>
    (await readPdf(await jobPackPdf(job, of, fonts), 1))[0]!.text.replaceAll('\n', ' ');

  it('says that nothing is in the way only where no place is to wait and no reading is doubted', async () => {
    const clear = 'Nothing found that keeps this job from being built as it stands.';
    expect(await coverOf(withVerdicts('scribe'))).toContain(clear);
    const doubted = await coverOf(withVerdicts('scribe', [0, 1].map(suspectAt)));
    expect(doubted).not.toContain(clear);
    expect(doubted).toContain('2 readings look misread');
    for (const [verdict, words] of [
      ['hold', 'do not panel yet'],
      ['prepare', 'prepare first'],
    ] as const) {
      const cover = await coverOf(withVerdicts(verdict));
      expect(cover).not.toContain(clear);
      expect(cover).toContain(`Back wall, right wall, left corner, right corner, rim: ${words}`);
    }
  }, 60_000);
});

describe('full-size tiles', () => {
  it('carry a bar of 100.00 mm and one of 4 in', () => {
    for (const { page } of drawings.flatMap(tilesOf)) {
      const lengths = page.paths.filter(isLevel).map(length);
      expect(lengths.some((mm) => Math.abs(mm - 100) < 0.005)).toBe(true);
      expect(lengths.some((mm) => Math.abs(mm - 101.6) < 0.005)).toBe(true);
    }
  });

  it('show the cut outline at exactly 1:1 where the tile says', () => {
    for (const drawing of drawings) {
      for (const { tile, page } of tilesOf(drawing)) {
        const cut = page.paths.filter(({ points }) => points.length === drawing.outline.length);
        expect(cut).toHaveLength(1);
        const [first] = cut[0]!.points;
        const [dx, dy] = [first![0] - drawing.outline[0]![0], first![1] - drawing.outline[0]![1]];
        cut[0]!.points.forEach(([x, y], i) => {
          expect(Math.abs(x - drawing.outline[i]![0] - dx)).toBeLessThan(0.001);
          expect(Math.abs(y - drawing.outline[i]![1] - dy)).toBeLessThan(0.001);
        });
        expect(tile.ground.left + dx).toBeCloseTo(10, 2);
      }
    }
  });

  it('agree on the ground they share: a point of the panel has one place on joined tiles', () => {
    const [first, second] = tilesOf(drawings[0]!);
    const place = (page: ReadPage): Point =>
      page.paths.find(({ points }) => points.length === drawings[0]!.outline.length)!.points[0]!;
    const step = second!.tile.ground.left - first!.tile.ground.left;
    expect(place(first!.page)[0] - place(second!.page)[0]).toBeCloseTo(step, 3);
  });

  it('keep every word legible', () => {
    for (const { page } of drawings.flatMap(tilesOf)) {
      for (const { size, text } of page.lines) if (text.trim()) expect(size).toBeGreaterThan(6.9);
    }
  });
});

describe('cut cards', () => {
  it('tell every mark, hole and edge of the result in words of at least 6.4 points', () => {
    for (const drawing of drawings) {
      const card = pages[pageOf(`${drawing.title}: cut card`)]!;
      const flat = card.text.replace(/\s+/g, ' ');
      expect(flat).toContain(drawing.statement);
      for (const edge of drawing.edges) {
        expect(flat).toContain(`${edge.title}: ${edge.methodWords}`);
        for (const mark of edge.marks) {
          expect(flat).toContain(`${mark.number}: ${mark.across.text}`);
          expect(flat).toContain(mark.alongWords);
        }
        if (edge.leave) expect(flat).toContain(edge.leave.words);
      }
      for (const hole of drawing.holes) expect(flat).toContain(`Ø ${hole.diameter.text}`);
      for (const { text, size } of card.lines) if (text.trim()) expect(size).toBeGreaterThan(6.4);
    }
  });

  it('are one page each', () => {
    for (const { title } of drawings) {
      expect(pages.filter(({ text }) => text.startsWith(`${title}: cut card`))).toHaveLength(1);
    }
  });
});

describe('survey record and cover', () => {
  it('list every reading with its flag and note', () => {
    const record = pages.flatMap(({ text }) => (text.startsWith('Survey record') ? [text] : [])).join(' ');
    for (const { id } of result.adjustment.readings) expect(record).toContain(id);
    expect(record).toContain('off, not used');
    expect(record).toContain('behind the soap dish');
  });

  it('put problems on the first page', () => {
    expect(pages[0]!.text).toContain('Left side panel: the sheet is too narrow; lay a wider one (1/2")');
  });

  it('show cautions, local codes first', () => {
    const text = pages
      .map((page) => page.text)
      .join(' ')
      .replace(/\s+/g, ' ');
    for (const word of ['codes go before', 'asbestos', 'Shut the water off', 'electrician', 'grab bar', 'respirator']) {
      expect(text).toContain(word);
    }
  });
});
