/** Numbers of the points that have a label, going up. */
export function pointsLabelled(labels: Uint8Array, label: number): Uint32Array {
  let count = 0;
  for (const each of labels) if (each === label) count++;
  const points = new Uint32Array(count);
  for (let i = 0, at = 0; i < labels.length; i++) if (labels[i] === label) points[at++] = i;
  return points;
}

/** How many points each of so many labels has. */
export function labelCounts(labels: Uint8Array, kinds: number): number[] {
  const counts = new Array<number>(kinds).fill(0);
  for (const label of labels) counts[label]!++;
  return counts;
}
