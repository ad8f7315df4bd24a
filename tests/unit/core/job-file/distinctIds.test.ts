import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../../src/core/job-file';
import { completeJob } from './completeJob';

const faultsOf = (value: unknown) => {
  const parsed = parseJob(value);
  return parsed.ok ? [] : parsed.faults;
};
const depth = (id: string) => ({ id, kind: 'depth', wall: 'left', height: 0, value: 760 });
const plumb = (id: string) => ({
  id,
  kind: 'plumb',
  wall: 'left',
  at: 9,
  gaps: [
    { height: 0, value: 1 },
    { height: 9, value: 1 },
  ],
});
const withReadings = (...readings: unknown[]) => ({ ...completeJob(), readings });

describe('distinctIds', () => {
  it('names both places of an id given twice, and each repeat', () => {
    expect(faultsOf(withReadings(depth('a'), depth('b'), depth('a'), depth('a')))).toEqual([
      { path: 'readings[2].id', message: '"a" already names readings[0]; give each an id of its own' },
      { path: 'readings[3].id', message: '"a" already names readings[0]; give each an id of its own' },
    ]);
    const [valve] = completeJob().fixtures!;
    expect(faultsOf({ ...completeJob(), fixtures: [valve, valve] })).toEqual([
      { path: 'fixtures[1].id', message: '"valve" already names fixtures[0]; give each an id of its own' },
    ]);
  });

  it('keeps the rows of a plumb reading apart from other readings', () => {
    expect(faultsOf(withReadings(plumb('p'), depth('p/1')))).toEqual([
      { path: 'readings[1].id', message: '"p/1" already names readings[0]; give each an id of its own' },
    ]);
    expect(faultsOf(withReadings(depth('p/1'), plumb('p'))).map(({ path }) => path)).toEqual(['readings[1].id']);
    expect(faultsOf(withReadings(plumb('p'), depth('p/2')))).toEqual([]);
  });

  it('finds repeats beside other faults', () => {
    const paths = faultsOf(withReadings(depth('a'), { ...depth('a'), value: -1 }, 7)).map(({ path }) => path);
    expect(paths).toContain('readings[1].id');
    expect(paths).toContain('readings[1].value');
    expect(paths).toContain('readings[2]');
  });

  it('keeps a shelf without an id, called after its place, apart from one with that id', () => {
    expect(faultsOf({ ...completeJob(), shelves: [{ id: '2' }, {}] })).toEqual([
      { path: 'shelves[1].id', message: '"2" already names shelves[0]; give each an id of its own' },
    ]);
    expect(faultsOf({ ...completeJob(), shelves: [{}, {}, { id: '4' }] })).toEqual([]);
  });

  it('lets a reading and a fixture share an id', () => {
    expect(faultsOf(withReadings(depth('valve')))).toEqual([]);
  });
});
