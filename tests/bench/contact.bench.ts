import { bendingStiffness, isotropic, pressSheet } from '../../src/core/contact';
import type { Row } from './bench';

export const name = 'contact';
export const about =
  'An elastic sheet pressed on a wall: time, its growth with the unknowns, and the energy as the grid is refined.';

const REGION = { u: [-750, 750], v: [-700, 980] } as const;
const STIFFNESS = bendingStiffness(isotropic(3000, 0.35, 6));
const WALLS: Record<string, (u: number, v: number) => number> = {
  hollow: (u) => 6 * (u / 750) ** 2,
  hump: (u, v) => -8 * (u / 750) ** 2 - 3 * (v / 900) ** 2,
  saddle: (u, v) => 6 * (u / 750) ** 2 - 4 * (v / 800) ** 2 + (3 * u * v) / 6e5,
  uneven: (u, v) => 3 * Math.sin(u / 200) * Math.cos(v / 260) + 0.004 * u,
};
const PRESSURES = [1e-3, 1e-4, 1e-5];
const REPEATS = 5;

const unknowns = (columns: number, rows: number): number => (columns + 2) * (rows + 2);
const median = (values: number[]): number => values.sort((a, b) => a - b)[values.length >> 1] as number;

export function run(): Row[] {
  const rows: Row[] = [];
  for (const [wall, height] of Object.entries(WALLS)) {
    for (const pressure of PRESSURES) {
      const press = (columns: number, lines: number) =>
        pressSheet(height, REGION, STIFFNESS, pressure, { columns, rows: lines, tolerance: 1e-4 });
      const time = (columns: number, lines: number): number =>
        median(
          Array.from({ length: REPEATS }, () => {
            const began = performance.now();
            press(columns, lines);
            return performance.now() - began;
          }),
        );
      const [small, large] = [time(96, 64), time(384, 256)];
      const growth = Math.log(large / small) / Math.log(unknowns(384, 256) / unknowns(96, 64));
      const energies = [24, 48, 96, 192].map((cells) => press(cells, cells).energy);
      const [a, b, c] = [0, 1, 2].map((k) => Math.abs((energies[k] as number) / (energies[3] as number) - 1)) as [
        number,
        number,
        number,
      ];
      const what = `${wall}, ${pressure * 1e6} Pa`;
      rows.push({
        what: `${what}: 96 × 64`,
        value: small,
        unit: 'ms',
        asked: { atMost: 150 },
        note: `energy off ${percent(a)} %, ${percent(b)} %, ${percent(c)} % on 24, 48, 96 cells a side against 192, falling as h^${Math.log2(a / b).toFixed(1)}`,
      });
      rows.push({
        what: `${what}: growth with the unknowns, power`,
        value: growth,
        unit: '1',
        asked: { atMost: 1.2 },
        note: `384 × 256 in ${large.toFixed(0)} ms`,
      });
    }
  }
  return rows;
}

const percent = (share: number): string => (100 * share).toPrecision(2);
