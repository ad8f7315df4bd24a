/**
 * Eigenvalues of a symmetric 3 × 3 matrix xx, xy, xz, yy, yz, zz, smallest first, and the unit eigenvector of the smallest: Smith, Eigenvalues
 * of a symmetric 3 × 3 matrix (Communications of the ACM 4, 1961; from memory), the vector as the longest cross product
 * of two rows of A − λ I.
 */
export function smallestAxis([xx, xy, xz, yy, yz, zz]: [number, number, number, number, number, number]): {
  values: [number, number, number];
  axis: [number, number, number];
} {
  const q = (xx + yy + zz) / 3;
  const off = xy * xy + xz * xz + yz * yz;
  const p = Math.sqrt(((xx - q) ** 2 + (yy - q) ** 2 + (zz - q) ** 2 + 2 * off) / 6);
  if (p < 1e-300) return { values: [q, q, q], axis: [0, 0, 1] };
  const [a, b, c] = [(xx - q) / p, (yy - q) / p, (zz - q) / p];
  const [d, e, f] = [xy / p, xz / p, yz / p];
  const half = (a * (b * c - f * f) - d * (d * c - f * e) + e * (d * f - b * e)) / 2;
  const angle = Math.acos(Math.min(1, Math.max(-1, half))) / 3;
  const largest = q + 2 * p * Math.cos(angle);
  const smallest = q + 2 * p * Math.cos(angle + (2 * Math.PI) / 3);
  const rows = [
    [xx - smallest, xy, xz],
    [xy, yy - smallest, yz],
    [xz, yz, zz - smallest],
  ] as const;
  let axis: [number, number, number] = [0, 0, 1];
  let longest = 0;
  for (const [i, j] of [
    [0, 1],
    [0, 2],
    [1, 2],
  ] as const) {
    const [r, s] = [rows[i], rows[j]];
    const [x, y, z] = [r[1] * s[2] - r[2] * s[1], r[2] * s[0] - r[0] * s[2], r[0] * s[1] - r[1] * s[0]];
    const length = Math.sqrt(x * x + y * y + z * z);
    if (length <= longest) continue;
    longest = length;
    axis = [x / length, y / length, z / length];
  }
  return { values: [smallest, 3 * q - smallest - largest, largest], axis };
}
