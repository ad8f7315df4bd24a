import { describe, expect, it } from 'vitest';
import { countsOfPart, playwrightCounts, vitestCounts } from '../../counts.mjs';

const file = (status: string, ...tests: string[]) => ({
  status,
  assertionResults: tests.map((outcome) => ({ status: outcome })),
});

describe('vitestCounts', () => {
  it('counts tests by outcome', () => {
    const testResults = [file('passed', 'passed', 'passed', 'skipped', 'todo'), file('failed', 'failed', 'passed')];
    expect(vitestCounts({ testResults })).toEqual({ passed: 3, failed: 1, skipped: 2 });
  });

  it('counts a file that does not load as a failure', () => {
    expect(vitestCounts({ testResults: [file('failed')] })).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('counts a file whose set-up fails as a failure', () => {
    const testResults = [file('failed', 'skipped', 'skipped')];
    expect(vitestCounts({ testResults })).toEqual({ passed: 0, failed: 1, skipped: 2 });
  });
});

describe('playwrightCounts', () => {
  it('counts what passed on a second try as a failure', () => {
    const stats = { expected: 5, unexpected: 2, flaky: 1, skipped: 4 };
    expect(playwrightCounts({ stats })).toEqual({ passed: 5, failed: 3, skipped: 4 });
  });
});

describe('countsOfPart', () => {
  const good = { passed: 3, failed: 0, skipped: 0 };

  it('keeps the counts of a part that ends well', () => {
    expect(countsOfPart(good, true)).toEqual(good);
    expect(countsOfPart(null, true)).toEqual({ passed: 0, failed: 0, skipped: 0 });
  });

  it('makes a failure of a command that fails though every test passed', () => {
    expect(countsOfPart(good, false)).toEqual({ passed: 3, failed: 1, skipped: 0 });
    expect(countsOfPart(null, false)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('does not count failed tests twice', () => {
    expect(countsOfPart({ passed: 1, failed: 2, skipped: 0 }, false)).toEqual({ passed: 1, failed: 2, skipped: 0 });
  });

  it('makes a failure of a runner that wrote no report or found no test', () => {
    expect(countsOfPart(vitestCounts(null), true).failed).toBe(1);
    expect(countsOfPart(playwrightCounts(null), true).failed).toBe(1);
  });
});
