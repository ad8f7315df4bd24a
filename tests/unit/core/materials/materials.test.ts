import { describe, expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import { box, solved } from '../../../reference/box';

describe('materials of a true box', () => {
  const { result, job } = solved(box({}), { fit: { bed: 2, thickness: 6, cornerJoint: 3, rimJoint: 4, top: 980 } });
  const joint = (id: string) => result.materials.joints.find((each) => each.id === id)!;
  const line = (id: string) => result.materials.lines.find((each) => each.id === id)!;

  it('give the corner joint the width that the fit leaves, all the way up', () => {
    for (const [, width] of joint('corner.left').widths) expect(width).toBeCloseTo(3, 4);
    for (const [, width] of joint('rim.back').widths) expect(width).toBeCloseTo(4, 4);
  });

  it('count what their inputs say', () => {
    const sealant = result.materials.joints.filter(({ filler }) => filler === 'sealant');
    expect(line('sealant').quantity).toBeCloseTo(
      sealant.reduce((sum, { volume }) => sum + volume, 0),
      9,
    );
    const { length, volume } = joint('corner.left');
    expect(volume).toBeCloseTo((length * (3 * 6 + 6.35 ** 2 / 2)) / 0.85 / 1000, 3);
  });

  it('buy whole packs that hold the quantity', () => {
    for (const { quantity, packs } of result.materials.lines) {
      expect(packs.count * packs.size).toBeGreaterThanOrEqual(quantity - 1e-6);
      expect(packs.leftOver).toBeLessThan(packs.size);
    }
  });

  it('report a joint that moves by more than its sealant takes, with the width that would do', () => {
    const supplies = {
      ...job.supplies,
      movement: { ...job.supplies.movement, expansion: 20, expansionMost: 50, swing: 30 },
    };
    const moved = solve({ ...job, supplies });
    const found = moved.problems.find(({ where }) => where === 'joints.rim.back');
    const rim = moved.materials.joints.find(({ id }) => id === 'rim.back')!;
    expect(rim.moves!.used).toBeGreaterThan(1);
    expect(rim.moves!.least).toBeLessThan(rim.moves!.most / 3);
    expect(found?.howMuch).toBeCloseTo(rim.moves!.most / 0.25, 6);
    const wider = { ...supplies, movement: { ...supplies.movement, capability: 1 } };
    expect(solve({ ...job, supplies: wider }).problems).toEqual([]);
  });

  it('report a joint too wide for sealant', () => {
    const wide = solve({ ...job, fit: { ...job.fit, cornerJoint: 20 } });
    const found = wide.problems.find(({ where }) => where === 'joints.corner.left');
    expect(found?.what).toContain('too wide for sealant');
    expect(found?.howMuch).toBeCloseTo(20, 3);
    expect(result.problems.filter(({ where }) => where.startsWith('joints.'))).toEqual([]);
  });
});
