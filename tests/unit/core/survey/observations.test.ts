import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../../src/core/job-file';
import { observationsOf, tapeSd } from '../../../../src/core/survey';
import { alcoveOf } from '../skewedAlcove';

const plumb: Reading = {
  id: 'p',
  kind: 'plumb',
  wall: 'left',
  at: 300,
  sd: 0.7,
  gaps: [
    { height: 0, value: 30 },
    { height: 500, value: 26, sd: 0.2 },
    { height: 900, value: 21 },
  ],
};
const span: Reading = { id: 's', kind: 'span', height: 0, at: 300, value: 1510, off: true };

describe('observationsOf', () => {
  it('gives one a reading and one a gap, in order, those marked off included', () => {
    const observations = observationsOf([span, plumb, { ...span, id: 't' }], {});
    expect(
      observations.map(({ id, reading, kind, observed, standoff }) => [id, reading, kind, observed, standoff]),
    ).toEqual([
      ['s', 0, 'span', 1510, false],
      ['p/0', 1, 'plumb', 30, true],
      ['p/1', 1, 'plumb', 26, true],
      ['p/2', 1, 'plumb', 21, true],
      ['t', 2, 'span', 1510, false],
    ]);
  });

  it("takes the nearest standard deviation: the gap's, the reading's, the instrument's", () => {
    expect(observationsOf([plumb], { rule: { sd: 0.9 } }).map(({ sd }) => sd)).toEqual([0.7, 0.2, 0.7]);
    const bare = { ...plumb, sd: undefined };
    expect(observationsOf([bare], { rule: { sd: 0.9 } }).map(({ sd }) => sd)).toEqual([0.9, 0.2, 0.9]);
    expect(observationsOf([bare], {}).map(({ sd }) => sd)).toEqual([0.5, 0.2, 0.5]);
  });

  it('uses the mean of a reading and its repeats, more certain than one of them', () => {
    const repeats = [1511, 1512];
    const of = (reading: Reading) => {
      const { observed, sd } = observationsOf([reading], {})[0]!;
      return [observed, sd];
    };
    expect(of({ ...span, repeats })).toEqual([1511, tapeSd(1511, 3)]);
    expect(of({ ...span, repeats, sd: 3 })[1]).toBeCloseTo(3 / Math.sqrt(3), 12);
    expect(of({ ...span, repeats, instrument: 'laser' })).toEqual([1511, 1]);
    expect(of({ id: 'g', kind: 'angle', side: 'left', height: 0, value: 90, repeats: [89] })).toEqual([
      89.5,
      0.1 / Math.SQRT2,
    ]);
  });

  it('has a default for every kind', () => {
    const station = { at: 0, height: 0 };
    const corner = { side: 'left', height: 0 } as const;
    const kinds: [Reading, number][] = [
      [{ id: 'a', kind: 'tape-to-corner', side: 'left', height: 0, value: 760 }, tapeSd(760)],
      [{ id: 'b', kind: 'tape-to-rim', wall: 'back', at: 0, value: -1200 }, tapeSd(1200)],
      [span, tapeSd(1510)],
      [{ ...span, instrument: 'laser' }, 1],
      [{ id: 'e', kind: 'straightedge', wall: 'back', from: station, to: { at: 500, height: 0 }, value: 2 }, 0.4],
      [{ id: 'f', kind: 'square', side: 'left', height: 0, alongBack: 600, alongSide: 450, value: 750 }, tapeSd(750)],
      [{ id: 'g', kind: 'angle', side: 'left', height: 0, value: 90 }, 0.1],
      [{ id: 'h', kind: 'diagonal', from: corner, to: { ...corner, side: 'right' }, value: 2100 }, tapeSd(2100)],
      [{ id: 'i', kind: 'depth', wall: 'left', height: 0, value: 760 }, tapeSd(760)],
    ];
    for (const [reading, sd] of kinds) expect(observationsOf([reading], {})[0]!.sd, reading.kind).toBe(sd);
    for (const [reading] of kinds) expect(observationsOf([{ ...reading, sd: 3 }], {})[0]!.sd, reading.kind).toBe(3);
  });

  it('predicts what the reading would be', () => {
    const alcove = alcoveOf({ 'left.plumb': 0.01 });
    expect(observationsOf([span], {})[0]!.predict(alcove).value).toBe(1520);
    // less its standoff, which the adjustment finds: −l = 760 − 0.01 y
    expect(observationsOf([plumb], {}).map(({ predict }) => predict(alcove).value)).toEqual([760, 755, 751]);
  });
});
