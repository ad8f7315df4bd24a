import { describe, expect, it } from 'vitest';
import { criticalPath } from '../../src/core/sequence';

/**
 * The house-building project of Hillier and Lieberman, Introduction to Operations Research (chapter on project
 * management with PERT/CPM): activities, weeks and predecessors; from memory. Answer there: 44 weeks, critical path
 * A-B-C-E-F-J-L-N, slack 4 for D, G, H and M, 2 for I, 1 for K.
 */
const activities: [string, number, string][] = [
  ['A', 2, ''],
  ['B', 4, 'A'],
  ['C', 10, 'B'],
  ['D', 6, 'C'],
  ['E', 4, 'C'],
  ['F', 5, 'E'],
  ['G', 7, 'D'],
  ['H', 9, 'E G'],
  ['I', 7, 'C'],
  ['J', 8, 'F I'],
  ['K', 4, 'J'],
  ['L', 5, 'J'],
  ['M', 2, 'H'],
  ['N', 6, 'K L'],
];
const tasks = activities.map(([id, duration, after]) => ({ id, duration, after: after.split(' ').filter(Boolean) }));

describe('critical path of a textbook project', () => {
  const path = criticalPath([...tasks].reverse());
  if (!path.ok) throw new Error('the network has no cycle');
  const floats = Object.fromEntries(path.times.map(({ id, float }) => [id, float]));

  it('takes 44 weeks', () => expect(path.duration).toBe(44));

  it('runs through A-B-C-E-F-J-L-N', () => {
    const critical = path.times.filter((each) => each.critical).map(({ id }) => id);
    expect(critical.sort().join('-')).toBe('A-B-C-E-F-J-L-N');
  });

  it('leaves the slack that the book gives', () => {
    expect(floats).toMatchObject({ D: 4, G: 4, H: 4, M: 4, I: 2, K: 1 });
  });
});
