// A mirrored alcove takes mirrored pieces.
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitPieces } from '../../../src/core/fitPieces';
import type { Job, JobInput } from '../../../src/core/job-file';
import { fitPanel, type PanelName } from '../../../src/core/panel';
import type { Piece } from '../../../src/core/piece';
import { jobWith, mirrored, mirroredJob, plausibleAlcove, surfacesOf, type TrueAlcove } from '../../simulate';

function piecesOf(truth: TrueAlcove, job: Job): Piece[] {
  const alcove = surfacesOf(truth);
  const covariance = Matrix.eye(25, 25, 1e-8);
  const panel = (name: PanelName) => fitPanel(alcove, covariance, job, name).panel;
  const panels = { back: panel('back'), left: panel('left'), right: panel('right') };
  const { pieces } = fitPieces(alcove, covariance, job, panels);
  return [...pieces.trim, ...pieces.legs, ...pieces.fillers, ...pieces.shelves];
}

const otherSide = (id: string): string => id.replace(/left|right/g, (side) => (side === 'left' ? 'right' : 'left'));

const CHOICES: Partial<JobInput>[] = [
  { shelves: [{}, { corner: 'left', aboveRim: 800, back: 300 }], trim: { rise: 20, outerLine: { left: 790 } } },
  {
    trim: { joinery: 'mitre', lip: 6, insideCorners: true },
    rim: {
      width: 700,
      profile: [
        [0, 0],
        [20, -8],
      ],
    },
  },
];

describe.each(CHOICES)('%j', (choices) => {
  it.each([41, 42, 43])('is the same in a mirror, alcove %i', (seed) => {
    const truth = plausibleAlcove(seed);
    const job = jobWith([], choices);
    const here = piecesOf(truth, job);
    const there = new Map(piecesOf(mirrored(truth), mirroredJob(job)).map((piece) => [piece.id, piece]));
    expect(there.size).toBe(here.length);
    for (const piece of here) {
      const twin = there.get(otherSide(piece.id))!;
      expect(twin.size.along, piece.id).toBeCloseTo(piece.size.along, 6);
      expect(twin.size.across, piece.id).toBeCloseTo(piece.size.across, 6);
      expect(twin.worst95, piece.id).toBeCloseTo(piece.worst95, 6);
      const points = (outline: readonly (readonly [number, number])[], turn: 1 | -1) =>
        outline.map(([x, y]) => [turn * x, y]).sort((a, b) => a[0]! - b[0]! || a[1]! - b[1]!);
      const [mine, theirs] = [points(piece.outline, -1), points(twin.outline, 1)];
      expect(theirs).toHaveLength(mine.length);
      for (const [x, y] of mine) {
        const nearest = Math.min(...theirs.map(([tx, ty]) => Math.hypot(tx! - x!, ty! - y!)));
        expect(nearest, piece.id).toBeLessThan(1e-5);
      }
      const angles = ({ ends }: Piece) =>
        ends.flatMap(({ mitre, bevel }) => [mitre.degrees, bevel.degrees]).sort((a, b) => a - b);
      angles(piece).forEach((angle, i) => {
        expect(angles(twin)[i], piece.id).toBeCloseTo(angle, 6);
      });
    }
  });
});
