import { useId } from 'react';
import type { ResidualMap } from '../../../core';
import { scanSurfaceNames } from '../../../output';
import { scaleColourText } from '../../../scene';
import type { Lengths } from '../../parts';
import { residualPicture, worstBlock } from './residual-picture';
import styles from './scan-findings.module.css';

interface ResidualFigureProps {
  surface: 'back' | 'left' | 'right' | 'rim';
  residuals: ResidualMap;
  /** mm at either end of the scale */
  range: number;
  /** what is off by less stands out nowhere, mm */
  least: number;
  lengths: Lengths;
}

/** Side of a block, in the picture's own units. */
const side = 10;
/** Height of a picture, rem; of a wide one less. */
const tall = 14;

/** How far the scan stands off one surface after its shape, block by block: coloured, and signed where it stands out. */
export function ResidualFigure({ surface, residuals, range, least, lengths }: ResidualFigureProps) {
  const hatch = useId();
  const { columns, rows, blocks } = residualPicture(surface, residuals, least);
  const words = residualWords(surface, residuals, least, lengths);
  return (
    <figure className={styles.figure}>
      <svg
        className={styles.picture}
        viewBox={`0 0 ${columns * side} ${rows * side}`}
        style={{ aspectRatio: `${columns} / ${rows}`, width: `${tall * Math.min(1.5, columns / rows)}rem` }}
        role="img"
        aria-label={`${scanSurfaceNames[surface]}: ${words}`}
      >
        <defs>
          <pattern id={hatch} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <rect width="4" height="4" fill="#f3f1ec" />
            <rect width="1.6" height="4" fill="#aeb2b1" />
          </pattern>
        </defs>
        {blocks.map(({ column, row, value, sign }) => {
          const [x, y] = [column * side, row * side];
          const share = (value ?? 0) / range;
          return (
            <g key={`${column} ${row}`}>
              <rect
                x={x}
                y={y}
                width={side}
                height={side}
                fill={value === null ? `url(#${hatch})` : scaleColourText(share)}
              />
              {sign !== 0 && (
                <path
                  className={styles.sign}
                  data-dark={Math.abs(share) > 0.45 || undefined}
                  d={`M${x + 2.5} ${y + 5}h5${sign > 0 ? `M${x + 5} ${y + 2.5}v5` : ''}`}
                />
              )}
            </g>
          );
        })}
      </svg>
      <figcaption>{words}</figcaption>
    </figure>
  );
}

/** The same in a sentence. */
function residualWords(
  surface: ResidualFigureProps['surface'],
  residuals: ResidualMap,
  least: number,
  { text, fine }: Lengths,
): string {
  const worst = worstBlock(residuals, least);
  if (worst === null) return 'No place stands out from the shape.';
  const { at, height, value } = worst;
  const across = (x: number) => `${text(Math.abs(x))} ${x < 0 ? 'left' : 'right'} of the plumb line`;
  const out = (z: number) => `${text(Math.max(0, z))} out from the back wall`;
  const level = `${text(Math.abs(height))} ${height < 0 ? 'below' : 'above'} the level line`;
  const place =
    surface === 'rim' ? `${across(at)}, ${out(height)}` : `${surface === 'back' ? across(at) : out(at)}, ${level}`;
  const way = surface === 'rim' ? ['higher', 'lower'] : ['nearer', 'farther'];
  return `Stands out most at ${place}: ${fine(Math.abs(value))} ${way[value > 0 ? 0 : 1]} than the shape.`;
}
