import type { Piece, PieceKind } from '../piece';
import type { Result } from '../result';

/** What a trim piece hides of its panel's edge; lengths in mm, as `Cover` of the piece says. */
export interface Hiding {
  piece: string;
  name: string;
  kind: PieceKind;
  /** how much the panel's edge wanders */
  taper: number;
  lap: number;
  shows: number;
}

/** What two ways of trimming hide of the same edge. */
export interface HidingPair {
  piece: string;
  name: string;
  kind: PieceKind;
  /** null where that way has no such piece */
  first: Hiding | null;
  second: Hiding | null;
}

/** What every trim piece of a solved job hides. */
export const hidingOf = ({ pieces }: Pick<Result, 'pieces'>): Hiding[] =>
  pieces.trim.flatMap(({ id, name, kind, cover }: Piece) =>
    cover === null ? [] : [{ piece: id, name, kind, ...cover }],
  );

/** The same edges under two ways of trimming, side by side, those that differ most in what they leave in sight first. */
export function hidingPairs(first: Pick<Result, 'pieces'>, second: Pick<Result, 'pieces'>): HidingPair[] {
  const [a, b] = [hidingOf(first), hidingOf(second)];
  const pieces = [...new Map([...a, ...b].map((each) => [each.piece, each])).values()];
  return pieces
    .map(
      ({ piece, name, kind }): HidingPair => ({
        piece,
        name,
        kind,
        first: a.find((each) => each.piece === piece) ?? null,
        second: b.find((each) => each.piece === piece) ?? null,
      }),
    )
    .sort((p, q) => difference(q) - difference(p));
}

const difference = ({ first, second }: HidingPair): number => Math.abs((first?.shows ?? 0) - (second?.shows ?? 0));
