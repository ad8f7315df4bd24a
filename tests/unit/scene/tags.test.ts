import { describe, expect, it } from 'vitest';
import { drawnAlcove } from '../../../src/scene/geometry';
import { arranged, type TagBox } from '../../../src/scene/tags/arrange';
import { tagsOf } from '../../../src/scene/tags/tag';
import { solvedDemo } from './solvedDemo';

const all = { walls: true, panels: true, slivers: true, trim: true, legs: true, shelves: true };
const frame = { width: 400, height: 300 };
const box = (x: number, y: number): TagBox => ({ x, y, width: 80, height: 20 });

describe('arranged', () => {
  it('moves a tag off one that came before it', () => {
    const [first, second] = arranged([box(100, 100), box(110, 105)], frame);
    expect(first).toEqual(box(100, 100));
    expect(Math.abs(second!.y - first!.y)).toBeGreaterThanOrEqual(20);
  });

  it('keeps tags in the frame and drops what has no room', () => {
    expect(arranged([box(2, 100)], frame)[0]!.x).toBeGreaterThanOrEqual(40);
    const crowd = arranged(
      Array.from({ length: 9 }, () => box(200, 150)),
      frame,
    );
    expect(crowd.filter((each) => each !== null)).toHaveLength(5);
  });

  it('keeps tags off what is in the way', () => {
    const handle = { x: 120, y: 104, width: 44, height: 44 };
    const [tag, far] = arranged([box(100, 100), box(300, 100)], frame, [handle]);
    expect(Math.abs(tag!.y - handle.y)).toBeGreaterThanOrEqual((20 + 44) / 2);
    expect(far).toEqual(box(300, 100));
  });

  it('leaves out what is not in view', () => {
    expect(arranged([null, box(50, 50)], frame)[0]).toBeNull();
  });
});

describe('tagsOf', () => {
  const { job, result } = solvedDemo();
  const drawn = drawnAlcove(result, job, 5, 0);
  const text = (mm: number) => mm.toFixed(1);

  it('names each sliver with its true width whatever the exaggeration', () => {
    const words = tagsOf(drawn, 'right', all, text).map((tag) => tag.text);
    const true1 = tagsOf(drawnAlcove(result, job, 1, 0), 'right', all, text).map((tag) => tag.text);
    expect(words.filter((each) => each.startsWith('sliver')).length).toBeGreaterThan(0);
    expect(words).toEqual(true1);
  });

  it('tells of gaps first, and of the picked panel alone', () => {
    const short = solvedDemo((whole) => ({
      ...whole,
      sheets: { ...whole.sheets, back: { width: 1200, height: 2440, grain: 'none' } },
    }));
    const tags = tagsOf(drawnAlcove(short.result, short.job, 5, 0), null, all, text);
    expect(tags[0]!.kind).toBe('gap');
    expect(tagsOf(drawn, 'left', all, text).every(({ key }) => key.startsWith('left') || key.endsWith('line'))).toBe(
      true,
    );
    const shelf = tagsOf(drawn, 'shelves.low', all, text)[0]!;
    expect(shelf.text).toBe('shelf low');
    expect(shelf.at[0]).toBeLessThan(0);
    expect(tagsOf(drawn, 'shelves.low', { ...all, shelves: false }, text).map(({ kind }) => kind)).not.toContain(
      'piece',
    );
    expect(
      tagsOf(drawn, null, { ...all, panels: false }, text)
        .map(({ text: words }) => words)
        .sort(),
    ).toEqual(['level line', 'plumb line']);
  });
});
