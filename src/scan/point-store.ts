import { isPlace } from './is-place';
import { LOOKED_AT, middleOf } from './origin';
import { ThinningGrid } from './thinning-grid';

/**
 * Points as they are read, in the file's own axes and unit, as 32-bit differences from a place among the first of them:
 * coordinates far from zero, as in a surveyor's grid, lose nothing.
 */
export class PointStore {
  count = 0;
  /** points that were no places */
  unread = 0;
  /** points at exactly 0, 0, 0, which scanners write where nothing came back */
  atZero = 0;
  /** all that could be read, before thinning */
  seen = 0;
  /** points whose origin is not chosen yet, x y z of each; null once it is */
  #first: number[] | null = [];
  #ox = 0;
  #oy = 0;
  #oz = 0;
  #positions: Float32Array<ArrayBuffer>;
  #grid: ThinningGrid | null = null;

  constructor(
    readonly limit: number,
    expected = 65_536,
  ) {
    this.#positions = new Float32Array(3 * Math.max(1, Math.min(limit, expected)));
  }

  /** null before the first point; those that come after this is asked do not move it */
  get origin(): [number, number, number] | null {
    if (this.seen === 0) return null;
    this.#begin();
    return [this.#ox, this.#oy, this.#oz];
  }

  /** edge of the cubes of which each keeps one point; null while all points are kept */
  get cube(): number | null {
    return this.#grid?.edge ?? null;
  }

  add(x: number, y: number, z: number): void {
    if (!isPlace(x, y, z)) {
      this.unread++;
      return;
    }
    if (x === 0 && y === 0 && z === 0) {
      this.atZero++;
      return;
    }
    this.seen++;
    if (this.#first === null) this.#put(x, y, z);
    else if (this.#first.push(x, y, z) === 3 * LOOKED_AT) this.#begin();
  }

  #begin(): void {
    const first = this.#first;
    if (first === null) return;
    [this.#ox, this.#oy, this.#oz] = middleOf(first);
    this.#first = null;
    for (let at = 0; at < first.length; at += 3) this.#put(first[at]!, first[at + 1]!, first[at + 2]!);
  }

  #put(x: number, y: number, z: number): void {
    if (3 * this.count === this.#positions.length) this.#makeRoom();
    const positions = this.#positions;
    const at = 3 * this.count;
    positions[at] = x - this.#ox;
    positions[at + 1] = y - this.#oy;
    positions[at + 2] = z - this.#oz;
    if (this.#grid === null || this.#grid.takes(positions, this.count)) this.count++;
  }

  /** Adds points that lie evenly spaced in an array, with x, y and z at places of their own. */
  addEvery(from: Float32Array | Float64Array, stride: number, x: number, y: number, z: number): void {
    let at = 0;
    while (at + stride <= from.length) {
      if (this.#grid === null && this.#first === null) at = this.#addPlainly(from, at, stride, x, y, z);
      if (at + stride > from.length) return;
      this.add(from[at + x]!, from[at + y]!, from[at + z]!);
      at += stride;
    }
  }

  /** Adds what needs no more than being written down; gives where that ends. */
  #addPlainly(
    from: Float32Array | Float64Array,
    start: number,
    stride: number,
    x: number,
    y: number,
    z: number,
  ): number {
    const positions = this.#positions;
    const [ox, oy, oz] = [this.#ox, this.#oy, this.#oz];
    const last = from.length - stride;
    let to = 3 * this.count;
    let at = start;
    for (; at <= last && to < positions.length; at += stride) {
      const px = from[at + x]!;
      const py = from[at + y]!;
      const pz = from[at + z]!;
      if (!isPlace(px, py, pz) || (px === 0 && py === 0 && pz === 0)) break;
      positions[to] = px - ox;
      positions[to + 1] = py - oy;
      positions[to + 2] = pz - oz;
      to += 3;
    }
    const added = to / 3 - this.count;
    this.count += added;
    this.seen += added;
    return at;
  }

  /** The coordinates of the points kept, x y z of each. The store is done with after this. */
  take(): Float32Array<ArrayBuffer> {
    this.#begin();
    const all = this.#positions;
    this.#positions = new Float32Array(3);
    this.#grid = null;
    return 3 * this.count === all.length ? all : all.slice(0, 3 * this.count);
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
