/** What is left of a row, or of a coarse spline's own children, once the held splines are out. */
export const GONE = 0;
export const WHOLE = 1;
export const CUT = 2;

/** Of each row of a matrix over splines: gone where its spline is held, cut where a neighbour is. */
export function rowStates(held: Uint8Array, across: number, up: number, out: Uint8Array): void {
  nearby(held, across, up, out);
  for (let k = 0; k < held.length; k++) out[k] = held[k] ? GONE : out[k] ? CUT : WHOLE;
}

/** 1 where any spline of the 5 × 5 about it is marked. */
export function nearby(marked: Uint8Array, across: number, up: number, out: Uint8Array): void {
  const along = new Uint8Array(across * up);
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      if (!marked[i + j * across]) continue;
      const last = Math.min(across - 1, i + 2) + j * across;
      for (let k = Math.max(0, i - 2) + j * across; k <= last; k++) along[k] = 1;
    }
  }
  out.fill(0);
  for (let k = 0; k < along.length; k++) {
    if (!along[k]) continue;
    for (let n = Math.max(k % across, k - 2 * across); n <= k + 2 * across && n < along.length; n += across) out[n] = 1;
  }
}

/** The same on the grid twice as coarse: whole or gone only where all children 2I − 2 … 2I + 1 of both axes are. */
export function coarserStates(fine: Uint8Array, across: number, up: number, out: Uint8Array): void {
  const [wide, high] = [across / 2 + 1, up / 2 + 1];
  for (let J = 0; J < high; J++) {
    const [j0, j1] = [Math.max(0, 2 * J - 2), Math.min(up - 1, 2 * J + 1)];
    for (let I = 0; I < wide; I++) {
      const [i0, i1] = [Math.max(0, 2 * I - 2), Math.min(across - 1, 2 * I + 1)];
      const first = fine[i0 + j0 * across]!;
      let state = first;
      for (let j = j0; j <= j1 && state !== CUT; j++) {
        for (let k = i0 + j * across; k <= i1 + j * across; k++) if (fine[k] !== first) state = CUT;
      }
      out[I + J * wide] = state;
    }
  }
}

/** On the grid twice as coarse, 1 where any child is marked. */
export function coarserMarks(fine: Uint8Array, across: number, up: number, out: Uint8Array): void {
  const wide = across / 2 + 1;
  out.fill(0);
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      if (!fine[i + j * across]) continue;
      const parent = (i >> 1) + (j >> 1) * wide;
      out[parent] = out[parent + 1] = out[parent + wide] = out[parent + wide + 1] = 1;
    }
  }
}
