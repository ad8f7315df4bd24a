import { describe, expect, it } from 'vitest';
import { sampleEdge } from '../../../../src/core/panel';

const sampled = (f: (x: number) => number, from: number, to: number, kinks: number[] = []) =>
  sampleEdge((along) => ({ value: f(along), gradient: null }), from, to, kinks);

/** Largest distance between a function and the straight joins of its samples. */
function misfit(f: (x: number) => number, samples: { along: number; at: number }[]): number {
  let worst = 0;
  for (let i = 1; i < samples.length; i++) {
    const [a, b] = [samples[i - 1]!, samples[i]!];
    for (let k = 1; k < 20; k++) {
      const along = a.along + ((b.along - a.along) * k) / 20;
      worst = Math.max(worst, Math.abs(f(along) - (a.at + ((b.at - a.at) * k) / 20)));
    }
  }
  return worst;
}

describe('sampleEdge', () => {
  it('keeps straight joins within 0.05 mm of strong bows', () => {
    for (const f of [
      (x: number) => 4e-4 * x * x, // 300 mm deep over 1.7 m
      (x: number) => 12 * Math.sin(x / 60),
      (x: number) => 40 * Math.exp(-(((x - 130) / 45) ** 2)),
    ]) {
      expect(misfit(f, sampled(f, -740, 980))).toBeLessThan(0.05);
    }
  });

  it('keeps to a wave that crosses a first piece in its very middle', () => {
    const middle = -740 + 1720 / 32;
    const wave = (x: number): number => 3 * Math.sin(((x - middle) * 2 * Math.PI) / 400);
    expect(misfit(wave, sampled(wave, -740, 980))).toBeLessThan(0.05);
  });

  it('takes both ends, in order, no place twice', () => {
    const samples = sampled((x) => 1e-4 * x * x, -740, 980);
    expect([samples[0]!.along, samples.at(-1)!.along]).toEqual([-740, 980]);
    for (let i = 1; i < samples.length; i++) expect(samples[i]!.along).toBeGreaterThan(samples[i - 1]!.along);
    expect(samples.every(({ along, at }) => at === 1e-4 * along * along)).toBe(true);
  });

  it('runs backwards as well', () => {
    const forth = sampled((x) => 1e-4 * x * x, -740, 980, [7, 500]);
    const back = sampled((x) => 1e-4 * x * x, 980, -740, [7, 500]);
    expect(back.map(({ along }) => along)).toEqual(forth.map(({ along }) => expect.closeTo(along, 9)).reverse());
  });

  it('takes the kinks within its range', () => {
    const step = (x: number): number => (x < 731 ? 0 : Math.max(-20, (731 - x) * 100));
    const samples = sampled(step, 10, 760, [-5, 731, 731.2, 900]);
    const places = samples.map(({ along }) => along);
    expect(places).toContain(731);
    expect(places).toContain(731.2);
    expect(places).not.toContain(-5);
    expect(places).not.toContain(900);
    expect(misfit(step, samples)).toBeLessThan(1e-6);
  });

  it('has few samples on a straight edge', () => {
    expect(sampled((x) => 0.02 * x, -740, 980)).toHaveLength(17);
  });
});
