import { describe, expect, it } from 'vitest';
import { latestOnly } from '../../../src/job/latest-only';

describe('latestOnly', () => {
  it('runs one at a time, skips what was overtaken, and ends on the newest', async () => {
    const started: number[] = [];
    const reported: number[] = [];
    const release: (() => void)[] = [];
    const ask = latestOnly(
      (input: number) => {
        started.push(input);
        return new Promise<number>((resolve) => release.push(() => resolve(input * 10)));
      },
      { done: (_, output) => reported.push(output), failed: () => reported.push(-1) },
    );
    [1, 2, 3, 4].forEach(ask);
    expect(started).toEqual([1]);
    release[0]?.();
    await expect.poll(() => started).toEqual([1, 4]);
    expect(reported).toEqual([10]);
    release[1]?.();
    await expect.poll(() => reported).toEqual([10, 40]);
    ask(5);
    expect(started).toEqual([1, 4, 5]);
  });

  it('goes on after a failure', async () => {
    const seen: string[] = [];
    const ask = latestOnly(
      async (input: number) => {
        if (input === 1) throw new Error('no');
        return input;
      },
      {
        done: (input) => seen.push(`done ${input}`),
        failed: (input, error) => seen.push(`failed ${input} ${(error as Error).message}`),
      },
    );
    ask(1);
    ask(2);
    await expect.poll(() => seen).toEqual(['failed 1 no', 'done 2']);
  });
});
