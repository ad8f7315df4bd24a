import type { Rectangle } from '../../core';
import { spread } from '../../output';

/** Where a piece's number stands on the drawing of its sheet, mm, and the line to a piece too narrow to hold it. */
export interface NumberPlace {
  x: number;
  y: number;
  leader: { x: number; y: number } | null;
}

/** Room that a number takes, in heights of it. */
const ROOM = 1.15;
const BESIDE = 1.125;

/**
 * Places the numbers: within a piece that holds one, else beside the sheet on the piece's nearer side, apart from each
 * other, with a line to the piece.
 * @param size height of a number, mm
 */
export function numberPlaces(
  pieces: readonly Rectangle[],
  sheet: { width: number; height: number },
  size: number,
): NumberPlace[] {
  const narrow = ({ width, height }: Rectangle) => Math.min(width, height) < 1.2 * size;
  const isLeft = ({ x, width }: Rectangle) => x + width / 2 < sheet.width / 2;
  const heights = new Map<Rectangle, number>();
  for (const left of [true, false]) {
    const beside = pieces.filter((piece) => narrow(piece) && isLeft(piece) === left);
    const wanted = beside.map(({ y, height }) => y + height / 2);
    const apart = spread(wanted, ROOM * size, [0, sheet.height]);
    for (const [i, piece] of beside.entries()) heights.set(piece, apart[i]!);
  }
  return pieces.map((piece) => {
    const { x, width } = piece;
    const middle = { x: x + width / 2, y: piece.y + piece.height / 2 };
    const y = heights.get(piece);
    if (y === undefined) return { ...middle, leader: null };
    const inside = Math.min(width / 2, size / 2);
    return isLeft(piece)
      ? { x: -BESIDE * size, y, leader: { x: x + inside, y: middle.y } }
      : { x: sheet.width + BESIDE * size, y, leader: { x: x + width - inside, y: middle.y } };
  });
}
