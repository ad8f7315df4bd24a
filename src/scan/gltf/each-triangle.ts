const STRIP = 5;
const FAN = 6;

/**
 * The triangles of a primitive of glTF: single ones, a strip or a fan.
 * @param indices numbers of corners; null where the corners come in order
 */
export function eachTriangle(
  mode: number,
  indices: ArrayLike<number> | null,
  corners: number,
  take: (a: number, b: number, c: number) => void,
): void {
  const count = indices?.length ?? corners;
  const at = (i: number): number => (indices ? indices[i]! : i);
  if (mode === STRIP || mode === FAN) {
    for (let i = 2; i < count; i++) take(at(mode === FAN ? 0 : i - 2), at(i - 1), at(i));
    return;
  }
  for (let i = 2; i < count; i += 3) take(at(i - 2), at(i - 1), at(i));
}
