import { describe, expect, it } from 'vitest';
import { layAdhesive } from '../../../../src/core/materials/adhesive';
import { layStrips, stripLength } from '../../../../src/core/materials/strips';
import type { Panel } from '../../../../src/core/panel';

const panel = (width: number, height: number, holes: { u: number; v: number; diameter: number }[] = []): Panel =>
  ({
    outline: [
      [0, 0],
      [width, 0],
      [width, height],
      [0, height],
    ],
    holes,
  }) as unknown as Panel;
const dots = {
  layout: 'dots',
  spacing: 100,
  edgeClear: 40,
  pressedWidth: 40,
  trimBead: 6,
  cartridge: 800,
  waste: 0.1,
} as const;
const strips = { spacing: 762, edgeClear: 50, width: 20, roll: 10_000 };

describe('dots', () => {
  it('stand on a grid centred on the panel, clear of the edges', () => {
    const { dots: centres } = layAdhesive(panel(300, 200), dots, strips, () => 2);
    // across: 0 100 200 300 and up: 0 100 200, of which the outer ones are too near an edge
    expect(centres).toEqual([
      [100, 100],
      [200, 100],
    ]);
  });
  it('keep clear of holes', () => {
    const { dots: centres } = layAdhesive(panel(300, 200, [{ u: 100, v: 100, diameter: 50 }]), dots, strips, () => 2);
    expect(centres).toEqual([[200, 100]]);
  });
  it('are as thick as the bed', () => {
    const { volume } = layAdhesive(panel(300, 200), dots, strips, (u) => u / 100);
    expect(volume).toBeCloseTo((Math.PI / 4) * 40 ** 2 * (1 + 2), 9);
  });
});

describe('beads', () => {
  it('run upright, broken at holes', () => {
    const { beads } = layAdhesive(
      panel(400, 1000, [{ u: 200, v: 500, diameter: 120 }]),
      { ...dots, layout: 'beads', edgeClear: 40, spacing: 500 },
      strips,
      () => 2,
    );
    expect(beads.length).toBe(2);
    for (const [[u]] of beads) expect(u).toBe(200);
    expect(beads[0]![0][1]).toBeCloseTo(40, 9);
    expect(beads[0]![1][1]).toBeCloseTo(400, 9);
    expect(beads[1]![0][1]).toBeCloseTo(600, 9);
  });
});

describe('double-faced strips', () => {
  const length = (width: number, height: number) => stripLength(layStrips(panel(width, height), strips));
  it('are no farther apart than the spacing', () => {
    // 1500 − 100 across in two steps of 700, three strips of 1600
    expect(length(1500, 1700)).toBeCloseTo(3 * 1600, 9);
  });
  it('are two where those are near enough', () => expect(length(800, 1000)).toBeCloseTo(2 * 900, 9));
  it('are none on a panel too small for them', () => expect(length(80, 1000)).toBe(0));
  it('stop short of holes', () => {
    const found = layStrips(panel(800, 1000, [{ u: 50, v: 500, diameter: 100 }]), strips);
    expect(found.length).toBe(3);
    for (const [[u, from], [, to]] of found.filter(([[at]]) => at === 50)) {
      expect(u).toBe(50);
      expect(to <= 425 || from >= 575).toBe(true);
    }
  });
  it('keep dots and beads beside them', () => {
    const across = panel(400, 400);
    const laid = layAdhesive(across, { ...dots, spacing: 50 }, strips, () => 2);
    for (const [u] of laid.dots) for (const [[at]] of laid.strips) expect(Math.abs(u - at)).toBeGreaterThanOrEqual(30);
    expect(laid.bed).toEqual({ min: 2, max: 2 });
  });
});
