import type { Region } from '../flatten';
import type { Patch } from './report';

const STEPS = 32;

/** Connected stretches of a region where a value is beyond a limit, widest first; looked at in cells of 1/32 each way. */
export function patchesBeyond(region: Region, value: (u: number, v: number) => number, limit: number): Patch[] {
  const { u, v } = region;
  const [width, height] = [(u[1] - u[0]) / STEPS, (v[1] - v[0]) / STEPS];
  const beyond = Array.from({ length: STEPS * STEPS }, (_, k) => {
    const place = [u[0] + ((k % STEPS) + 0.5) * width, v[0] + (Math.floor(k / STEPS) + 0.5) * height] as const;
    return value(...place);
  });
  return connected(STEPS, STEPS, (k) => beyond[k]! > limit)
    .map((cells): Patch => {
      const worst = cells.reduce((most, k) => (beyond[k]! > beyond[most]! ? k : most), cells[0]!);
      const columns = cells.map((k) => k % STEPS);
      const rows = cells.map((k) => Math.floor(k / STEPS));
      return {
        area: cells.length * width * height,
        u: u[0] + ((worst % STEPS) + 0.5) * width,
        v: v[0] + (Math.floor(worst / STEPS) + 0.5) * height,
        worst: beyond[worst]!,
        from: [u[0] + Math.min(...columns) * width, v[0] + Math.min(...rows) * height],
        to: [u[0] + (Math.max(...columns) + 1) * width, v[0] + (Math.max(...rows) + 1) * height],
      };
    })
    .sort((a, b) => b.area - a.area);
}

/** Groups of cells of a grid that touch at a side or a corner. */
export function connected(columns: number, rows: number, taken: (k: number) => boolean): number[][] {
  const seen = new Uint8Array(columns * rows);
  const groups: number[][] = [];
  for (let start = 0; start < seen.length; start++) {
    if (seen[start] || !taken(start)) continue;
    const group = [start];
    seen[start] = 1;
    for (let next = 0; next < group.length; next++) {
      const [i, j] = [group[next]! % columns, Math.floor(group[next]! / columns)];
      for (let y = Math.max(0, j - 1); y <= Math.min(rows - 1, j + 1); y++) {
        for (let x = Math.max(0, i - 1); x <= Math.min(columns - 1, i + 1); x++) {
          const k = x + y * columns;
          if (seen[k] || !taken(k)) continue;
          seen[k] = 1;
          group.push(k);
        }
      }
    }
    groups.push(group);
  }
  return groups;
}
