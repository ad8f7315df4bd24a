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
    const inside = ([x, y, z]: readonly number[]) => x! >= 0 && x! <= 2 && y! >= 0 && y! <= 1 && z === 1;
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
    ['ply\nformat ascii 1.0\nelement vertex 3\n', /head of a\.ply has no end/],
    ['ply\nformat ebcdic 1.0\nend_header\n', /Line 2 in the head of a\.ply \("format ebcdic 1\.0"\) names a format/],
    ['ply\nformat ascii 1.0\nelement vertex lots\nend_header\n', /Line 3 .* gives no count/],
    ['ply\nformat ascii 1.0\nelement vertex 3\nproperty quad x\nend_header\n', /Line 4 .* names a type/],
    ['ply\nformat ascii 1.0\nproperty float x\nend_header\n', /Line 3 .* before any element/],
    ['ply\nformat ascii 1.0\nelement face 0\nend_header\n', /no element "vertex"/],
    ['ply\nformat ascii 1.0\nelement vertex 1\nproperty float x\nproperty float y\nend_header\n1 2\n', /have no z/],
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
      /names corner 4001.*only 1,500/,
    );
  });
});
