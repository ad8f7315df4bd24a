import type { Rim } from '../../../core';
import { useLengths } from '../../parts';
import styles from './contour.module.css';
import { contourLine } from './contour-line';

const room = { width: 320, height: 260 };
const edge = 34;

/** The contour to scale over a grid of even lengths, seen along the tub. */
export function ContourPicture({ rim }: { rim: Rim }) {
  const lengths = useLengths();
  const line = contourLine(rim);
  const xs = line.map(([x]) => x);
  const lowest = Math.min(-60, ...rim.profile.map(([, y]) => y), ...rim.apron.map(([, y]) => y)) - 25;
  const [left, right, top] = [Math.min(...xs) - 40, Math.max(...xs) + 20, 15];
  const scale = Math.min((room.width - edge) / (right - left), (room.height - edge) / (top - lowest));
  const step = gridStep((right - left) / 4, lengths.unit);
  const x = (mm: number) => edge + (mm - left) * scale;
  const y = (mm: number) => 8 + (top - mm) * scale;
  const shown = line.map(([out, up]): [number, number] => [out, Math.max(up, lowest)]);
  const start = shown[0]!;
  const columns = multiples(step, left, right);
  const rows = multiples(step, lowest, top);
  return (
    <svg
      className={styles.picture}
      viewBox={`0 0 ${room.width} ${room.height}`}
      role="img"
      aria-label={`Contour of rim and apron, seen along the tub: ${rim.profile.length} points on the rim, ${rim.apron.length} down the apron. Its figures are in the fields.`}
    >
      {columns.map((mm) => (
        <line key={mm} className={styles.grid} x1={x(mm)} x2={x(mm)} y1={y(top)} y2={y(lowest)} />
      ))}
      {rows.map((mm) => (
        <line key={mm} className={styles.grid} x1={x(left)} x2={x(right)} y1={y(mm)} y2={y(mm)} />
      ))}
      <polyline
        className={styles.line}
        points={[[left, start[1]], ...shown].map(([out, up]) => `${x(out!)},${y(up!)}`).join(' ')}
      />
      {shown.slice(0, -1).map(([out, up], i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a point is nothing but its place on the line
        <circle key={i} className={styles.point} cx={x(out)} cy={y(up)} r="4" />
      ))}
      <text className={styles.words} x={x(left)} y={room.height - 4}>
        each square {lengths.text(step)}
      </text>
    </svg>
  );
}

/** A round length near to a wanted one, mm. */
function gridStep(wanted: number, unit: 'in' | 'mm'): number {
  const steps =
    unit === 'in' ? [0.125, 0.25, 0.5, 1, 2, 4, 8].map((inches) => inches * 25.4) : [2, 5, 10, 20, 50, 100, 200];
  return steps.find((step) => step >= wanted) ?? steps.at(-1)!;
}

const multiples = (step: number, from: number, to: number): number[] => {
  const first = Math.ceil(from / step);
  return Array.from({ length: Math.max(0, Math.floor(to / step) - first + 1) }, (_, i) => (first + i) * step);
};
