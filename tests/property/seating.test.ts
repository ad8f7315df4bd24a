import fc from 'fast-check';
import { Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import type { Job, JobInput, Panel, ReadBack, WallName } from '../../src/core';
import { towardsRoom } from '../../src/core/alcove';
import { dryFitIn } from '../../src/core/dry-fit';
import { fitPieces } from '../../src/core/fitPieces';
import { fitPanel } from '../../src/core/panel';
import { type Seating, seatFigures, seatPanels } from '../../src/core/seat';
import { panelDxf, pieceDxf } from '../../src/output';
import { panelDrawing, pieceDrawing } from '../../src/output/drawing';
import { readTemplate } from '../../src/output/dryFit';
import {
  jobWith,
  mirrored,
  outlineDistance,
  plausibleAlcove,
  surfacesOf,
  type TrueAlcove,
  trueOutline,
  wallAt,
} from '../simulate';
import { choices, PANELS, runs, seeds } from './arbitraries';

/**
 * A grid twice as fine moves no edge by more than this, mm, of sheets up to 16 mm and 9000 N/mm² that 30 N/m² or more
 * press and adhesive holds all over. Slabs that hardly bend rock on a hump at the least push, on any grid.
 */
const GRID_BOUND = 0.1;

type Bedding = NonNullable<JobInput['bedding']>;

/** From thin plastic sheet to stone-like slabs, rigid ones, and sheets on shims. */
const bedding: fc.Arbitrary<Bedding> = fc.oneof(
  fc.record({
    edges: fc.constant('seated' as const),
    stiffness: fc.constant('stated' as const),
    modulusAcross: fc.constantFrom(1500, 3000, 9000),
    modulusUp: fc.constantFrom(1500, 3000, 9000),
    pressing: fc.constantFrom(30, 100, 1000),
    reach: fc.constantFrom(20, 30),
  }),
  fc.record({ edges: fc.constant('seated' as const), stiffness: fc.constant('rigid' as const) }),
  fc.record({ edges: fc.constant('shimmed' as const), shimTo: fc.constantFrom('flat' as const, 'plumb' as const) }),
);

interface Cut {
  job: Job;
  seating: Seating;
  panels: Record<WallName, Panel>;
}

const KNOWN = Matrix.eye(25, 25, 0);

/** The panels of an alcove known exactly, cut to how their sheets sit. */
function cutIn(truth: TrueAlcove, input: Partial<JobInput>, cells?: number): Cut {
  const job = jobWith([], { ...input, fit: { ...input.fit, flexible: false } });
  const alcove = surfacesOf(truth);
  const seating = seatPanels(alcove, job, cells);
  const panel = (name: WallName): Panel =>
    fitPanel(alcove, KNOWN, job, name, { edges: seating.edges, ...seatFigures(alcove, job, seating, name) }).panel;
  return { job, seating, panels: { back: panel('back'), left: panel('left'), right: panel('right') } };
}

describe('panels cut to how their sheets sit', () => {
  it('have their edges where the backs of the sheets, standing off the walls, put them', () => {
    fc.assert(
      fc.property(seeds, choices, bedding, (seed, chosen, bed) => {
        const truth = plausibleAlcove(seed);
        const { job, seating, panels } = cutIn(truth, { ...chosen, bedding: bed });
        const stands = (wall: WallName, at: number, height: number): number =>
          towardsRoom(wall) * (seating.sits[wall].value(at, height) - wallAt(truth, wall, at, height));
        for (const name of PANELS) {
          const outline = trueOutline(truth, { ...job, stands }, name, 60);
          expect(outlineDistance(panels[name].outline, outline)).toBeLessThan(0.05);
        }
      }),
      runs(24),
    );
  });

  it(`have edges within ${GRID_BOUND} mm of those that a grid twice as fine gives`, () => {
    let worst = 0;
    fc.assert(
      fc.property(seeds, choices, bedding, (seed, chosen, bed) => {
        const truth = plausibleAlcove(seed);
        const input = { ...chosen, bedding: bed };
        const [here, fine] = [cutIn(truth, input), cutIn(truth, input, 48)];
        for (const name of PANELS) {
          worst = Math.max(worst, outlineDistance(here.panels[name].outline, fine.panels[name].outline));
        }
        expect(worst).toBeLessThan(GRID_BOUND);
      }),
      runs(24),
    );
  });

  it('fit when their templates are read back and folded up, and so does the trim on them', async () => {
    for (const [seed, bed] of fc.sample(fc.tuple(seeds, bedding), { numRuns: 6, seed: 21 })) {
      const truth = plausibleAlcove(seed);
      const shelves = [{}, { corner: 'left' as const, aboveRim: 800 }];
      const { job, seating, panels } = cutIn(truth, { bedding: bed, trim: { rise: 20, insideCorners: true }, shelves });
      const alcove = surfacesOf(truth);
      const { pieces } = fitPieces(alcove, KNOWN, job, panels, seating.edges);
      const templates = new Map<string, ReadBack>();
      for (const panel of Object.values(panels)) {
        const drawing = panelDrawing(panel, job, [], 'face');
        templates.set(`panels.${panel.name}`, await readTemplate(await panelDxf(drawing)));
      }
      for (const piece of [...pieces.trim, ...pieces.legs, ...pieces.fillers, ...pieces.shelves]) {
        templates.set(piece.id, await readTemplate(await pieceDxf(pieceDrawing(piece, job, 'face'))));
      }
      const fit = dryFitIn(alcove, job, { panels, pieces }, templates, seating.edges);
      expect(fit.unread).toEqual([]);
      expect(fit.worst?.by, `alcove ${seed}, ${JSON.stringify(bed)}: ${JSON.stringify(fit.worst)}`).toBeLessThanOrEqual(
        0.1,
      );
    }
  });

  it('are mirrored with their alcove', () => {
    fc.assert(
      fc.property(seeds, choices, bedding, (seed, chosen, bed) => {
        const truth = plausibleAlcove(seed);
        const here = cutIn(truth, { ...chosen, bedding: bed });
        const there = cutIn(mirrored(truth), { ...chosen, bedding: bed });
        expect(outlineDistance(there.panels.left.outline, here.panels.right.outline)).toBeLessThan(0.02);
        expect(outlineDistance(there.panels.right.outline, here.panels.left.outline)).toBeLessThan(0.02);
      }),
      runs(16),
    );
  });
});

describe('the two limits of a sheet', () => {
  it('soft, it is cut as one that follows its wall; stiff beyond bending, as one that is rigid', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const truth = plausibleAlcove(seed);
        const fit = { ...chosen.fit, thickness: 3 };
        const even = cutIn(truth, { ...chosen, fit });
        const stated = { edges: 'seated', stiffness: 'stated' } as const;
        const soft = cutIn(truth, {
          ...chosen,
          fit,
          bedding: { ...stated, modulusAcross: 30, modulusUp: 30, pressing: 2000 },
        });
        const stiff = cutIn(truth, {
          ...chosen,
          fit: { ...fit, thickness: 16 },
          bedding: { ...stated, modulusAcross: 500_000, modulusUp: 500_000, pressing: 0.1 },
        });
        const rigid = cutIn(truth, { ...chosen, fit: { ...fit, thickness: 16 }, bedding: { edges: 'seated' } });
        for (const name of PANELS) {
          expect(outlineDistance(soft.panels[name].outline, even.panels[name].outline)).toBeLessThan(0.05);
          expect(stiff.panels[name].outline).toEqual(rigid.panels[name].outline);
        }
      }),
      runs(12),
    );
  });
});
