import { describe, expect, it } from 'vitest';
import { type PanelName, panelEdges } from '../../../../src/core/panel';
import { alcoveOf, alcoveWith, expectDerivatives, skewedParameters } from '../skewedAlcove';
import { FIT, jobOf } from './fitting';

const job = jobOf();
const edges = (values: Record<string, number>, panel: PanelName, of = job) => panelEdges(alcoveOf(values), of, panel);

describe('edges of the back panel', () => {
  it('stop the joint short of the side walls, at the tighter face', () => {
    for (const s of [0.1, -0.1]) {
      // faces at z = 2 and 8
      const { lower, upper } = edges({ 'left.square': s, 'right.square': s }, 'back');
      expect(lower.at(300).value).toBeCloseTo(Math.max(-760 + 2 * s, -760 + 8 * s) + 2, 10);
      expect(upper.at(300).value).toBeCloseTo(Math.min(760 + 2 * s, 760 + 8 * s) - 2, 10);
    }
  });

  it('follow the side walls where the back wall carries the panel', () => {
    // back z = t x y, left x = −760 + s z: u = −760 + s (t u y + 8) + 2
    const [s, t, y] = [0.1, 2e-5, 900];
    const { lower } = edges({ 'left.square': s, 'back.twist': t }, 'back');
    expect(lower.at(y).value).toBeCloseTo((-758 + 8 * s) / (1 - s * t * y), 9);
  });

  it('lean with the side walls: 1 in 100', () => {
    const { lower, upper } = edges({ 'left.plumb': 0.01, 'right.plumb': 0.01 }, 'back');
    expect(lower.at(900).value - lower.at(-100).value).toBeCloseTo(10, 10);
    expect(upper.at(900).value - upper.at(-100).value).toBeCloseTo(10, 10);
  });

  it('stand the rim joint over the rim, at the higher face', () => {
    for (const k of [0.05, -0.05]) {
      const { bottom } = edges({ 'rim.levelAcross': k }, 'back');
      expect(bottom(300).value).toBeCloseTo(Math.max(-740 + 2 * k, -740 + 8 * k) + 3, 10);
    }
    // on a leaning back wall: v = −740 + k (p v + 8) + 3
    const { bottom } = edges({ 'rim.levelAcross': 0.05, 'back.plumb': 0.02 }, 'back');
    expect(bottom(300).value).toBeCloseTo((-737 + 8 * 0.05) / (1 - 0.05 * 0.02), 10);
    expect(edges({ 'rim.levelAlong': 0.01 }, 'back').bottom(300).value).toBeCloseTo(-734, 10);
  });

  it('end level at the top', () => {
    expect(edges({ 'rim.levelAlong': 0.01 }, 'back').top(300)).toEqual({ value: 980, gradient: null });
  });
});

describe('edges of a side panel', () => {
  it('stop the joint short of the back panel, at the tighter face', () => {
    const t = 2e-5; // back z = t x y
    for (const y of [900, -700]) {
      const left = Math.max(t * y * -758, t * y * -752);
      const right = Math.max(t * y * 758, t * y * 752);
      expect(edges({ 'back.twist': t }, 'left').lower.at(y).value).toBeCloseTo(left + 8 + 2, 10);
      expect(edges({ 'back.twist': t }, 'right').lower.at(y).value).toBeCloseTo(right + 8 + 2, 10);
    }
  });

  it('follow the back wall where the side wall carries the panel', () => {
    // right wall x = 760 + s z, faces at −2 and −8; back z = t x y with t y < 0: the inner face is tighter
    const [s, t, y] = [0.1, 2e-5, -700];
    const { lower } = edges({ 'right.square': s, 'back.twist': t }, 'right');
    expect(lower.at(y).value).toBeCloseTo((t * y * 752 + 10) / (1 - t * y * s), 9);
  });

  it('end the set-back short of the front edge', () => {
    const { upper } = edges({ 'front.left.plumb': 0.02 }, 'left');
    expect(upper.name).toBe('front');
    expect(upper.at(500).value).toBeCloseTo(760 + 10 - FIT.frontSetBack, 10);
  });

  it('stand the rim joint over the rim, at the higher face', () => {
    for (const a of [0.02, -0.02]) {
      const along = { 'rim.levelAlong': a };
      expect(edges(along, 'left').bottom(400).value).toBeCloseTo(Math.max(a * -758, a * -752) - 737, 10);
      expect(edges(along, 'right').bottom(400).value).toBeCloseTo(Math.max(a * 758, a * 752) - 737, 10);
    }
  });

  it('follow the contour of the rim at the apron', () => {
    const { bottom, bottomKinks } = edges(
      {},
      'left',
      jobOf({
        rim: {
          profile: [
            [0, 0],
            [20, -4],
            [30, -24],
          ],
        },
      }),
    );
    expect(bottomKinks).toEqual([730, 750, 760]);
    expect([700, 730, 740, 750, 755, 760, 800].map((z) => bottom(z).value)).toEqual(
      [0, 0, -2, -4, -14, -24, -24].map((rise) => expect.closeTo(rise - 737, 10)),
    );
  });
});

describe('edges in skewed alcoves', () => {
  const curved = jobOf({
    rim: {
      profile: [
        [0, 0],
        [60, -4],
        [90, -30],
      ],
    },
    fit: { thickness: 12, bed: 4 },
  });

  it.each(['back', 'left', 'right'] as const)('of the %s panel carry their derivatives', (panel) => {
    for (let seed = 1; seed <= 6; seed++) {
      const parameters = skewedParameters(seed);
      const of = (
        pick: (edges: ReturnType<typeof panelEdges>) => ReturnType<ReturnType<typeof panelEdges>['top']>,
        hint: string,
      ) =>
        expectDerivatives((alcove) => pick(panelEdges(alcove, curved, panel)), parameters, `${panel} ${seed} ${hint}`);
      for (const height of [-650, 120, 980]) {
        expect(of(({ lower }) => lower.at(height), `lower ${height}`)).toBe(10);
        expect(of(({ upper }) => upper.at(height), `upper ${height}`)).toBe(panel === 'back' ? 10 : 2);
      }
      for (const u of panel === 'back' ? [-600, 10, 650] : [40, 400, 715]) {
        expect(of(({ bottom }) => bottom(u), `bottom ${u}`)).toBeGreaterThanOrEqual(panel === 'back' ? 8 : 11);
      }
    }
  });

  it('clear both faces, and touch at one', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const alcove = alcoveWith(skewedParameters(seed));
      const { fit } = job;
      for (const y of [-600, 0, 900]) {
        const { lower, upper } = panelEdges(alcove, job, 'back');
        const [left, right] = [lower.at(y).value, upper.at(y).value];
        const clear = [fit.bed, fit.bed + fit.thickness].map((face) => ({
          left: left - alcove.left.value(alcove.back.value(left, y) + face, y),
          right: alcove.right.value(alcove.back.value(right, y) + face, y) - right,
        }));
        expect(Math.min(...clear.map((each) => each.left))).toBeCloseTo(fit.cornerJoint, 9);
        expect(Math.min(...clear.map((each) => each.right))).toBeCloseTo(fit.cornerJoint, 9);
      }
    }
  });
});
