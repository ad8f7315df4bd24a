import { PLYLoader } from 'three/examples/jsm/loaders/PLYLoader.js';
import { describe, expect, it } from 'vitest';
import { coordinates, fileOf, messageOf, samplePoints, scanIn } from '../scanFile';
import { type Encoding, type PlyPart, plyFile, pointsPart } from './plyFile';

const encodings: Encoding[] = ['ascii', 'binary_little_endian', 'binary_big_endian'];
const points = samplePoints(1500);

/** What three's loader makes of the same bytes. */
function byThree(bytes: Uint8Array<ArrayBuffer>): number[] {
  return Array.from(new PLYLoader().parse(bytes.buffer).getAttribute('position').array);
}

const withExtras: PlyPart = {
  name: 'vertex',
  properties: [
    { name: 'red', type: 'uchar' },
    { name: 'x', type: 'double' },
    { name: 'intensity', type: 'ushort' },
    { name: 'z', type: 'double' },
    { name: 'y', type: 'double' },
    { name: 'ring', type: 'char' },
  ],
  items: points.map(([x, y, z], i) => [i % 256, x, i, z, y, -(i % 100)]),
};

describe.each(encodings)('a PLY file, %s', (encoding) => {
  it('gives the points that three gives', async () => {
    const bytes = plyFile(encoding, [pointsPart(points)]);
    const scan = await scanIn(fileOf('a.ply', bytes));
    expect(coordinates(scan)).toEqual(byThree(bytes));
    expect(scan).toMatchObject({ format: 'PLY', seen: 1500, unread: 0, cube: null, mesh: null, up: null });
  });

  it('passes over what else a point carries', async () => {
    const bytes = plyFile(encoding, [withExtras]);
    const scan = await scanIn(fileOf('a.ply', bytes));
    expect(coordinates(scan)).toEqual(points.flat());
    expect(coordinates(scan)).toEqual(byThree(bytes));
  });

  it('reads points that carry a list, and elements before them', async () => {
    const station: PlyPart = {
      name: 'station',
      properties: [
        { name: 'id', type: 'int' },
        { name: 'seen', type: 'uint', list: 'uchar' },
      ],
      items: [
        [7, [1, 2, 3]],
        [8, []],
      ],
    };
    const vertex: PlyPart = {
      name: 'vertex',
      properties: [
        { name: 'x', type: 'float' },
        { name: 'views', type: 'short', list: 'uchar' },
        { name: 'y', type: 'float' },
        { name: 'z', type: 'float' },
      ],
      items: points.map(([x, y, z], i) => [x, Array.from({ length: i % 4 }, (_, k) => -k), y, z]),
    };
    const scan = await scanIn(fileOf('a.ply', plyFile(encoding, [station, vertex])));
    expect(coordinates(scan)).toEqual(points.flat());
  });

  it('loses nothing of the points to a stray far away that comes first, or to a surveyor’s grid', async () => {
    const grid = [4_412_700.125, 583_200.5, 312.25] as const;
    const moved = points.map(([x, y, z]): [number, number, number] => [x + grid[0], y + grid[1], z + grid[2]]);
    const doubles: PlyPart = {
      name: 'vertex',
      properties: ['x', 'y', 'z'].map((name) => ({ name, type: 'double' as const })),
      items: [[-6e6, 2e6, 9e5], ...moved],
    };
    const scan = await scanIn(fileOf('a.ply', plyFile(encoding, [doubles])));
    const read = coordinates(scan);
    expect(read).toHaveLength(3 * (points.length + 1));
    const off = moved.flat().map((value, i) => Math.abs(read[i + 3]! - value));
    expect(Math.max(...off)).toBeLessThan(1e-6);
  });

  it('takes points on the faces of a mesh, as densely on large ones as on small ones', async () => {
    const mesh: PlyPart[] = [
      pointsPart([
        [0, 0, 1],
        [2, 0, 1],
        [2, 1, 1],
        [0, 1, 1],
      ]),
      {
        name: 'face',
        properties: [{ name: 'vertex_indices', type: 'int', list: 'uchar' }],
        items: [[[0, 1, 2, 3]]],
      },
    ];
    const scan = await scanIn(fileOf('a.ply', plyFile(encoding, mesh)));
    expect(scan.mesh).toEqual({ triangles: 2 });
    const made = coordinates(scan);
    const quarter = (from: number) => made.filter((x, at) => at % 3 === 0 && x >= from && x < from + 0.5).length;
    for (const from of [0, 0.5, 1, 1.5]) expect(quarter(from) / (made.length / 3)).toBeCloseTo(0.25, 2);
    const within = (value: number | undefined, most: number) => value! >= -1e-6 && value! <= most + 1e-6;
    const inside = ([x, y, z]: readonly number[]) => within(x, 2) && within(y, 1) && z === 1;
    expect(Array.from({ length: made.length / 3 }, (_, i) => made.slice(3 * i, 3 * i + 3)).every(inside)).toBe(true);
  });

  it('says where the file ends too early', async () => {
    const bytes = plyFile(encoding, [pointsPart(points)]);
    const message = await messageOf(fileOf('hall.ply', bytes.slice(0, bytes.length - 40)));
    expect(message).toMatch(/^hall\.ply ends too early.*1,500.*Copy the file again/);
  });

  it('counts points that are no numbers, and those at zero', async () => {
    const broken = [...points, [Number.NaN, 1, 2], [1, Number.POSITIVE_INFINITY, 2], [0, 0, 0]];
    const scan = await scanIn(fileOf('a.ply', plyFile(encoding, [pointsPart(broken)])));
    expect(coordinates(scan)).toEqual(points.flat());
    expect(scan).toMatchObject({ unread: 2, atZero: 1 });
  });
});

describe('a PLY file', () => {
  const triangles: PlyPart = {
    name: 'face',
    properties: [{ name: 'vertex_indices', type: 'int', list: 'int' }],
    items: points.slice(2).map((_, i) => [[i, i + 1, i + 2]]),
  };
  const meshBytes = () => plyFile('binary_little_endian', [pointsPart(points), triangles]);
  const faceBytes = 16 * triangles.items.length;

  it('says in which item and at which byte a list claims what no list holds', async () => {
    const bytes = meshBytes();
    const at = bytes.length - faceBytes + 7 * 16;
    new DataView(bytes.buffer).setInt32(at, 2_000_000, true);
    expect(await messageOf(fileOf('a.ply', bytes))).toBe(
      `a.ply is damaged in item 8 "face" at byte ${(at + 1).toLocaleString('en')}: its list "vertex_indices" claims to hold 2,000,000 values. Copy the file again from the scanner.`,
    );
  });

  it('says in which item and at which byte it ends in the middle of a list', async () => {
    const bytes = meshBytes();
    const { length } = triangles.items;
    const at = bytes.length - 2 * 16;
    expect(await messageOf(fileOf('a.ply', bytes.slice(0, -20)))).toMatch(
      `a.ply ends too early, in item ${(length - 1).toLocaleString('en')} "face" at byte ${(at + 1).toLocaleString('en')}: 2 of`,
    );
  });

  it('keeps tenths of a millimetre far from zero', async () => {
    const far = points.map(([x, y, z]) => [x + 651_234.5, y + 5_412_345.25, z + 412]);
    const flat = far.flat();
    const bytes = plyFile('binary_little_endian', [pointsPart(far, 'double')]);
    const made = coordinates(await scanIn(fileOf('a.ply', bytes)));
    expect(Math.max(...made.map((value, at) => Math.abs(value - flat[at]!)))).toBeLessThan(1e-6);
  });

  it('reads lines that end with CR LF', async () => {
    const bytes = plyFile('ascii', [pointsPart(points)], { newline: '\r\n' });
    expect(coordinates(await scanIn(fileOf('a.ply', bytes)))).toEqual(points.flat());
  });

  it.each([
    ['Z up', '+z'],
    ['up axis: -y', '-y'],
    ['made on a rainy day', null],
  ])('takes from the remark "%s" that up is %s', async (comment, up) => {
    const scan = await scanIn(fileOf('a.ply', plyFile('ascii', [pointsPart(points)], { comment })));
    expect(scan.up).toBe(up);
  });

  it.each([
    ['ply\nformat ascii 1.0\nelement vertex 3\n', /head of a\.ply has no end: no line up to line 3 is "end_header"/],
    [
      'ply\nelement vertex 3\nend_header\n',
      /Line 2 in the head of a\.ply \("element vertex 3"\) should name the format/,
    ],
    ['ply\nformat ebcdic 1.0\nend_header\n', /Line 2 in the head of a\.ply \("format ebcdic 1\.0"\) names a format/],
    ['ply\nformat ascii 1.0\nelement vertex lots\nend_header\n', /Line 3 .* gives no count/],
    ['ply\nformat ascii 1.0\nelement vertex 3\nproperty quad x\nend_header\n', /Line 4 .* names a type/],
    ['ply\nformat ascii 1.0\nproperty float x\nend_header\n', /Line 3 .* before any element/],
    ['ply\nformat ascii 1.0\nelement face 0\nend_header\n', /no element "vertex"/],
    [
      'ply\nformat ascii 1.0\nelement vertex 1\nproperty float x\nproperty float y\nend_header\n1 2\n',
      /The element "vertex" of a\.ply has no z/,
    ],
    ['PLY?', /does not begin with the line "ply"/],
  ])('says what is wrong with %j', async (text, expected) => {
    expect(await messageOf(fileOf('a.ply', text))).toMatch(expected);
  });

  it('names the line of a point that is none', async () => {
    const lines = new TextDecoder().decode(plyFile('ascii', [pointsPart(points)])).split('\n');
    lines[20] = '1 2';
    expect(await messageOf(fileOf('a.ply', lines.join('\n')))).toMatch(
      /^Line 21 of a\.ply is no item "vertex" \("1 2"\)/,
    );
  });

  it('refuses a face that names a corner which is not there', async () => {
    const mesh: PlyPart[] = [
      pointsPart(points),
      { name: 'face', properties: [{ name: 'vertex_index', type: 'int', list: 'uchar' }], items: [[[0, 1, 4000]]] },
    ];
    expect(await messageOf(fileOf('a.ply', plyFile('binary_big_endian', mesh)))).toMatch(
      /triangle 1 of its faces names corner 4,001.*only 1,500/,
    );
  });
});
