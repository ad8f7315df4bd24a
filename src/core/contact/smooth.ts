import { CENTRE, rowTimes, SIZE, type Stencil } from './stencil';

/** One symmetric Gauss–Seidel sweep, forth and back, on A x = b; rows without a diagonal are left alone. */
export function smooth({ across, up, entries }: Stencil, b: Float64Array, x: Float64Array): void {
  for (let j = 0; j < up; j++) for (let i = 0; i < across; i++) relax(i, j);
  for (let j = up - 1; j >= 0; j--) for (let i = across - 1; i >= 0; i--) relax(i, j);

  function relax(i: number, j: number): void {
    const k = i + j * across;
    const diagonal = entries[k * SIZE + CENTRE] as number;
    if (diagonal <= 0) return;
    x[k] = (x[k] as number) + ((b[k] as number) - rowTimes(entries, x, i, j, across, up)) / diagonal;
  }
}
