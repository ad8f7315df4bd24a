/** More are not told apart on a screen, and draw slowly where no graphics card helps. */
const mostShown = 250_000;

/** Numbers of evenly spread points, so many as are drawn. */
export function shownPoints(count: number, most = mostShown): Uint32Array {
  const shown = Math.min(count, most);
  return Uint32Array.from({ length: shown }, (_, i) => Math.floor((i * count) / shown));
}

/** The points drawn of each label, as numbers among those drawn. */
export function byLabel(shown: Uint32Array, labels: Uint8Array, kinds: number): Uint32Array[] {
  const counts = new Uint32Array(kinds);
  for (const point of shown) counts[labels[point]!]!++;
  const lists = Array.from(counts, (count) => new Uint32Array(count));
  const filled = new Uint32Array(kinds);
  for (let i = 0; i < shown.length; i++) {
    const label = labels[shown[i]!]!;
    lists[label]![filled[label]!++] = i;
  }
  return lists;
}
