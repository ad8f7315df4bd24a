/**
 * Widths of table columns: each as wide as its widest cell while they fit together, what is spare shared in proportion;
 * else the wide ones give way down to a common width (water filling).
 * @param natural width of each column's widest cell, mm
 */
export function columnWidths(natural: number[], total: number): number[] {
  const sum = natural.reduce((all, width) => all + width, 0);
  if (sum <= total) return natural.map((width) => width + ((total - sum) * width) / (sum || 1));
  const ascending = [...natural].sort((a, b) => a - b);
  let left = total;
  for (let i = 0; i < ascending.length; i++) {
    const level = left / (ascending.length - i);
    if (ascending[i]! > level) return natural.map((width) => Math.min(width, level));
    left -= ascending[i]!;
  }
  return natural;
}
