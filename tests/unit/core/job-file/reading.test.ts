import { describe, expect, it } from 'vitest';
import { reading } from '../../../../src/core/job-file';
import { completeJob } from './completeJob';

const faults = (value: unknown): { path: string; message: string }[] => {
  const parsed = reading.safeParse(value);
  return parsed.success ? [] : parsed.error.issues.map(({ path, message }) => ({ path: path.join('.'), message }));
};
const ofKind = (kind: string) => completeJob().readings.find((each) => each.kind === kind)!;

describe('reading', () => {
  it.each(completeJob().readings)('takes $kind', (each) => {
    expect(reading.parse(each)).toEqual(each);
  });

  it('lets a station on the back wall lie left of the plumb line, on a side wall not behind the back wall', () => {
    for (const kind of ['tape-to-rim', 'plumb']) {
      expect(faults({ ...ofKind(kind), wall: 'back', at: -500 })).toEqual([]);
      expect(faults({ ...ofKind(kind), wall: 'left', at: -500 }).map(({ path }) => path)).toEqual(['at']);
    }
  });

  it('wants gaps at two different heights', () => {
    const plumb = ofKind('plumb');
    expect(faults({ ...plumb, gaps: [{ height: 5, value: 1 }] })).toEqual([
      { path: 'gaps', message: 'needs at least two gaps; add another height' },
    ]);
    expect(
      faults({
        ...plumb,
        gaps: [
          { height: 5, value: 1 },
          { height: 5, value: 2 },
        ],
      }),
    ).toEqual([{ path: 'gaps', message: 'are all at one height; take one at another height' }]);
    expect(
      faults({
        ...plumb,
        gaps: [
          { height: 5, value: 1 },
          { height: 5, value: 2 },
          { height: 6, value: 2 },
        ],
      }),
    ).toEqual([]);
  });

  it('wants two different ends of a straightedge and of a diagonal', () => {
    const [edge, diagonal] = [ofKind('straightedge'), ofKind('diagonal')];
    expect(faults({ ...edge, to: { at: 50, height: -600 } }).map(({ path }) => path)).toEqual(['to']);
    expect(faults({ ...edge, to: { at: 51, height: -600 } })).toEqual([]);
    expect(faults({ ...diagonal, to: { side: 'left', height: -600 } }).map(({ path }) => path)).toEqual(['to']);
    expect(faults({ ...diagonal, to: { side: 'left', height: -500 } })).toEqual([]);
  });

  it('wants a square check that closes a triangle', () => {
    const check = (value: number) => faults({ ...ofKind('square'), alongBack: 600, alongSide: 450, value });
    expect(check(750)).toEqual([]);
    expect(check(150.01)).toEqual([]);
    expect(check(1049.99)).toEqual([]);
    for (const key of ['alongBack', 'alongSide']) {
      expect(faults({ ...ofKind('square'), [key]: 9.9 }).map(({ path }) => path)).toContain(key);
    }
    for (const value of [149, 150, 1050, 1051]) expect(check(value).map(({ path }) => path)).toEqual(['value']);
  });

  it('has no instrument to choose for a rule, a straightedge or an angle finder', () => {
    for (const kind of ['plumb', 'straightedge', 'angle'])
      expect(faults({ ...ofKind(kind), instrument: 'tape' })).toHaveLength(1);
  });

  it('wants a time in UTC beside an earlier value', () => {
    const history = [{ value: 700, until: 'yesterday' }];
    expect(faults({ ...ofKind('depth'), history })).toEqual([
      { path: 'history.0.until', message: 'must be a time such as "2026-05-04T10:30:00Z"' },
    ]);
  });
});
