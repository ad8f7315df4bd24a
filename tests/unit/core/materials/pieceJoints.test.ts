import { describe, expect, it } from 'vitest';
import { box, DEPTH, HALF, solved } from '../../../reference/box';

const FACE = 2 + 6;
const fit = { bed: 2, thickness: 6, cornerJoint: 2, rimJoint: 3, top: 900 };
const shelves = [{ id: 'soap', corner: 'right' as const, aboveRim: 500, gap: 3 }];
const { result } = solved(box({}), { fit, shelves });
const joints = new Map(result.materials.joints.map((joint) => [joint.id, joint]));

describe('joints of trim in a true box', () => {
  it('are sealant on the panel and paintable caulk at the wall', () => {
    for (const id of ['trim.top', 'trim.left.top', 'trim.right.vertical']) {
      expect(joints.get(`${id}.panel`)?.filler).toBe('sealant');
      expect(joints.get(`${id}.wall`)?.filler).toBe('caulk');
    }
  });
  it('lie where the trim lies: the wall side above, or further out', () => {
    const v = (id: string) => joints.get(id)!.path.map(([, at]) => at);
    for (const at of v('trim.top.panel')) expect(at).toBeCloseTo(900 + 12 - 38, 2);
    for (const at of v('trim.top.wall')) expect(at).toBeCloseTo(900 + 12, 2);
    for (const side of ['left', 'right']) {
      for (const [u] of joints.get(`trim.${side}.vertical.wall`)!.path) expect(u).toBeCloseTo(DEPTH, 1);
      for (const [u] of joints.get(`trim.${side}.vertical.panel`)!.path) expect(u).toBeCloseTo(DEPTH - 38, 1);
    }
  });
  it('stand instead of those of the edges that the trim covers', () => {
    expect([...joints.keys()].filter((id) => id.startsWith('top.') || id.startsWith('front.'))).toEqual([]);
    const bare = solved(box({}), { fit, trim: { top: false, sideTops: false, verticals: false } }).result;
    const ids = bare.materials.joints.map(({ id }) => id);
    for (const id of ['top.back', 'top.left', 'front.left', 'front.right']) expect(ids).toContain(id);
    expect(ids.some((id) => id.startsWith('trim.'))).toBe(false);
  });
});

describe('joints of a shelf', () => {
  it('are sealant to both panels, as wide as its gap and what its fall adds', () => {
    for (const wall of ['back', 'right'] as const) {
      const joint = joints.get(`shelves.soap.${wall}`)!;
      expect(joint.filler).toBe('sealant');
      for (const [, width] of joint.widths) expect(Math.abs(width - 3)).toBeLessThan(0.3);
    }
    const [u] = joints.get('shelves.soap.back')!.path[0]!;
    expect(u).toBeCloseTo(HALF - FACE, 0);
  });
  it('bring brackets, and screws for each', () => {
    const count = (id: string) => result.materials.lines.find((line) => line.id === id)?.quantity;
    expect([count('shelf-brackets'), count('screws')]).toEqual([2, 4]);
  });
});

describe('width that movement asks for', () => {
  it('follows for a shelf from how far it stands out from the panel', () => {
    const [back, side] = ['shelves.soap.back', 'shelves.soap.right'].map((id) => joints.get(id)!);
    const perLength = 14e-6 * 15 + 7.2e-6 * 20;
    expect(back!.moves!.most).toBeCloseTo(side!.length * perLength, 4);
    expect(side!.moves!.most).toBeCloseTo(back!.length * perLength, 4);
  });
  it('follows from the panel beside the joint', () => {
    // 16e-6 of the wall against 30e-6 of the sheet over 15 K, 7.2e-6 of the wall over 20 % RH against none, and a sealant
    // that moves a quarter of its width
    const depth = DEPTH - FACE - 2;
    const moves = depth * (14e-6 * 15 + 7.2e-6 * 20);
    const corner = joints.get('corner.left')!;
    expect(corner.wants).toBeCloseTo(moves / 0.25, 2);
    expect(corner.moves!.most).toBeCloseTo(moves, 2);
    expect(corner.moves!.used).toBeCloseTo(moves / corner.moves!.width / 0.25, 2);
    expect(joints.get('trim.top.panel')!.moves).toBeNull();
    expect(joints.get('trim.top.panel')!.wants).toBeNull();
  });
});
