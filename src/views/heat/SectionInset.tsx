import type { Section, SectionPoint } from '../../scene';
import { signed } from '../../scene';
import type { Lengths } from '../parts';
import styles from './heat.module.css';
import { extremesOf } from './heat-words';

interface SectionInsetProps {
  section: Section;
  profile: readonly SectionPoint[];
  /** mm shown either way of the reference */
  range: number;
  against: string;
  description: string;
  lengths: Lengths;
}

/** Size of the picture and of its plot, in its own units. */
const upright = { width: 260, height: 320 };
const level = { width: 420, height: 210 };
const edge = 34;

/** The wall's line in a section against the line it should follow, with its ± as a band. */
export function SectionInset({ section, profile, range, against, description, lengths }: SectionInsetProps) {
  const isUpright = section.cut === 'upright';
  const { width, height } = isUpright ? upright : level;
  const [first, last] = [profile[0]!.along, profile.at(-1)!.along];
  const reach = range * 1.15;
  // the left wall is seen from the room, where growing distance from the back wall runs to the left
  const turned = !isUpright && section.wall === 'left';
  const at = (along: number, value: number): readonly [number, number] => {
    const share = (along - first) / (last - first);
    if (isUpright) {
      return [width / 2 + (value / reach) * (width / 2 - edge), height - edge - share * (height - 2 * edge)];
    }
    const x = edge + (turned ? 1 - share : share) * (width - 2 * edge);
    return [x, height / 2 + (Math.max(-1, Math.min(1, value / reach)) * (height - 2 * edge)) / 2];
  };
  const path = (points: (readonly [number, number])[]) =>
    points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join(' ');
  const band = [
    ...profile.map(({ along, value, half }) => at(along, value + half)),
    ...[...profile].reverse().map(({ along, value, half }) => at(along, value - half)),
  ];
  const { out, back } = extremesOf(profile);
  return (
    <svg className={styles.inset} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={description}>
      <path d={`${path(band)} Z`} className={styles.band} />
      <path d={path([at(first, 0), at(last, 0)])} className={styles.reference} />
      <path d={path(profile.map(({ along, value }) => at(along, value)))} className={styles.wallLine} />
      {[out, back].map((point, i) => {
        const [x, y] = at(point.along, point.value);
        const right = isUpright ? point.value >= 0 : x < width / 2;
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: always furthest out, then furthest back
          <g key={i}>
            <circle cx={x} cy={y} r={4} className={styles.dot} />
            <text
              x={right ? x + 9 : x - 9}
              y={isUpright ? y + 4 : y + (point.value >= 0 ? 18 : -9)}
              textAnchor={right ? 'start' : 'end'}
            >
              {signed(point.value, lengths)}
            </text>
          </g>
        );
      })}
      <text x={width / 2} y={16} textAnchor="middle" className={styles.caption}>
        {isUpright ? against : 'away from the room'}
      </text>
      <text
        x={isUpright ? width - 6 : width / 2}
        y={height - 8}
        textAnchor={isUpright ? 'end' : 'middle'}
        className={styles.caption}
      >
        into the room
      </text>
      {isUpright && (
        <text x={6} y={height - 8} className={styles.caption}>
          away
        </text>
      )}
    </svg>
  );
}
