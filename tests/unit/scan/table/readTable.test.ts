import type { BufferGeometry } from 'three';
import { XYZLoader } from 'three/examples/jsm/loaders/XYZLoader.js';
import { describe, expect, it } from 'vitest';
import { coordinates, fileOf, messageOf, samplePoints, scanIn } from '../scanFile';

const points = samplePoints(1200);
const text = (row: (point: readonly number[], i: number) => string, head: readonly string[] = [], newline = '\n') =>
  [...head, ...points.map(row), ''].join(newline);

/** What three's loader makes of the same text; its types know nothing of what it gives. */
function byThree(given: string): number[] {
  const parse = new XYZLoader().parse as (text: string) => unknown;
  return Array.from((parse(given) as BufferGeometry).getAttribute('position').array);
}

describe('a text of points', () => {
  it('gives the points that three gives', async () => {
    const given = text((point) => point.join(' '));
    const scan = await scanIn(fileOf('a.xyz', given));
    expect(coordinates(scan)).toEqual(byThree(given));
    expect(scan.table).toMatchObject({
      separator: 'blank',
      decimal: 'point',
      columns: [0, 1, 2],
      names: null,
      width: 3,
    });
  });

  it('leaves out a point that a slip in an exponent puts further away than any place, and counts it', async () => {
    const given = text((point, i) => (i === 40 ? `${point[0]} ${point[1]} 0.96e75` : point.join(' ')));
    const scan = await scanIn(fileOf('a.xyz', given));
    expect(scan.unread).toBe(1);
    expect(scan.positions).toHaveLength(3 * (points.length - 1));
    expect(scan.positions.every(Number.isFinite)).toBe(true);
  });

  it.each([
    ['comma', ','],
    ['semicolon', ';'],
    ['tab', '\t'],
    ['bar', ' | '],
    ['blank', '   '],
  ])('tells by itself that its separator is a %s', async (separator, mark) => {
    const scan = await scanIn(
      fileOf(
        'a.csv',
        text((point) => [...point, 17, 255].join(mark), [], '\r\n'),
      ),
    );
    expect(scan.table).toMatchObject({ separator, width: 5 });
    expect(coordinates(scan)).toEqual(points.flat());
  });

  it('reads commas as decimal marks where another mark parts the fields', async () => {
    const scan = await scanIn(
      fileOf(
        'a.csv',
        text((point) => point.map((v) => String(v).replace('.', ',')).join(';')),
      ),
    );
    expect(scan.table).toMatchObject({ separator: 'semicolon', decimal: 'comma' });
    expect(coordinates(scan)).toEqual(points.flat());
  });

  it('finds the columns by their names, and the unit in them', async () => {
    const head = ['# exported in May', '', 'id,Z [mm],X [mm],Y [mm]'];
    const scan = await scanIn(
      fileOf(
        'a.csv',
        text(([x, y, z], i) => [i, z, x, y].join(','), head),
      ),
    );
    expect(scan.table).toMatchObject({ names: ['id', 'Z [mm]', 'X [mm]', 'Y [mm]'], columns: [2, 3, 1] });
    expect(scan.unit).toBe(1);
    expect(coordinates(scan)).toEqual(points.flat());
  });

  it('finds names in a remark', async () => {
    const scan = await scanIn(
      fileOf(
        'a.txt',
        text(([x, y, z]) => `9 ${x} ${y} ${z}`, ['//i x y z']),
      ),
    );
    expect(coordinates(scan)).toEqual(points.flat());
  });

  it('passes over a count, remarks and empty lines, and counts lines that are no points', async () => {
    const rows = text((point) => point.join(' ')).split('\n');
    rows.splice(600, 0, '', '# half', 'nan nan nan', '1 2');
    const scan = await scanIn(fileOf('a.pts', ['1200', ...rows].join('\n')));
    expect(coordinates(scan)).toEqual(points.flat());
    expect(scan.unread).toBe(2);
  });

  it('takes the columns that the person names', async () => {
    const given = text(([x, y, z]) => [5, x, y, z].join(' '));
    const table = { separator: 'blank', decimal: 'point', columns: [1, 2, 3] } as const;
    const scan = await scanIn(fileOf('a.xyz', given), { table: { ...table, columns: [1, 2, 3] } });
    expect(coordinates(scan)).toEqual(points.flat());
    expect(scan.table!.columns).toEqual([1, 2, 3]);
  });

  it.each([
    ['hello\nthere\n', /No line of a\.txt up to line 2 holds three numbers/],
    [new Uint8Array([1, 0, 0, 5, 0, 9, 77, 0]), /no text with a point per line, but a binary file/],
    [new Uint8Array([0xff, 0xfe, 49, 0]), /saved as UTF-16/],
    ['1 2 3\n4 5 6\n', /holds only 2 usable points; an alcove takes at least 1,000/],
  ])('says what is wrong with %j', async (given, expected) => {
    expect(await messageOf(fileOf('a.txt', given))).toMatch(expected);
  });

  it('stops at a file that is mostly something else, and names the line', async () => {
    const rows = text((point) => point.join(' ')).split('\n');
    const chatter = Array.from({ length: 900 }, (_, i) => `entry ${i} of the log`);
    expect(await messageOf(fileOf('a.txt', [...rows.slice(0, 1100), ...chatter].join('\n')))).toMatch(
      /^900 lines of a\.txt are no points, the first is line 1,101 \("entry 0 of the log"\)/,
    );
  });
});
