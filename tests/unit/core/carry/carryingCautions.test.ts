import { expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import { solvedDemo } from '../../scene/solvedDemo';

const { job, result } = solvedDemo();
const cautionsOf = (found: typeof result, step: string): string =>
  found.sequence.find(({ id }) => id === step)!.cautions.join(' ');

it('tells in the order of work that the back panel is to be turned, and that a sheet is to be cut before it is carried', () => {
  const { tilt, way } = result.gettingIn.panels.back;
  expect(way).toBe('tilted');
  for (const step of ['dry-fit.back', 'set.back']) {
    expect(cautionsOf(result, step)).toContain(
      `turned by ${Math.round(tilt!.angle)}° about an upright line, ${tilt!.first} edge first`,
    );
  }
  expect(cautionsOf(result, 'cut.back')).not.toContain('before it is carried in');
  const stair = { ...job.carrying.stair, width: 850, headroom: 1900, landing: 800 };
  const carried = solve({ ...job, carrying: { ...job.carrying, stair } });
  expect(cautionsOf(carried, 'cut.back')).toContain('as bought the sheet does not pass the landing of the stair');
});
