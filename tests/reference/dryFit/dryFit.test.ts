// Templates read back from the text of their files and folded up into alcoves known exactly. All 500: `npm run bench -- dry-fit`.
import { describe, expect, it } from 'vitest';
import type { ReadBack } from '../../../src/core';
import { dryFitIn } from '../../../src/core/dry-fit';
import { readTemplate } from '../../../src/output/dryFit';
import { surfacesOf } from '../../simulate';
import { dxfFiles, randomFit, randomJob } from './randomFit';

describe('templates folded up in random alcoves', () => {
  it('fit to 0.1 mm at every edge, face up or back up', async () => {
    const seen = new Set<string>();
    for (let seed = 1; seed <= 16; seed++) {
      const fit = await randomFit(seed);
      expect(fit.unread).toEqual([]);
      for (const { piece, edges } of fit.pieces) {
        expect(edges.length, piece).toBeGreaterThan(0);
        for (const { edge, overlap, gap } of edges) {
          expect(Math.max(overlap, gap), `${piece} ${edge}, alcove ${seed}`).toBeLessThanOrEqual(0.1);
          seen.add(`${piece.replace(/left|right/, 'side')}: ${edge}`);
        }
      }
      expect(fit.fits).toBe(true);
    }
    for (const expected of [
      'panels.back: left',
      'panels.back: bottom',
      'panels.side: back',
      'panels.side: front',
      'trim.top: left end',
      'trim.side.top: back end',
      'trim.side.top: front end',
      'trim.side.vertical: head',
      'trim.side.vertical: foot',
      'trim.side.corner: foot',
      'legs.side: beside the tub',
      'legs.side: top',
      'fillers.top: left end',
      'fillers.side.vertical: beside the panel',
      'shelves.1: side edge',
    ])
      expect(seen).toContain(expected);
  }, 120_000);

  it.each([38, 39, 70])('fit with trim of 38 mm that stands %s mm above the panels', async (rise) => {
    for (const lip of [0, 6]) {
      const fit = await randomFit(5, { trim: { width: 38, rise, lip } });
      expect(fit.worst!.by).toBeLessThanOrEqual(0.1);
      expect(fit.fits).toBe(true);
    }
  });

  it('are found out where a file is off, by how much and which way', async () => {
    const made = randomJob(8);
    const files = await dxfFiles(made, 'face');
    const fitOf = async (piece: string, change: (text: string) => string) => {
      const templates = new Map<string, ReadBack>();
      for (const [id, text] of files) templates.set(id, await readTemplate(id === piece ? change(text) : text));
      return dryFitIn(surfacesOf(made.truth), made.job, made.result, templates);
    };
    // all of an outline's lines moved by a millimetre to the right, the axes left where they are
    const moved = (by: number) => (text: string) => shiftLayer(text, 'cut', by);
    const right = await fitOf('panels.back', moved(1));
    expect(right.fits).toBe(false);
    const edges = right.pieces.find(({ piece }) => piece === 'panels.back')!.edges;
    const of = (name: string) => edges.find(({ edge }) => edge === name)!;
    expect(of('right').overlap).toBeCloseTo(1, 1);
    expect(of('left').gap).toBeCloseTo(1, 1);
    expect(right.worst).toMatchObject({ piece: 'panels.back' });
    expect((await fitOf('trim.top', moved(-0.4))).worst).toMatchObject({
      piece: 'trim.top',
      by: expect.closeTo(0.4, 1),
    });
    expect((await fitOf('panels.back', moved(0.05))).fits).toBe(true);
  }, 60_000);
});

/** Adds to every x (group 10) of the entities on a layer. */
function shiftLayer(text: string, layer: string, by: number): string {
  const lines = text.split('\n');
  let inside = false;
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = Number(lines[i]);
    if (code === 0) inside = false;
    if (code === 8) inside = lines[i + 1]!.trim() === layer;
    if (code === 10 && inside) lines[i + 1] = `${Number(lines[i + 1]) + by}`;
  }
  return lines.join('\n');
}
