import { describe, expect, it } from 'vitest';
import { dimensionsOf } from '../../../../../src/scene/client/geometry';
import { alcoveShape } from '../../../../../src/scene/geometry';
import { solvedDemo } from '../../solvedDemo';

const { job, result } = solvedDemo();
const dimensions = dimensionsOf(alcoveShape(result), result, job);
const of = (key: string) => dimensions.find((each) => each.key === key)!;

describe('dimensionsOf', () => {
  it('tells the width at the top as the outline of the back panel has it', () => {
    const { outline } = result.panels.back;
    const v = Math.max(...outline.map(([, y]) => y)) - 60;
    const crossings = outline.flatMap(([u, y], i): number[] => {
      const [next, nextY] = outline[(i + 1) % outline.length]!;
      return (y - v) * (nextY - v) < 0 ? [u + ((next - u) * (v - y)) / (nextY - y)] : [];
    });
    expect(crossings).toHaveLength(2);
    // Marks are joined by straight cuts that keep within the mark tolerance at either edge.
    const width = Math.abs(crossings[0]! - crossings[1]!);
    expect(Math.abs(of('width at the top').value - width)).toBeLessThan(2 * job.fit.markTolerance);
  });

  it('is drawn as long as it says, to what the walls bend', () => {
    for (const { from, to, value } of dimensions) {
      const drawn = Math.hypot(...from.map((each, i) => each - to[i]!));
      expect(Math.abs(drawn - value)).toBeLessThan(3);
    }
  });

  it('has a ± of its own for every length', () => {
    expect(dimensions.map(({ key }) => key)).toEqual([
      'width at the top',
      'width over the rim',
      'height',
      'left',
      'right',
    ]);
    for (const { sd } of dimensions) {
      expect(sd).toBeGreaterThan(0.05);
      expect(sd).toBeLessThan(10);
    }
  });
});
