import { ScanFault } from './fault';
import { GrowingUint32 } from './growing';
import { isPlace } from './is-place';
import type { ScanLimits } from './limits';

/** The corners and triangles of a mesh as they are read. A corner keeps its number, so none is left out here. */
export class MeshStore {
  corners = 0;
  unread = 0;
  origin: [number, number, number] | null = null;
  readonly #triangles = new GrowingUint32();
  #positions = new Float32Array(3 * 65_536);

  constructor(
    readonly name: string,
    readonly limits: ScanLimits,
  ) {}

  get triangles(): number {
    return this.#triangles.length / 3;
  }

  add(x: number, y: number, z: number): void {
    const readable = isPlace(x, y, z);
    if (readable) this.origin ??= [x, y, z];
    else this.unread++;
    const at = 3 * this.corners++;
    if (at === this.#positions.length) this.#makeRoom();
    const [ox, oy, oz] = this.origin ?? [0, 0, 0];
    this.#positions[at] = readable ? x - ox : Number.NaN;
    this.#positions[at + 1] = readable ? y - oy : Number.NaN;
    this.#positions[at + 2] = readable ? z - oz : Number.NaN;
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
