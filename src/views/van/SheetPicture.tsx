import type { SheetInUse } from '../../core';
import { counted } from '../../output';
import { numberPlaces } from './number-place';
import styles from './van.module.css';

/** Least height of a number, as shares of the sheet's sides: legible however the sheet is fitted into its room. */
const NUMBER = { width: 0.1, height: 0.045 };

/** A sheet with its pieces numbered as in the legend; offcuts dashed. */
export function SheetPicture({ sheet, title }: { sheet: SheetInUse; title: string }) {
  const size = Math.max(NUMBER.width * sheet.width, NUMBER.height * sheet.height);
  const beside = 1.8 * size;
  const edge = 0.2 * size;
  const places = numberPlaces(sheet.placed, sheet, size);
  const up = (y: number, height: number) => sheet.height - y - height;
  return (
    <svg
      className={styles.picture}
      viewBox={`${-beside} ${-edge} ${sheet.width + 2 * beside} ${sheet.height + 2 * edge}`}
      role="img"
      aria-label={`${title}: ${counted(sheet.placed.length, 'piece')}, numbered as in the list, and ${counted(sheet.offcuts.length, 'offcut')}`}
    >
      <rect className={styles.whole} width={sheet.width} height={sheet.height} />
      {sheet.offcuts.map(({ x, y, width, height }) => (
        <rect key={`${x} ${y}`} className={styles.offcut} {...{ x, y: up(y, height), width, height }} />
      ))}
      {sheet.placed.map(({ x, y, width, height, piece, part }) => (
        <rect key={`${piece} ${part.number}`} className={styles.placed} {...{ x, y: up(y, height), width, height }} />
      ))}
      {sheet.placed.map(({ piece, part }, i) => {
        const { x, y, leader } = places[i]!;
        const toward = Math.sign((leader?.x ?? x) - x) * 0.55 * size;
        return (
          <g key={`${piece} ${part.number}`}>
            {leader && (
              <>
                <line
                  className={styles.leader}
                  {...{ x1: x + toward, y1: sheet.height - y, x2: leader.x, y2: sheet.height - leader.y }}
                />
                <circle cx={leader.x} cy={sheet.height - leader.y} r={0.12 * size} />
              </>
            )}
            <text x={x} y={sheet.height - y} fontSize={size} textAnchor="middle" dominantBaseline="central">
              {i + 1}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
