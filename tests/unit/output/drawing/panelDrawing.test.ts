import { describe, expect, it } from 'vitest';
import { formatLength, formatPlusMinus, type PanelName, Z_95 } from '../../../../src/core';
import { panelDrawing } from '../../../../src/output/drawing';
import { fixtureJob, fixtureResult } from '../fixture';

const job = fixtureJob();
const result = fixtureResult();
const names: PanelName[] = ['back', 'left', 'right'];
const inches = (mm: number) => formatLength(Math.abs(mm), { unit: 'in', denominator: 32 });

describe('panelDrawing', () => {
  it('draws back and right panels as their flat sheets lie, the left one mirrored', () => {
    for (const name of names) {
      const sign = name === 'left' ? -1 : 1;
      const { outline } = panelDrawing(result.panels[name], job);
      expect(outline).toEqual(result.panels[name].flat.outline.map(([x, y]) => [sign * x, y]));
    }
  });

  it('mirrors everything when the back is up', () => {
    for (const name of names) {
      const face = panelDrawing(result.panels[name], job);
      const back = panelDrawing(result.panels[name], job, [], 'back');
      expect(back.outline).toEqual(face.outline.map(([x, y]) => [-x, y]));
      expect(back.holes.map(({ centre }) => centre)).toEqual(face.holes.map(({ centre: [x, y] }) => [-x, y]));
      expect(back.sheet).toEqual({ ...face.sheet, left: -face.sheet.right, right: -face.sheet.left });
      expect(back.statement).toMatch(/^BACK UP \(MIRRORED\)/);
      expect(face.statement).toMatch(/^FACE UP/);
    }
  });

  it('puts the back edge of the left panel at the right, of the right panel at the left', () => {
    const place = (name: PanelName) =>
      panelDrawing(result.panels[name], job).edges.find((edge) => edge.name === 'back')?.place;
    expect(place('left')).toBe('right');
    expect(place('right')).toBe('left');
  });

  it('tells every mark by its distances to the two control lines, with ± at 95 %', () => {
    for (const name of names) {
      const panel = result.panels[name];
      const datum = panel.flat.plumbDatum.at;
      for (const edge of panelDrawing(panel, job).edges) {
        const source = panel.edges[edge.name]!;
        if (source.method === 'factory') {
          expect(edge.marks).toEqual([]);
          continue;
        }
        expect(edge.marks).toHaveLength(source.marks.length);
        const upright = edge.place === 'left' || edge.place === 'right';
        for (const mark of edge.marks) {
          const from = source.marks.find(
            ({ sheet: [x, y] }) => Math.abs(x) === Math.abs(mark.at[0]) && y === mark.at[1],
          )!;
          const [toDatum, toLevel] = [from.sheet[0] - datum, from.sheet[1]];
          expect(mark.across.mm).toBeCloseTo(Math.abs(upright ? toDatum : toLevel), 9);
          expect(mark.along.mm).toBeCloseTo(Math.abs(upright ? toLevel : toDatum), 9);
          expect(mark.across.text).toBe(inches(upright ? toDatum : toLevel));
          expect(mark.plusMinus.text).toBe(formatPlusMinus(Z_95 * from.sd, { unit: 'in', denominator: 32 }));
          expect(mark.scribe).toBe(Z_95 * from.sd > 25.4 / 32);
          const drawnRight = toDatum > 0 === (name !== 'left');
          expect(upright ? mark.direction : mark.alongWords).toContain(drawnRight ? 'right' : 'left');
        }
      }
    }
  });

  it('numbers the marks of a panel once through', () => {
    const numbers = panelDrawing(result.panels.right, job).edges.flatMap(({ marks }) =>
      marks.map(({ number }) => number),
    );
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
  });

  it('says what to leave for scribing where ± is more than 1/32 in, and only there', () => {
    const right = panelDrawing(result.panels.right, job);
    const front = right.edges.find(({ name }) => name === 'front')!;
    expect(Z_95 * 0.8).toBeGreaterThan(25.4 / 32);
    expect(front.leave?.extra.text).toBe('1/16"');
    expect(front.leave?.words).toBe('leave 1/16" extra and scribe on dry fit');
    expect(panelDrawing(result.panels.left, job).edges.every(({ leave }) => leave === null)).toBe(true);
  });

  it('rounds what to leave up to a whole mm in a metric job', () => {
    const front = panelDrawing(result.panels.right, fixtureJob({ display: 'mm' })).edges.find(
      ({ name }) => name === 'front',
    )!;
    expect(front.leave?.extra.mm).toBe(2);
  });

  it('gives hole centres from the control lines and from the cut edges', () => {
    const panel = result.panels.right;
    const drawing = panelDrawing(panel, job);
    const valve = drawing.holes.find(({ id }) => id === 'valve')!;
    const [x, y] = panel.holes.find(({ id }) => id === 'valve')!.sheet;
    expect(valve.fromDatum.mm).toBeCloseTo(Math.abs(x - panel.flat.plumbDatum.at), 9);
    expect(valve.fromLevel.mm).toBeCloseTo(-y, 9);
    // The fixture's back edge is u = 10 + 1e-5 v² - 0.002 v; the flat sheet shifts it by its own shear.
    const v = y / 1.0001;
    const edge = (10 + 1e-5 * v * v - 0.002 * v) * 1.0002 + 0.001 * v;
    // The outline's straight joins, 72 mm long, leave the curve by up to 2e-5 · 72² / 8 = 0.013 mm.
    expect(Math.abs(valve.fromEdge!.distance.mm - (x - edge))).toBeLessThan(0.014);
    expect(valve.fromEdge?.title).toBe('back edge');
    expect(valve.aboveRimWords).toBe('13" above finished rim');
    expect(valve.fromWords).toBe('15" from the back panel\'s face');
    expect(valve.toolWords).toBe('3 3/4" hole saw, from the back until its pilot comes through, then from the face');
    expect(drawing.holes.find(({ id }) => id === 'head')?.fromWords).toBe('15" from the bare back wall');
  });

  it('sets the control lines out from the sheet', () => {
    const panel = result.panels.back;
    const { levelLine, plumbDatum } = panelDrawing(panel, job);
    expect(levelLine.setOut).toContain(`${inches(panel.flat.sheet.top)} below the sheet's top edge`);
    expect(plumbDatum.setOut).toContain(`${inches(panel.flat.sheet.left)} from the sheet's left edge`);
  });

  it('carries the problems of its own panel', () => {
    expect(panelDrawing(result.panels.left, job, result.problems).problems).toEqual([
      'the sheet is too narrow; lay a wider one (1/2")',
    ]);
    expect(panelDrawing(result.panels.back, job, result.problems).problems).toEqual([]);
  });

  it('shows where the sheet falls short', () => {
    const left = panelDrawing(result.panels.left, job);
    expect(left.strips.filter(({ kind }) => kind === 'gap').length).toBeGreaterThan(0);
    expect(left.edges.find(({ name }) => name === 'front')?.sliverWords).toContain('sheet short by up to');
  });
});
