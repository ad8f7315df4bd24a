import { describe, expect, it } from 'vitest';
import type { Passage, WayIn } from '../../../../src/core';
import { passageWords, wayWords } from '../../../../src/output';

const job = { display: 'mm' as const };
const straight: WayIn = {
  panel: 'back',
  way: 'straight',
  clearance: 2,
  sd: 0.3,
  doubtful: false,
  tightest: { height: -300, depth: 500 },
  straight: { clearance: 2, sd: 0.3 },
  tilt: null,
  bow: null,
  lift: 0,
  reach: 0,
  poses: [],
};

describe('wayWords', () => {
  it('tells what is free and where', () => {
    const { weight, head, more } = wayWords(straight, job);
    expect([weight, head]).toEqual(['good', 'Goes straight in']);
    expect(more).toEqual([
      expect.stringMatching(/^2(\.0)? mm ±0\.6 mm free on each side, tightest 300.* below the level line, 500.* out/),
    ]);
  });
  it('tells what holds a bowed sheet in the unit of the job', () => {
    const bow = { sagitta: 20, shortening: 1, strain: 0.2, limit: 0.3, force: 44.48 };
    const bowed: WayIn = { ...straight, way: 'bowed', bow };
    expect(wayWords(bowed, job).more.join(' ')).toContain('About 44.5 N hold it.');
    expect(wayWords(bowed, { display: 'in' }).more.join(' ')).toContain('About 10.00 lbf hold it.');
  });
  it('warns where the ± is wider than what is free', () => {
    const { weight, more } = wayWords({ ...straight, sd: 1.5, doubtful: true }, job);
    expect(weight).toBe('warn');
    expect(more.join(' ')).toContain('less than the readings are sure of');
  });
  it('tells of a turn, of the lift and of the room it takes', () => {
    const tilt = { about: 'upright' as const, first: 'left' as const, angle: 5.94 };
    const turned = {
      ...straight,
      way: 'tilted' as const,
      tilt,
      straight: { clearance: -3, sd: 0.3 },
      lift: 4,
      reach: 90,
    };
    const { weight, head, more } = wayWords(turned, job);
    expect([weight, head]).toEqual(['warn', 'Goes in turned by 5.9° about an upright line, left edge first']);
    expect(more.join(' ')).toMatch(/would lack 3.* mm.*Lift it by 4.* mm.*Keep 90.* mm free/);
  });
  it('tells of a bow, within its limit and beyond', () => {
    const bow = { shortening: 6, sagitta: 58, strain: 0.08, limit: 0.3, force: 74.2 };
    expect(wayWords({ ...straight, way: 'bowed', bow }, job).more.join(' ')).toMatch(
      /together by 6.* mm.*stands out by 58.* mm: 0\.08 % strain.*limit is 0\.30 %.*74\.2 N/,
    );
    const blocked = wayWords({ ...straight, way: 'blocked', clearance: -4, bow: { ...bow, strain: 0.5 } }, job);
    expect(blocked.weight).toBe('bad');
    expect(blocked.more.join(' ')).toMatch(/Lacks 4.* mm.*0\.50 % strain.*What helps: a seam/);
  });
  it('says that nothing bounds a side panel under open sky', () => {
    const { more } = wayWords({ ...straight, panel: 'left', clearance: null, tightest: null }, job);
    expect(more).toEqual(['Nothing bounds it: no ceiling or header is given.']);
  });
});

describe('passageWords', () => {
  const passage: Passage = { place: 'door', passes: true, clearance: 30, sd: 0.4, edge: 'long', lean: 0 };
  it('tells how it is held and what is to spare, with its ±', () => {
    expect(passageWords(passage, job)).toMatch(/^passes on its long edge: 30.* mm ±0\.8 mm to spare$/);
    expect(passageWords({ ...passage, lean: 21.4 }, job)).toContain('leaned 21°');
    expect(passageWords({ ...passage, passes: false, clearance: -12 }, job)).toMatch(
      /^does not pass: lacks 12.* mm ±0\.8 mm$/,
    );
  });
});
