import { describe, expect, it } from 'vitest';
import { layAdhesive } from '../../../../src/core/materials/adhesive';
import { stripLength } from '../../../../src/core/materials/strips';
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
const dots = { layout: 'dots', spacing: 100, edgeClear: 40, pressedWidth: 40, cartridge: 800, waste: 0.1 } as const;

describe('dots', () => {
  it('stand on a grid centred on the panel, clear of the edges', () => {
    const { dots: centres } = layAdhesive(panel(300, 200), dots, () => 2);
    // across: 0 100 200 300 and up: 0 100 200, of which the outer ones are too near an edge
    expect(centres).toEqual([
      [100, 100],
      [200, 100],
    ]);
  });
  it('keep clear of holes', () => {
    const { dots: centres } = layAdhesive(panel(300, 200, [{ u: 100, v: 100, diameter: 50 }]), dots, () => 2);
    expect(centres).toEqual([[200, 100]]);
  });
  it('are as thick as the bed', () => {
    const { volume } = layAdhesive(panel(300, 200), dots, (u) => u / 100);
    expect(volume).toBeCloseTo((Math.PI / 4) * 40 ** 2 * (1 + 2), 9);
  });
});

describe('beads', () => {
  it('run upright, broken at holes', () => {
    const { beads } = layAdhesive(
      panel(100, 1000, [{ u: 50, v: 500, diameter: 120 }]),
      { ...dots, layout: 'beads', edgeClear: 40, spacing: 300 },
      () => 2,
    );
    expect(beads.length).toBe(2);
    for (const [[u]] of beads) expect(u).toBe(50);
    expect(beads[0]![0][1]).toBeCloseTo(40, 9);
    expect(beads[0]![1][1]).toBeCloseTo(400, 9);
    expect(beads[1]![0][1]).toBeCloseTo(600, 9);
  });
});

describe('stripLength', () => {
  const settings = { spacing: 762, edgeClear: 50, roll: 10_000 };
  it('puts strips no farther apart than the spacing', () => {
    // 1500 − 100 across in two steps of 700, three strips of 1600
    expect(stripLength(panel(1500, 1700), settings)).toBe(3 * 1600);
  });
  it('needs only two where they are near enough', () => expect(stripLength(panel(800, 1000), settings)).toBe(2 * 900));
  it('is nothing on a panel too small for it', () => expect(stripLength(panel(80, 1000), settings)).toBe(0));
});
