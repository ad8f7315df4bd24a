import { ScanFault } from './fault';
import { GrowingUint32 } from './growing';
import { isPlace } from './is-place';
import type { ScanLimits } from './limits';
import { LOOKED_AT, middleOf } from './origin';

/** The corners and triangles of a mesh as they are read. A corner keeps its number, so none is left out here. */
export class MeshStore {
  corners = 0;
  unread = 0;
  /** corners whose origin is not chosen yet, x y z of each, and where they go; null once it is */
  #first: { places: number[]; at: number[] } | null = { places: [], at: [] };
  #origin: [number, number, number] | null = null;
  readonly #triangles = new GrowingUint32();
  #positions = new Float32Array(3 * 65_536);

  constructor(
    readonly name: string,
    readonly limits: ScanLimits,
  ) {}

  get triangles(): number {
    return this.#triangles.length / 3;
  }

  /** null before the first corner that could be read; those that come after this is asked do not move it */
  get origin(): [number, number, number] | null {
    this.#begin();
    return this.#origin;
  }

  add(x: number, y: number, z: number): void {
    const at = 3 * this.corners++;
    if (at === this.#positions.length) this.#makeRoom();
    if (!isPlace(x, y, z)) {
      this.unread++;
      this.#positions.fill(Number.NaN, at, at + 3);
    } else if (this.#first === null) this.#put(at, x, y, z);
    else {
      this.#first.at.push(at);
      if (this.#first.places.push(x, y, z) === 3 * LOOKED_AT) this.#begin();
    }
  }

  #begin(): void {
    const first = this.#first;
    if (first === null || first.at.length === 0) return;
    this.#first = null;
    this.#origin = middleOf(first.places);
    first.at.forEach((at, i) => {
      this.#put(at, first.places[3 * i]!, first.places[3 * i + 1]!, first.places[3 * i + 2]!);
    });
  }

  #put(at: number, x: number, y: number, z: number): void {
    const [ox, oy, oz] = this.#origin!;
    this.#positions[at] = x - ox;
    this.#positions[at + 1] = y - oy;
    this.#positions[at + 2] = z - oz;
  }

  /** Adds a face as a fan of triangles. */
  addFace(corners: ArrayLike<number>, count = corners.length): void {
    for (let i = 2; i < count; i++) {
      this.#triangles.push(corners[0]!);
      this.#triangles.push(corners[i - 1]!);
      this.#triangles.push(corners[i]!);
    }
    if (this.triangles > this.limits.triangles) {
      throw new ScanFault(
        `${this.name} has more than ${this.limits.triangles.toLocaleString('en')} triangles, more than can be held here. Save the scan as points (PLY), or with a coarser mesh.`,
      );
    }
  }

  take(): { positions: Float32Array<ArrayBuffer>; triangles: Uint32Array } {
    const triangles = this.#triangles.take();
    const bad = triangles.findIndex((corner) => corner >= this.corners);
    if (bad >= 0) {
      throw new ScanFault(
        `${this.name} is damaged: triangle ${(Math.floor(bad / 3) + 1).toLocaleString('en')} of its faces names corner ${(triangles[bad]! + 1).toLocaleString('en')}, but there are only ${this.corners.toLocaleString('en')}. Save the scan again.`,
      );
    }
    this.#begin();
    const positions = this.#positions.slice(0, 3 * this.corners);
    this.#positions = new Float32Array(0);
    return { positions, triangles };
  }

  #makeRoom(): void {
    if (this.corners > this.limits.corners) {
      throw new ScanFault(
        `${this.name} has more than ${this.limits.corners.toLocaleString('en')} corners, more than can be held here. Save the scan as points (PLY): those are thinned while they are read.`,
      );
    }
    const larger = new Float32Array(2 * this.#positions.length);
    larger.set(this.#positions);
    this.#positions = larger;
  }
}
