type Scalar = 'char' | 'uchar' | 'short' | 'ushort' | 'int' | 'uint' | 'float' | 'double';

const bytes: Record<Scalar, number> = { char: 1, uchar: 1, short: 2, ushort: 2, int: 4, uint: 4, float: 4, double: 8 };
const setters: Record<Scalar, (view: DataView, at: number, value: number, little: boolean) => void> = {
  char: (view, at, value) => view.setInt8(at, value),
  uchar: (view, at, value) => view.setUint8(at, value),
  short: (view, at, value, little) => view.setInt16(at, value, little),
  ushort: (view, at, value, little) => view.setUint16(at, value, little),
  int: (view, at, value, little) => view.setInt32(at, value, little),
  uint: (view, at, value, little) => view.setUint32(at, value, little),
  float: (view, at, value, little) => view.setFloat32(at, value, little),
  double: (view, at, value, little) => view.setFloat64(at, value, little),
};

export interface PlyPart {
  name: string;
  properties: readonly { name: string; type: Scalar; list?: Scalar }[];
  /** a value, or for a list its values, for each property of each item */
  items: readonly (readonly (number | readonly number[])[])[];
}

export type Encoding = 'ascii' | 'binary_little_endian' | 'binary_big_endian';

/** A PLY file, written value by value as the format is described. */
export function plyFile(encoding: Encoding, parts: readonly PlyPart[], { newline = '\n', comment = '' } = {}) {
  const head = [
    'ply',
    `format ${encoding} 1.0`,
    ...(comment === '' ? [] : [`comment ${comment}`]),
    ...parts.flatMap(({ name, properties, items }) => [
      `element ${name} ${items.length}`,
      ...properties.map(({ name, type, list }) =>
        list ? `property list ${list} ${type} ${name}` : `property ${type} ${name}`,
      ),
    ]),
    'end_header',
    '',
  ].join(newline);
  const body = encoding === 'ascii' ? new TextEncoder().encode(inText(parts, newline)) : inBytes(encoding, parts);
  const file = new Uint8Array(head.length + body.length);
  file.set(new TextEncoder().encode(head));
  file.set(body, head.length);
  return file;
}

const inText = (parts: readonly PlyPart[], newline: string): string =>
  parts
    .flatMap(({ items }) =>
      items.map((item) =>
        item.map((value) => (typeof value === 'number' ? value : [value.length, ...value].join(' '))).join(' '),
      ),
    )
    .join(newline) + newline;

function inBytes(encoding: Encoding, parts: readonly PlyPart[]): Uint8Array {
  const little = encoding === 'binary_little_endian';
  const writes: { type: Scalar; value: number }[] = parts.flatMap(({ properties, items }) =>
    items.flatMap((item) =>
      item.flatMap((value, p) => {
        const { type, list } = properties[p]!;
        if (typeof value === 'number') return [{ type, value }];
        return [{ type: list!, value: value.length }, ...value.map((each) => ({ type, value: each }))];
      }),
    ),
  );
  const view = new DataView(new ArrayBuffer(writes.reduce((sum, { type }) => sum + bytes[type], 0)));
  let at = 0;
  for (const { type, value } of writes) {
    setters[type](view, at, value, little);
    at += bytes[type];
  }
  return new Uint8Array(view.buffer);
}

/** An element of points with x, y and z alone. */
export const pointsPart = (points: readonly (readonly number[])[], type: Scalar = 'float'): PlyPart => ({
  name: 'vertex',
  properties: ['x', 'y', 'z'].map((name) => ({ name, type })),
  items: points,
});
