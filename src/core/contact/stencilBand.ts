import { type Band, emptyBand } from './band';
import { CENTRE, SIZE, type Stencil, WIDTH } from './stencil';

/**
 * The lower half of a matrix over splines as a band, to be changed and factored.
 * @param gone splines whose rows and columns are left empty
 */
export function stencilBand({ across, up, entries }: Stencil, gone?: Uint8Array): Band {
  const size = across * up;
  const result = emptyBand(size, Math.min(2 * across + 2, size - 1));
  const { rows, band } = result;
  for (let k = 0; k < size; k++) {
    if (gone?.[k]) continue;
    const diagonal = k * (band + 1) + band;
    for (let e = 0; e <= CENTRE; e++) {
      const entry = entries[k * SIZE + e]!;
      if (entry === 0) continue;
      const step = (e % WIDTH) - 2 + (Math.floor(e / WIDTH) - 2) * across;
      if (!gone?.[k + step]) rows[diagonal + step] = entry;
    }
  }
  return result;
}

/** The diagonal of a matrix over splines. */
export const diagonalOf = ({ across, up, entries }: Stencil): Float64Array =>
  Float64Array.from({ length: across * up }, (_, k) => entries[k * SIZE + CENTRE]!);
