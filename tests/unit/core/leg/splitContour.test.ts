import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../../src/core/job-file';
import { splitContour } from '../../../../src/core/leg';
import type { Point } from '../../../../src/core/panel';
import { jobWith } from '../../../simulate';

describe('splitContour', () => {
  it('takes a traced line apart where it stands out farthest', () => {
    const traced: Point[] = [
      [100, 50],
      [112, 49],
      [125, 44],
      [131, 36],
      [133, 20],
      [131, 0],
      [126, -200],
      [118, -410],
    ];
    expect(splitContour(traced)).toEqual({
      profile: [
        [0, 0],
        [12, -1],
        [25, -6],
        [31, -14],
        [33, -30],
      ],
      apron: [
        [-2, -50],
        [-7, -250],
        [-15, -460],
      ],
    });
  });

  it('leaves out points that go back on the line, so that a job takes it', () => {
    const traced: Point[] = [
      [0, 0],
      [10, -1],
      [10.05, -1.2],
      [9.8, -1.5],
      [20, -6],
      [20, -9],
      [19, -8],
      [18, -90],
    ];
    const { profile, apron } = splitContour(traced);
    expect(profile).toEqual([
      [0, 0],
      [10, -1],
      [20, -6],
    ]);
    expect(apron).toEqual([
      [0, -9],
      [-2, -90],
    ]);
    expect(parseJob(jobWith([], { rim: { profile, apron } })).ok).toBe(true);
  });

  it('keeps an apron that drops plumb and leans out by next to nothing', () => {
    const traced: Point[] = [
      [0, 0],
      [20, -5],
      [20.03, -100],
      [20.06, -200],
      [20.09, -300],
      [10, -400],
    ];
    const { profile, apron } = splitContour(traced);
    expect(profile).toEqual([
      [0, 0],
      [20, -5],
    ]);
    const close = (values: number[]) => values.map((value) => expect.closeTo(value, 9));
    expect(apron).toEqual([close([0.03, -100]), close([0.06, -200]), close([0.09, -300]), close([-10, -400])]);
    expect(parseJob(jobWith([], { rim: { profile, apron } })).ok).toBe(true);
  });

  it('has nothing to say about no points, and no apron for a rim alone', () => {
    expect(splitContour([])).toEqual({ profile: [], apron: [] });
    expect(splitContour([[5, 5]])).toEqual({ profile: [[0, 0]], apron: [] });
  });
});
