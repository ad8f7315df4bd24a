import { CENTRE, SIZE, type Stencil, WIDTH } from './stencil';

/** Of the matrix what concerns the free splines alone, each tied by an even spring, N/mm³. */
export function withoutRows(
  { across, up, entries }: Stencil,
  held: Uint8Array,
  areas: Float64Array,
  tie: number,
  out: Stencil,
): void {
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      const row = k * SIZE;
      if (held[k]) {
        out.entries.fill(0, row, row + SIZE);
        continue;
      }
      const [q0, q1] = [Math.max(0, 2 - j), Math.min(WIDTH, up + 2 - j)];
      const [p0, p1] = [Math.max(0, 2 - i), Math.min(WIDTH, across + 2 - i)];
      for (let q = q0; q < q1; q++) {
        for (let p = p0; p < p1; p++) {
          const e = row + p + WIDTH * q;
          out.entries[e] = held[i + p - 2 + (j + q - 2) * across] ? 0 : (entries[e] as number);
        }
      }
      out.entries[row + CENTRE] = (out.entries[row + CENTRE] as number) + tie * (areas[k] as number);
    }
  }
}
