import { describe, expect, it } from 'vitest';
import { Z_95 } from '../../../../src/core';
import { contourSteps, fittingStep, scaleRange } from '../../../../src/scene/heat/contour-steps';
import { drawnHeat, heatTags, signed } from '../../../../src/scene/heat/drawn-heat';
import { nearestShare } from '../../../../src/scene/heat/HandleProjector';
import { sectionPlace, sectionProfile } from '../../../../src/scene/heat/section';
import { wallField } from '../../../../src/scene/heat/wall-field';
import { lengthsIn } from '../../../../src/views/parts/useLengths';
import { solvedDemo } from '../solvedDemo';

const { job, result } = solvedDemo();
const walls = ['back', 'left', 'right'] as const;

describe('a wall of the heat map', () => {
  it.each(walls)('%s: stands off at the grid points as the model says', (wall) => {
    for (const reference of ['plumb', 'flat'] as const) {
      const field = wallField(result, wall, reference);
      const { at, height, [reference]: grid } = result.walls[wall].deviation;
      for (const [i, j] of [
        [0, 0],
        [3, 7],
        [16, 16],
        [9, 2],
      ] as const) {
        expect(field.deviation(at[j]!, height[i]!)).toBeCloseTo(grid.value[i]![j]!, 9);
        expect(field.half(at[j]!, height[i]!)).toBeCloseTo(Z_95 * grid.sd[i]![j]!, 9);
      }
      expect(field.highest.value).toBe(Math.max(...grid.value.flat()));
      expect(field.lowest.value).toBe(Math.min(...grid.value.flat()));
      expect(field.assumed).toBe(false);
    }
  });

  it('is assumed where a part of its shape is', () => {
    const parameters = result.adjustment.parameters.map((each) =>
      each.name === 'left.plumb' ? { ...each, assumed: true } : each,
    );
    const unsure = { ...result, adjustment: { ...result.adjustment, parameters } };
    expect(wallField(unsure, 'left', 'plumb').assumed).toBe(true);
    expect(wallField(unsure, 'left', 'flat').assumed).toBe(false);
    expect(wallField(unsure, 'back', 'plumb').assumed).toBe(false);
  });

  it('carries its deviation and ± at every vertex', () => {
    for (const { mesh, field } of drawnHeat(result, job, 'plumb', 1).walls) {
      const count = mesh.positions.length / 3;
      expect([mesh.deviation.length, mesh.half.length, mesh.spots.length / 2]).toEqual([count, count, count]);
      for (const vertex of [0, 100, 555, count - 1]) {
        const [at, height] = [mesh.spots[2 * vertex]!, mesh.spots[2 * vertex + 1]!];
        expect(mesh.deviation[vertex]).toBeCloseTo(field.deviation(at, height), 9);
      }
    }
  });

  it('is drawn where the wall stands, however far it is exaggerated', () => {
    const [back] = drawnHeat(result, job, 'flat', 1).walls;
    const [x, y, z] = back!.mesh.positions.slice(3 * 500, 3 * 500 + 3) as [number, number, number];
    const { at, height } = result.walls.back.sampled;
    expect(x).toBeGreaterThan(at[0]! - 20);
    expect(y).toBeLessThan(height.at(-1)!);
    expect(Math.abs(z)).toBeLessThan(40);
  });

  it('is tagged where it stands out and lies back furthest, with sign and ±', () => {
    const lengths = lengthsIn('in');
    const tags = heatTags(drawnHeat(result, job, 'plumb', 5), lengths);
    expect(tags.map(({ key }) => key)).toEqual(walls.flatMap((wall) => [`${wall} highest`, `${wall} lowest`]));
    for (const { text } of tags) expect(text).toMatch(/^[+−][\d /]+" ±[\d/]+"$/);
    expect([signed(3.2, lengths), signed(-3.2, lengths), signed(0.1, lengths)]).toEqual(['+1/8"', '−1/8"', '0"']);
  });
});

describe('a section', () => {
  const field = wallField(result, 'right', 'plumb');

  it('upright follows the wall at a place along it', () => {
    const section = { wall: 'right', cut: 'upright', share: 0.25 } as const;
    const place = sectionPlace(section, field);
    expect(place).toBeCloseTo(field.at[0] + 0.25 * (field.at[1] - field.at[0]), 9);
    for (const { along, value, half } of sectionProfile(section, field)) {
      expect(value).toBeCloseTo(field.deviation(place, along), 9);
      expect(half).toBeCloseTo(field.half(place, along), 9);
    }
  });

  it('level follows it at a height, end to end', () => {
    const profile = sectionProfile({ wall: 'right', cut: 'level', share: 1 }, field);
    expect([profile[0]!.along, profile.at(-1)!.along]).toEqual([...field.at]);
    expect(profile[10]!.value).toBeCloseTo(field.deviation(profile[10]!.along, field.height[1]), 9);
  });

  it('is dragged to the place of its path nearest the pointer', () => {
    const path = [
      [0, 0],
      [100, 0],
      [100, 50],
    ] as const;
    expect(nearestShare(path, 50, 20)).toBeCloseTo(0.25, 9);
    expect(nearestShare(path, 300, 25)).toBeCloseTo(0.75, 9);
    expect(nearestShare(path, -40, -10)).toBe(0);
    expect(nearestShare(path, 200, 400)).toBe(1);
  });
});

describe('contour intervals', () => {
  it('are the finest that do not crowd', () => {
    expect(fittingStep(6 * 1.5875, 'in')).toBeCloseTo(1.5875, 9);
    expect(fittingStep(6 * 1.5875 + 0.01, 'in')).toBeCloseTo(3.175, 9);
    expect(fittingStep(0, 'mm')).toBe(0.5);
    expect(fittingStep(1e4, 'mm')).toBe(contourSteps.mm.at(-1));
  });

  it('fill a scale that takes in the largest deviation', () => {
    expect(scaleRange(9, 2)).toBe(10);
    expect(scaleRange(10, 2)).toBe(10);
    expect(scaleRange(0.1, 2)).toBe(4);
  });
});
