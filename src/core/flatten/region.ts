/** Rectangle of wall coordinates, mm. */
export interface Region {
  u: [number, number];
  v: [number, number];
}

/** Even grid over a region, `steps` intervals each way, both ends included. */
export function gridOver({ u: [u0, u1], v: [v0, v1] }: Region, steps: number): [number, number][] {
  const points: [number, number][] = [];
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) points.push([u0 + ((u1 - u0) * i) / steps, v0 + ((v1 - v0) * j) / steps]);
  }
  return points;
}
