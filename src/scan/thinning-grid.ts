/** Of the points that fill the store, at most this share is kept when the cubes are made larger. */
const keptShare = 0.6;

/**
 * Cubes of which each keeps the first point that falls into it. The point itself is kept, not a mean, so that the noise
 * of what is left is the scanner's.
 */
export class ThinningGrid {
  /** in the unit of the points; 0 before the first thinning */
  edge = 0;
  /** numbers of the points kept, + 1, hashed by their cubes; open addressing */
  readonly #slots: Int32Array;
  readonly #mask: number;
  #positions: Float32Array = new Float32Array(0);

  constructor(readonly most: number) {
    const size = 2 ** Math.ceil(Math.log2(Math.max(16, most * 1.5)));
    this.#slots = new Int32Array(size);
    this.#mask = size - 1;
  }

  /**
   * Makes the cubes so large that the points fill no more than a part of the store, and moves those kept to its start.
   * @returns how many are kept
   */
  thin(positions: Float32Array, count: number): number {
    this.edge = this.edge === 0 ? firstEdge(positions, count) : this.edge * Math.SQRT2;
    let left = this.#keep(positions, count);
    while (left > keptShare * this.most) {
      this.edge *= Math.SQRT2;
      left = this.#keep(positions, left);
    }
    return left;
  }

  /** True, and it is noted, where the cube of point `index` held none yet. */
  takes(positions: Float32Array, index: number): boolean {
    this.#positions = positions;
    const slot = this.#slotOf(index);
    if (this.#slots[slot] !== 0) return false;
    this.#slots[slot] = index + 1;
    return true;
  }

  #keep(positions: Float32Array, count: number): number {
    this.#slots.fill(0);
    let kept = 0;
    for (let i = 0; i < count; i++) {
      positions[3 * kept] = positions[3 * i]!;
      positions[3 * kept + 1] = positions[3 * i + 1]!;
      positions[3 * kept + 2] = positions[3 * i + 2]!;
      if (this.takes(positions, kept)) kept++;
    }
    return kept;
  }

  /** The slot that holds a point of the same cube, or the empty one that would. */
  #slotOf(index: number): number {
    const { edge } = this;
    const positions = this.#positions;
    const cx = Math.floor(positions[3 * index]! / edge);
    const cy = Math.floor(positions[3 * index + 1]! / edge);
    const cz = Math.floor(positions[3 * index + 2]! / edge);
    // Multipliers of Teschner et al., "Optimized spatial hashing", 2003.
    let slot = (Math.imul(cx, 73856093) ^ Math.imul(cy, 19349663) ^ Math.imul(cz, 83492791)) >>> 0;
    slot = (slot ^ (slot >>> 15)) & this.#mask;
    for (;;) {
      const other = this.#slots[slot]! - 1;
      if (other < 0) return slot;
      if (
        Math.floor(positions[3 * other]! / edge) === cx &&
        Math.floor(positions[3 * other + 1]! / edge) === cy &&
        Math.floor(positions[3 * other + 2]! / edge) === cz
      ) {
        return slot;
      }
      slot = (slot + 1) & this.#mask;
    }
  }
}

/** A four-thousandth of the largest extent: finer than a wall's shape, coarser than single precision. */
function firstEdge(positions: Float32Array, count: number): number {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < 3 * count; i++) {
    const value = positions[i]!;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  return Math.max((high - low) / 4000, Number.MIN_VALUE * 1e10) || 1;
}
