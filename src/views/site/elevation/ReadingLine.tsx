import type { SurveyPlace } from '../survey';
import styles from './elevation.module.css';
import type { Point } from './frame';
import type { Paper } from './paper';
import type { Mark } from './useMarks';

interface ReadingLineProps {
  mark: Mark;
  paper: Paper;
  active: boolean;
}

/** Half the length of the strokes that end a tape, px. */
const END = 5;

/** A tape as a dimension line, a hung line as a column of gaps, a straightedge as a bar, a hole as a circle. */
export function ReadingLine({ mark, paper, active }: ReadingLineProps) {
  const { place, drawn, state, from, to, ticks } = mark;
  const { shape } = drawn;
  const shared = { 'data-state': state, 'data-active': active || undefined };
  if (shape === 'hole') {
    return (
      <g className={styles.mark} {...shared}>
        <circle cx={from[0]} cy={from[1]} r={Math.max(5, paper.scale * drawn.radius)} />
      </g>
    );
  }
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const across: Point = [(-(to[1] - from[1]) / length) * END, ((to[0] - from[0]) / length) * END];
  const stroke = ([x, y]: Point, key: string) => (
    <line key={key} x1={x - across[0]} y1={y - across[1]} x2={x + across[0]} y2={y + across[1]} />
  );
  const line = <line x1={from[0]} y1={from[1]} x2={to[0]} y2={to[1]} />;
  switch (shape) {
    case 'column':
      return (
        <g className={styles.mark} {...shared}>
          {line}
          {ticks.map(([x, y], i) => (
            <circle
              // biome-ignore lint/suspicious/noArrayIndexKey: a gap has no other name than its place
              key={i}
              cx={x}
              cy={y}
              r={4}
              data-read={gapIsRead(place, i) || undefined}
            />
          ))}
        </g>
      );
    case 'bar':
      return (
        <g className={styles.mark} data-shape="bar" {...shared}>
          {line}
          <path d={bulge(place, from, to)} />
        </g>
      );
    case 'corner':
      return (
        <g className={styles.mark} {...shared}>
          <path d={`M${from} Q${(from[0] + to[0]) / 2},${from[1] - 18} ${to}`} />
          {stroke(from, 'from')}
          {stroke(to, 'to')}
        </g>
      );
    default:
      return (
        <g className={styles.mark} data-shape={shape} {...shared}>
          {line}
          {stroke(from, 'from')}
          {stroke(to, 'to')}
        </g>
      );
  }
}

const gapIsRead = ({ where }: SurveyPlace, i: number): boolean =>
  where.kind === 'plumb' && 'id' in where && where.gaps?.[i]?.value !== undefined;

/** The wall's bow beside the bar: a curve to one side for a hollow, to the other for a hump. */
function bulge({ where }: SurveyPlace, from: Point, to: Point): string {
  const value = where.kind === 'straightedge' && 'id' in where ? where.value : undefined;
  if (value === undefined || Math.abs(value) < 0.2) return '';
  const by = value > 0 ? 16 : -16;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [nx, ny] = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
  return `M${from} Q${(from[0] + to[0]) / 2 + nx * by},${(from[1] + to[1]) / 2 + ny * by} ${to}`;
}
