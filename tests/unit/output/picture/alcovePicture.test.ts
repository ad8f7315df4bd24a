import { describe, expect, it } from 'vitest';
import { alcovePicture } from '../../../../src/output';
import { solvedDemo } from '../../scene/solvedDemo';

const { job, result } = solvedDemo();
const picture = alcovePicture(job, result);
const box = (points: readonly [number, number][]) => ({
  left: Math.min(...points.map(([x]) => x)),
  right: Math.max(...points.map(([x]) => x)),
  top: Math.min(...points.map(([, y]) => y)),
  bottom: Math.max(...points.map(([, y]) => y)),
});
/** The back panel is painted in the finish's own colour, in full light. */
const backPanel = picture.faces.find(({ fill }) => fill === job.finish.colour)!;

describe('alcovePicture', () => {
  it('shows the whole of the back panel, upright, about as broad as it is by its height', () => {
    const { left, right, top, bottom } = box(backPanel.points);
    expect(left).toBeGreaterThan(0);
    expect(right).toBeLessThan(picture.width);
    expect(top).toBeGreaterThan(0);
    expect(bottom).toBeLessThan(picture.height);
    const { outline } = result.panels.back;
    const [us, vs] = [outline.map(([u]) => u), outline.map(([, v]) => v)];
    const shape = (Math.max(...us) - Math.min(...us)) / (Math.max(...vs) - Math.min(...vs));
    expect((right - left) / (bottom - top)).toBeCloseTo(shape, 1);
  });

  it('follows the colours of the finish', () => {
    const red = { ...job, finish: { ...job.finish, colour: '#aa2211', trim: '#102030' } };
    const fills = alcovePicture(red, result).faces.map(({ fill }) => fill);
    expect(fills).toContain('#aa2211');
    expect(fills).toContain('#102030');
    expect(picture.faces.map(({ fill }) => fill)).not.toContain('#aa2211');
  });

  it('has a face for every piece of trim, shelf and leg', () => {
    const bare = { ...result, pieces: { trim: [], legs: [], fillers: [], shelves: [] } };
    const { trim, legs, shelves } = result.pieces;
    const without = alcovePicture(job, bare as never).faces.length;
    expect(picture.faces.length - without).toBe(trim.length + legs.length + shelves.length);
  });

  it('holds finite numbers and colours only', () => {
    for (const { points, fill } of picture.faces) {
      expect(fill).toMatch(/^#[0-9a-f]{6}$/);
      expect(points.flat().every(Number.isFinite)).toBe(true);
    }
  });
});
