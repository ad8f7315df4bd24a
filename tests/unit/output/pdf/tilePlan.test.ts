import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jobDrawings } from '../../../../src/output';
import { papers } from '../../../../src/output/pdf';
import { columnLetters, OVERLAP, printedCount, tilePlan } from '../../../../src/output/pdf/tilePlan';
import { fixtureJob, fixtureResult } from '../fixture';

const drawings = jobDrawings(fixtureJob(), fixtureResult());

describe('tilePlan', () => {
  it('shows every point of every outline on a printed tile, on all papers', () => {
    for (const paper of Object.values(papers)) {
      for (const drawing of drawings) {
        const printed = tilePlan(drawing, paper).tiles.filter((tile) => tile.printed);
        const points = [...drawing.outline, ...drawing.holes.map(({ centre }) => centre)];
        for (const [x, y] of points) {
          expect(
            printed.some(
              ({ ground }) => x >= ground.left && x <= ground.right && y >= ground.bottom && y <= ground.top,
            ),
          ).toBe(true);
        }
      }
    }
  });

  it('lets neighbours cover the same strip', () => {
    const { tiles } = tilePlan(drawings[0]!, papers.a4);
    const at = (column: number, row: number) =>
      tiles.find((tile) => tile.column === column && tile.row === row)!.ground;
    expect(at(0, 0).right - at(1, 0).left).toBeCloseTo(OVERLAP, 9);
    expect(at(0, 1).top - at(0, 0).bottom).toBeCloseTo(OVERLAP, 9);
  });

  it('keeps small holes whole on a page where the grid has the room', () => {
    for (const drawing of drawings) {
      const { tiles } = tilePlan(drawing, papers.a4);
      for (const {
        centre: [x, y],
        diameter: { mm },
      } of drawing.holes) {
        const reach = mm / 2;
        const whole = tiles.some(
          ({ printed, ground }) =>
            printed &&
            x - reach >= ground.left &&
            x + reach <= ground.right &&
            y - reach >= ground.bottom &&
            y + reach <= ground.top,
        );
        expect(whole).toBe(true);
      }
    }
  });

  it('does not print what carries nothing', () => {
    const plan = tilePlan(drawings[0]!, papers.a4);
    expect(printedCount(plan)).toBeLessThan(0.75 * plan.tiles.length);
  });
});

describe('columnLetters', () => {
  it('goes on after Z', () => {
    expect([0, 25, 26, 27, 51, 52, 701, 702].map(columnLetters)).toEqual([
      'A',
      'Z',
      'AA',
      'AB',
      'AZ',
      'BA',
      'ZZ',
      'AAA',
    ]);
  });
  it('names no two columns alike', () => {
    fc.assert(fc.property(fc.nat(2000), fc.nat(2000), (a, b) => (a === b) === (columnLetters(a) === columnLetters(b))));
  });
});
