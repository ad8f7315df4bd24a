/** What a change of labels took away, so that it can be taken back. */
export interface Relabelled {
  points: Uint32Array;
  /** their labels before */
  before: Uint8Array;
  label: number;
}

/** Gives points another label, in place. */
export function relabel(labels: Uint8Array, points: Uint32Array, label: number): Relabelled {
  const before = Uint8Array.from(points, (point) => labels[point]!);
  for (const point of points) labels[point] = label;
  return { points, before, label };
}

/** Takes a change back, in place. */
export function takeBack(labels: Uint8Array, { points, before }: Relabelled): void {
  for (let i = 0; i < points.length; i++) labels[points[i]!] = before[i]!;
}
