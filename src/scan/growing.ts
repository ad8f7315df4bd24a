/** Numbers of which it is not known beforehand how many come. */
export class GrowingUint32 {
  length = 0;
  #values = new Uint32Array(3072);

  push(value: number): void {
    if (this.length === this.#values.length) {
      const larger = new Uint32Array(2 * this.length);
      larger.set(this.#values);
      this.#values = larger;
    }
    this.#values[this.length++] = value;
  }

  take(): Uint32Array {
    return this.#values.subarray(0, this.length);
  }
}
