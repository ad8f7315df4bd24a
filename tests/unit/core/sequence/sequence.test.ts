import { describe, expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import { box, solved } from '../../../reference/box';

const { job, result } = solved(box({}), {
  fixtures: [{ id: 'valve', kind: 'valve', wall: 'right', aboveRim: 700, fromBack: 381, hole: 95 }],
});
const place = (id: string): number => result.sequence.findIndex((step) => step.id === id);
const step = (id: string) => result.sequence[place(id)]!;

describe('order of work', () => {
  it('begins with water and power off and ends with the hand-over', () => {
    expect(result.sequence[0]!.id).toBe('shut-off');
    expect(result.sequence.at(-1)!.id).toBe('hand-over');
  });
  it('sets the back panel, then the dry side, then the wet wall', () => {
    expect(place('set.back')).toBeLessThan(place('set.left'));
    expect(place('set.left')).toBeLessThan(place('set.right'));
  });
  it('dry fits each panel before its adhesive', () => {
    for (const wall of ['back', 'left', 'right'])
      expect(step(`dry-fit.${wall}`).finish).toBeLessThanOrEqual(step(`set.${wall}`).start);
  });
  it('never starts a step before those it stands on', () => {
    for (const { start, after } of result.sequence) {
      for (const id of after) expect(start).toBeGreaterThanOrEqual(step(id).finish);
    }
  });
  it('fits plumbing only after a day of cure', () => {
    expect(step('plumbing').start - step('seal.1').finish).toBeGreaterThanOrEqual(24 * 60);
  });
  it('cuts holes only where there are any', () => {
    expect(place('holes.right')).toBeGreaterThan(0);
    expect(place('holes.left')).toBe(-1);
  });
  it('runs fewer metres of joint in one go where sealant skins over sooner', () => {
    const runs = (skinOver: number): number =>
      solve({ ...job, schedule: { ...job.schedule, skinOver } }).sequence.filter(({ id }) => id.startsWith('seal.'))
        .length;
    expect(runs(5)).toBeGreaterThan(runs(20));
  });
  it('warns of grab bars only where there is one, and always of hot water', () => {
    const cautionsOf = (ids: typeof job.fixtures) =>
      solve({ ...job, fixtures: ids })
        .sequence.at(-1)!
        .cautions.join(' ');
    expect(cautionsOf(job.fixtures)).toContain('scald');
    expect(cautionsOf(job.fixtures)).not.toContain('grab bar');
    expect(cautionsOf([{ ...job.fixtures[0]!, kind: 'grab-bar' }])).toContain('grab bar');
  });
});
