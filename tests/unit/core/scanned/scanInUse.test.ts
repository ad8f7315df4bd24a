import { describe, expect, it } from 'vitest';
import { scanParameters, scansInUse } from '../../../../src/core/scanned';
import { jobWith, plausibleAlcove } from '../../../simulate';
import { cellScan } from '../../../simulate/scanner';

const alcove = plausibleAlcove(2);
const first = cellScan(alcove, { id: 'one', size: 300 });
const second = cellScan(alcove, { id: 'two', size: 300, surfaces: ['back', 'left'] });
const corner = { id: 'c', kind: 'tape-to-corner', side: 'left', height: 0, value: 760 } as const;
const drop = { id: 'd', kind: 'tape-to-rim', wall: 'back', at: 0, value: 700 } as const;

describe('scansInUse', () => {
  it('lets the first scan say where plumb line and level line are where no reading does', () => {
    const [one, two] = scansInUse(jobWith([], { scans: [first, second] }));
    expect(one!.unknowns).not.toContain('across');
    expect(one!.unknowns).not.toContain('up');
    const warped = (wall: string) =>
      ['leanAlong', 'leanAcross', 'bowAlong', 'bowAcross'].map((each) => `${wall}.${each}`);
    const pose = ['tiltForward', 'tiltSideways', 'yaw', 'across', 'up', 'out', 'scale'];
    expect(two!.unknowns).toEqual([...pose, ...warped('back'), 'left', ...warped('left')]);
  });

  it('works it out where a tape to a corner and a drop to the rim are in use', () => {
    const [one] = scansInUse(jobWith([corner, drop], { scans: [first] }));
    expect(one!.unknowns).toEqual(expect.arrayContaining(['across', 'up']));
    const [off] = scansInUse(jobWith([{ ...corner, off: true }, drop], { scans: [first] }));
    expect(off!.unknowns).not.toContain('across');
    expect(off!.unknowns).toContain('up');
  });

  it('leaves out scans that are off or show nothing', () => {
    expect(
      scansInUse(
        jobWith([], {
          scans: [
            { ...first, off: true },
            { ...second, surfaces: {} },
          ],
        }),
      ),
    ).toEqual([]);
  });

  it('names each unknown once, with the priors of its scan', () => {
    const scans = scansInUse(jobWith([], { scans: [{ ...first, scaleSd: 3, tiltSd: 7, biasSd: 0.2 }, second] }));
    const parameters = scanParameters(scans);
    expect(new Set(parameters.map(({ name }) => name)).size).toBe(parameters.length);
    const priorOf = (name: string) => parameters.find((each) => each.name === `scan.one.${name}`)!.priorSd;
    expect([priorOf('scale'), priorOf('tiltForward'), priorOf('rim')]).toEqual([3e-3, 7e-3, 0.2]);
    // A surface that may be off by 0.2 mm may lean by less than that over a metre, and bow by less still.
    expect(1e3 * priorOf('rim.leanAlong')!).toBeCloseTo(0.08, 9);
    expect(1e6 * priorOf('rim.bowAcross')!).toBeCloseTo(0.05, 9);
  });
});
