export type ScalarType = 'int8' | 'uint8' | 'int16' | 'uint16' | 'int32' | 'uint32' | 'float32' | 'float64';

export const scalarBytes: Record<ScalarType, number> = {
  int8: 1,
  uint8: 1,
  int16: 2,
  uint16: 2,
  int32: 4,
  uint32: 4,
  float32: 4,
  float64: 8,
};

const names: Record<string, ScalarType> = {
  char: 'int8',
  uchar: 'uint8',
  short: 'int16',
  ushort: 'uint16',
  int: 'int32',
  uint: 'uint32',
  float: 'float32',
  double: 'float64',
  int8: 'int8',
  uint8: 'uint8',
  int16: 'int16',
  uint16: 'uint16',
  int32: 'int32',
  uint32: 'uint32',
  float32: 'float32',
  float64: 'float64',
};

export const scalarTypeOf = (name: string | undefined): ScalarType | null =>
  name !== undefined && Object.hasOwn(names, name) ? names[name]! : null;

export type ReadScalar = (view: DataView, at: number) => number;

/** What reads a value of a type. */
export function scalarReader(type: ScalarType, little: boolean): ReadScalar {
  switch (type) {
    case 'int8':
      return (view, at) => view.getInt8(at);
    case 'uint8':
      return (view, at) => view.getUint8(at);
    case 'int16':
      return (view, at) => view.getInt16(at, little);
    case 'uint16':
      return (view, at) => view.getUint16(at, little);
    case 'int32':
      return (view, at) => view.getInt32(at, little);
    case 'uint32':
      return (view, at) => view.getUint32(at, little);
    case 'float32':
      return (view, at) => view.getFloat32(at, little);
    case 'float64':
      return (view, at) => view.getFloat64(at, little);
  }
}
