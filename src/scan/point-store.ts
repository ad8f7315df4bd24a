import { ThinningGrid } from './thinning-grid';

/**
 * Points as they are read, in the file's own axes and unit, as 32-bit differences from the first of them: coordinates
 * far from zero, as in a surveyor's grid, lose nothing.
 */
export class PointStore {
  count = 0;
  /** points that were no numbers */
  unread = 0;
  /** points at exactly 0, 0, 0, which scanners write where nothing came back */
  atZero = 0;
  /** all that could be read, before thinning */
  seen = 0;
  origin: [number, number, number] | null = null;
  #positions: Float32Array<ArrayBuffer>;
  #grid: ThinningGrid | null = null;

  constructor(
    readonly limit: number,
    expected = 65_536,
  ) {
    this.#positions = new Float32Array(3 * Math.max(1, Math.min(limit, expected)));
  }

  /** edge of the cubes of which each keeps one point; null while all points are kept */
  get cube(): number | null {
    return this.#grid?.edge ?? null;
  }

  add(x: number, y: number, z: number): void {
    if ((x + y + z) * 0 !== 0) {
      this.unread++;
      return;
    }
    if (x === 0 && y === 0 && z === 0) {
      this.atZero++;
      return;
    }
    this.origin ??= [x, y, z];
    this.seen++;
    const [ox, oy, oz] = this.origin;
    const at = 3 * this.count;
    if (at === this.#positions.length) {
      this.#makeRoom();
      this.#put(x - ox, y - oy, z - oz);
      return;
    }
    const positions = this.#positions;
    positions[at] = x - ox;
    positions[at + 1] = y - oy;
    positions[at + 2] = z - oz;
    if (this.#grid === null || this.#grid.takes(positions, this.count)) this.count++;
  }

  /** Adds points that lie evenly spaced in an array, with x, y and z at places of their own. */
  addEvery(from: Float32Array | Float64Array, stride: number, x: number, y: number, z: number): void {
    for (let at = 0; at + stride <= from.length; at += stride) this.add(from[at + x]!, from[at + y]!, from[at + z]!);
  }

  /** The coordinates of the points kept, x y z of each. The store is done with after this. */
  take(): Float32Array<ArrayBuffer> {
    const all = this.#positions;
    this.#positions = new Float32Array(3);
    this.#grid = null;
    return 3 * this.count === all.length ? all : all.slice(0, 3 * this.count);
  }

  #put(x: number, y: number, z: number): void {
    const positions = this.#positions;
    const at = 3 * this.count;
    positions[at] = x;
    positions[at + 1] = y;
    positions[at + 2] = z;
    if (this.#grid === null || this.#grid.takes(positions, this.count)) this.count++;
  }

  #makeRoom(): void {
    if (this.count < this.limit) {
      const larger = new Float32Array(3 * Math.min(this.limit, 2 * this.count));
      larger.set(this.#positions);
      this.#positions = larger;
      return;
    }
    this.#grid ??= new ThinningGrid(this.limit);
    this.count = this.#grid.thin(this.#positions, this.count);
  }
}
