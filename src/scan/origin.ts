/** So many points are looked at before it is chosen which place all are told from. */
export const LOOKED_AT = 64;

/** The middle one by each coordinate, of x y z of each point: a stray among them moves it nowhere. */
export function middleOf(points: readonly number[]): [number, number, number] {
  const middle = (from: number): number => {
    const along = points.filter((_, i) => i % 3 === from).sort((a, b) => a - b);
    return along[along.length >> 1] ?? 0;
  };
  return [middle(0), middle(1), middle(2)];
}
