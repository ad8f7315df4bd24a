import { describe, expect, it } from 'vitest';
import { type LooseTag, placeTags } from '../../../../src/views/site/elevation/tags';

const area = { width: 400, height: 400 };
const level = (key: string, y: number, width = 60): LooseTag => ({
  key,
  from: [20, y],
  to: [380, y],
  width,
  best: 0.5,
});

describe('placeTags', () => {
  it('puts a lone tag on its line where it lies best', () => {
    const [tag] = placeTags([level('a', 200)], area);
    expect(tag).toMatchObject({ key: 'a', x: 200, y: 200 });
  });

  it('keeps tags of one line apart, each on it', () => {
    const tags = placeTags(
      ['a', 'b', 'c', 'd'].map((key) => level(key, 200)),
      area,
    );
    const xs = tags.map(({ x }) => x).sort((a, b) => a - b);
    for (let i = 1; i < xs.length; i++) expect(xs[i]! - xs[i - 1]!).toBeGreaterThanOrEqual(60);
    expect(tags.every(({ y }) => y === 200)).toBe(true);
  });

  it('leads tags beside a line that has no room, none over another', () => {
    const width = 100;
    const tags = placeTags(
      Array.from({ length: 12 }, (_, i) => level(`t${i}`, 200, width)),
      area,
    );
    for (const [i, a] of tags.entries()) {
      for (const b of tags.slice(i + 1)) {
        expect(Math.abs(a.x - b.x) >= width || Math.abs(a.y - b.y) >= 24).toBe(true);
      }
    }
    expect(tags.every(({ foot }) => foot[1] === 200)).toBe(true);
  });

  it('stays on the paper', () => {
    const corner: LooseTag = { key: 'c', from: [395, 398], to: [395, 398], width: 80, best: 0.5 };
    expect(placeTags([corner], area)[0]).toMatchObject({ x: 360, y: 378 });
  });

  it('keeps off what is to be kept free, along its line or beside it', () => {
    const name = { x: 210, y: 200, width: 70, height: 14 };
    const [tag] = placeTags([level('a', 200)], area, [name]);
    expect(Math.abs(tag!.x - name.x) >= (60 + name.width) / 2 || Math.abs(tag!.y - name.y) >= 22).toBe(true);
    expect(tag!.foot[1]).toBe(200);
    const wide = { ...name, x: 200, width: 400 };
    const [beside] = placeTags([level('a', 200)], area, [wide]);
    expect(Math.abs(beside!.y - wide.y)).toBeGreaterThanOrEqual(22);
  });
});
