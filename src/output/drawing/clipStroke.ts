import type { Point } from '../../core';
import type { Rectangle } from './rectangle';

/** The part of a stroke inside a rectangle (Liang–Barsky), or null. */
export function clipStroke(
  [ax, ay]: Point,
  [bx, by]: Point,
  { left, right, bottom, top }: Rectangle,
): [Point, Point] | null {
  let [from, to] = [0, 1];
  const sides: [number, number][] = [
    [ax - bx, ax - left],
    [bx - ax, right - ax],
    [ay - by, ay - bottom],
    [by - ay, top - ay],
  ];
  for (const [step, room] of sides) {
    if (step === 0) {
      if (room < 0) return null;
    } else if (step < 0) from = Math.max(from, room / step);
    else to = Math.min(to, room / step);
  }
  if (from > to) return null;
  const at = (share: number): Point => [ax + share * (bx - ax), ay + share * (by - ay)];
  return [at(from), at(to)];
}
