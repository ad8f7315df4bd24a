import type { PlyElement } from './header';

/** What is wanted of the items of an element as they pass: the corners of a face, the place of a point, or nothing. */
export interface ItemTaker {
  point?: (x: number, y: number, z: number) => void;
  face?: (corners: ArrayLike<number>, count: number) => void;
}

const faceLists = ['vertex_indices', 'vertex_index'];

/** Collects the values of an item property by property, and hands them on when it is whole. */
export class ItemReader {
  readonly #places: readonly number[];
  readonly #list: number;
  readonly #point = new Float64Array(3);
  #corners = new Float64Array(16);
  #count = 0;

  constructor(
    readonly element: PlyElement,
    readonly taker: ItemTaker,
  ) {
    this.#places = element.properties.map(({ name }) => (taker.point ? ['x', 'y', 'z'].indexOf(name) : -1));
    this.#list = taker.face ? element.properties.findIndex(({ name }) => faceLists.includes(name)) : -1;
  }

  value(property: number, value: number): void {
    const place = this.#places[property]!;
    if (place >= 0) this.#point[place] = value;
  }

  listOf(property: number, count: number): void {
    if (property !== this.#list) return;
    if (count > this.#corners.length) this.#corners = new Float64Array(count);
    this.#count = count;
  }

  listValue(property: number, index: number, value: number): void {
    if (property === this.#list) this.#corners[index] = value;
  }

  done(): void {
    this.taker.point?.(this.#point[0]!, this.#point[1]!, this.#point[2]!);
    if (this.#list >= 0) this.taker.face?.(this.#corners, this.#count);
    this.#count = 0;
  }
}

export const hasFaces = ({ name, count, properties }: PlyElement): boolean =>
  name === 'face' && count > 0 && properties.some((property) => property.count && faceLists.includes(property.name));
