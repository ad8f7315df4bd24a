/** A scan as it stands in its file: no unit is known yet, nor which way is up. */
export interface RawScan {
  format: 'PLY' | 'text' | 'OBJ' | 'glTF';
  /** x y z of each point in the file's axes and unit, relative to `origin` */
  positions: Float32Array<ArrayBuffer>;
  origin: [number, number, number];
  /** the surfaces of a mesh, of which points were taken */
  mesh: { triangles: number } | null;
  /** points of the file that could be read, before thinning */
  seen: number;
  /** edge of the cubes of which each kept one point, in the file's unit; null where all are kept */
  cube: number | null;
  /** points, lines or corners that held no numbers */
  unread: number;
  /** points at exactly 0, 0, 0, left out */
  atZero: number;
  /** the length of the file's unit in mm, where the format or the file says so */
  unit: number | null;
  /** where the format or the file says so */
  up: Up | null;
  /** how a text was read */
  table: TableReading | null;
}

/** The file's axis that points up. */
export type Up = '+x' | '-x' | '+y' | '-y' | '+z' | '-z';

export type TableSeparator = 'blank' | 'comma' | 'semicolon' | 'tab' | 'bar';

/** How the lines of a text make points; columns count from 0. */
export interface TableLayout {
  separator: TableSeparator;
  decimal: 'point' | 'comma';
  columns: [x: number, y: number, z: number];
}

export interface TableReading extends TableLayout {
  /** of each column, where a line of names stands above the numbers */
  names: string[] | null;
  /** how many columns the first line of numbers has */
  width: number;
  /** the first lines of numbers as they stand */
  sample: string[];
}
