import type { SheetInUse } from '../../core';
import { numberPlace } from './number-place';
import styles from './van.module.css';

/** Height of a number, as a share of the sheet's height. */
const NUMBER = 0.035;

/** A sheet with its pieces numbered as in the legend; offcuts dashed. */
export function SheetPicture({ sheet, title }: { sheet: SheetInUse; title: string }) {
  const size = NUMBER * Math.max(sheet.width, sheet.height);
  const edge = 1.2 * size;
  const up = (y: number, height: number) => sheet.height - y - height;
  return (
    <svg
      className={styles.picture}
      viewBox={`${-edge} ${-edge} ${sheet.width + 2 * edge} ${sheet.height + 2 * edge}`}
      role="img"
      aria-label={`${title}: ${sheet.placed.length} pieces, numbered as in the list, and ${sheet.offcuts.length} offcuts`}
    >
      <rect className={styles.whole} width={sheet.width} height={sheet.height} />
      {sheet.offcuts.map(({ x, y, width, height }) => (
        <rect key={`${x} ${y}`} className={styles.offcut} {...{ x, y: up(y, height), width, height }} />
      ))}
      {sheet.placed.map(({ x, y, width, height, piece, part }) => (
        <rect key={`${piece} ${part.number}`} className={styles.placed} {...{ x, y: up(y, height), width, height }} />
      ))}
      {sheet.placed.map((placed, i) => {
        const at = numberPlace(placed, sheet, size);
        return (
          <text
            key={`${placed.piece} ${placed.part.number}`}
            x={at.x}
            y={sheet.height - at.y}
            fontSize={at.size}
            textAnchor="middle"
            dominantBaseline="central"
          >
            {i + 1}
          </text>
        );
      })}
    </svg>
  );
}
