// Against an independent 3-D boolean library: manifold-3d.
import type { Manifold } from 'manifold-3d';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { fitPieces } from '../../../src/core/fitPieces';
import type { JobInput } from '../../../src/core/job-file';
import { fitPanel, type PanelName } from '../../../src/core/panel';
import type { Piece } from '../../../src/core/piece';
import { jobWith, plausibleAlcove, surfacesOf } from '../../simulate';
import { panelSolid, rimSolid, tubSolid, wallSolid } from '../solids';
import { pieceSolid } from './pieceSolid';

const WALLS: PanelName[] = ['back', 'left', 'right'];
const fit = { bed: 2, thickness: 6, cornerJoint: 2, rimJoint: 3, top: 980, frontSetBack: 20 };
/** Facets of curved faces and the bending of strips leave pieces that touch this far in each other, mm. */
const TOUCH = 0.1;

const CHOICES: [string, Partial<JobInput>][] = [
  ['butted, flat', {}],
  ['mitred, with a lip and angle strips', { trim: { joinery: 'mitre', lip: 7, insideCorners: true } }],
  [
    'butted, with a lip, high fillers and shelves',
    {
      trim: { lip: 6, rise: 24, insideCorners: true },
      shelves: [{}, { corner: 'left', aboveRim: 800, front: 'returned' }],
    },
  ],
  [
    'mitred, past a narrow tub, with legs',
    {
      trim: { joinery: 'mitre', verticalWidth: 50 },
      rim: {
        width: 690,
        profile: [
          [0, 0],
          [12, -2],
          [24, -10],
        ],
      },
    },
  ],
  [
    'round an apron that swells and stands back, with legs',
    {
      rim: {
        width: 690,
        profile: [
          [0, 0],
          [20, -8],
        ],
        apron: [
          [5, -60],
          [-12, -240],
          [-12, -400],
        ],
      },
    },
  ],
];

describe.each(CHOICES)('pieces %s', (_, choices) => {
  describe.each([31, 32, 33])('in alcove %i', (seed) => {
    const truth = plausibleAlcove(seed);
    const job = jobWith([], { fit, ...choices });
    const alcove = surfacesOf(truth);
    const covariance = Matrix.eye(25, 25, 0);
    const panel = (name: PanelName) => fitPanel(alcove, covariance, job, name).panel;
    const panels = { back: panel('back'), left: panel('left'), right: panel('right') };
    const { pieces } = fitPieces(alcove, covariance, job, panels);
    const all: Piece[] = [...pieces.trim, ...pieces.legs, ...pieces.fillers, ...pieces.shelves];
    const solids = new Map(all.map((piece) => [piece.id, pieceSolid(piece)]));
    const panelSolids = WALLS.map((name): [string, Manifold] => [
      `${name} panel`,
      panelSolid(truth, name, panels[name].outline, fit.bed, fit.thickness),
    ]);
    const surroundings: [string, Manifold][] = [
      ...WALLS.map((name): [string, Manifold] => [`${name} wall`, wallSolid(truth, name)]),
      ...panelSolids,
    ];

    it('are solids of their volume', () => {
      for (const piece of all) {
        const volume = piece.bodies.reduce(
          (sum, { face, back, from, to }) => sum + ((area(face) + area(back)) / 2) * (to - from),
          0,
        );
        expect(solids.get(piece.id)!.volume() / volume, piece.id).toBeCloseTo(1, 2);
      }
    });

    it('do not run into walls or panels', () => {
      for (const [id, solid] of solids) {
        for (const [name, other] of surroundings) expect(depth(solid, other), `${id} and ${name}`).toBeLessThan(TOUCH);
      }
    });

    it('do not run into each other', () => {
      const list = [...solids];
      list.forEach(([id, solid], i) => {
        for (const [other, otherSolid] of list.slice(i + 1)) {
          expect(depth(solid, otherSolid), `${id} and ${other}`).toBeLessThan(TOUCH);
        }
      });
    });

    it('do not run into the tub, and stand off a plumb apron by the joint', () => {
      const tub = tubSolid(truth, job.rim);
      for (const [id, solid] of solids) expect(depth(solid, tub), id).toBeLessThan(TOUCH);
      for (const leg of pieces.legs) {
        const gap = solids.get(leg.id)!.minGap(tub, 20);
        expect(gap, leg.id).toBeGreaterThan(fit.rimJoint * 0.95 - TOUCH);
        expect(gap, leg.id).toBeLessThan(fit.rimJoint + TOUCH);
      }
    });

    it('are found to overlap once moved by more than their joints', () => {
      const deeper = solids.get('trim.top')!.translate([0, 0, -0.5]);
      expect(depth(deeper, panelSolids[0]![1])).toBeGreaterThan(0.3);
      for (const leg of pieces.legs) {
        const moved = solids.get(leg.id)!.translate([0, 0, -fit.rimJoint - 1]);
        expect(depth(moved, tubSolid(truth, job.rim)), leg.id).toBeGreaterThan(0.25);
      }
    });

    it('clear the rim behind its roll by the joint', () => {
      for (const piece of all.filter(({ kind }) => kind === 'vertical' || kind === 'angle')) {
        const behind = solids.get(piece.id)!.trimByPlane([0, 0, -1], -(job.rim.width - 30));
        if (behind.isEmpty()) continue;
        expect(behind.minGap(rimSolid(truth), 20), piece.id).toBeGreaterThan(fit.rimJoint - 0.1);
      }
    });

    it('meet at their joints', () => {
      const top = solids.get('trim.top')!;
      for (const side of ['left', 'right']) {
        const sideTop = solids.get(`trim.${side}.top`)!;
        expect(Math.abs(top.minGap(sideTop, 10) - job.trim.joint), `${side} inside corner`).toBeLessThan(TOUCH);
        const outer = sideTop.minGap(solids.get(`trim.${side}.vertical`)!, 10);
        expect(Math.abs(outer - job.trim.joint), `${side} outer corner`).toBeLessThan(TOUCH);
      }
    });
  });
});

/** How deep two solids overlap: volume over the largest face of the overlap's box, mm. */
function depth(a: Manifold, b: Manifold): number {
  const common = a.intersect(b);
  if (common.isEmpty()) return 0;
  const { min, max } = common.boundingBox();
  const [x, y, z] = [0, 1, 2].map((i) => max[i]! - min[i]!) as [number, number, number];
  return common.volume() / Math.max(x * y, y * z, z * x, 1);
}

function area(loop: readonly (readonly [number, number])[]): number {
  let twice = 0;
  loop.forEach(([x, y], i) => {
    const [nextX, nextY] = loop[(i + 1) % loop.length]!;
    twice += x * nextY - nextX * y;
  });
  return twice / 2;
}
