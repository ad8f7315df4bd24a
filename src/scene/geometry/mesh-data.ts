/** x, y, z in mm, in the frame of the alcove. */
export type Vec3 = readonly [x: number, y: number, z: number];

/** Triangles ready for drawing: three coordinates per vertex, three vertices per triangle, wound counter-clockwise. */
export interface MeshData {
  positions: number[];
  indices: number[];
}

/** Triangles over a grid of points, `rows[i][j]`; they face along (direction of j) × (direction of i), or the other way. */
export function gridMesh(rows: readonly (readonly Vec3[])[], flip = false): MeshData {
  const width = rows[0]?.length ?? 0;
  const positions = rows.flat().flatMap((point) => [...point]);
  const indices: number[] = [];
  for (let i = 0; i + 1 < rows.length; i++) {
    for (let j = 0; j + 1 < width; j++) {
      const a = i * width + j;
      const [b, c, d] = [a + 1, a + width, a + width + 1];
      indices.push(...(flip ? [a, c, b, b, c, d] : [a, b, c, b, d, c]));
    }
  }
  return { positions, indices };
}

/** Several meshes as one; vertices are not merged, so that edges between them stay sharp. */
export function joinMeshes(meshes: readonly MeshData[]): MeshData {
  const joined: MeshData = { positions: [], indices: [] };
  for (const { positions, indices } of meshes) {
    const first = joined.positions.length / 3;
    for (const value of positions) joined.positions.push(value);
    for (const index of indices) joined.indices.push(index + first);
  }
  return joined;
}

/** Volume enclosed by a closed mesh wound outwards, mm³ (divergence theorem, sum of signed tetrahedra). */
export function enclosedVolume({ positions, indices }: MeshData): number {
  const at = (vertex: number): Vec3 => [positions[3 * vertex]!, positions[3 * vertex + 1]!, positions[3 * vertex + 2]!];
  let six = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [at(indices[i]!), at(indices[i + 1]!), at(indices[i + 2]!)];
    six += a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return six / 6;
}
