import { type Figure, paints } from '../../output';
import styles from './van.module.css';

/** Screen pixels for a millimetre of a figure's lines on paper. */
const PIXELS = 2.6;

/** A figure of the walls; wide ones scroll sideways on a narrow screen rather than shrink. */
export function FigureView({ figure }: { figure: Figure }) {
  const { left, right, bottom, top } = figure.bounds;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section className={styles.figureRoom} tabIndex={0} aria-label={figure.title}>
      <svg className={styles.figure} viewBox={`${left} ${-top} ${right - left} ${top - bottom}`} role="img">
        <title>{figure.title}</title>
        {figure.shapes.map((shape, i) => {
          const key = `${shape.kind}${i}`;
          if (shape.kind === 'label') {
            return (
              <text
                key={key}
                x={shape.at[0]}
                y={-shape.at[1]}
                fontSize={figure.size}
                fontWeight={shape.bold ? 700 : 400}
                textAnchor={shape.anchor}
              >
                {shape.text}
              </text>
            );
          }
          const { width, dash } = paints[shape.look];
          const paint = {
            'data-look': shape.look,
            strokeWidth: width * PIXELS,
            strokeDasharray: dash?.map((part) => part * PIXELS).join(' '),
          };
          if (shape.kind === 'disc') {
            return <circle key={key} cx={shape.centre[0]} cy={-shape.centre[1]} r={shape.radius} {...paint} />;
          }
          const points = shape.points.map(([x, y]) => `${x.toFixed(1)},${(-y).toFixed(1)}`).join(' ');
          return shape.closed ? (
            <polygon key={key} points={points} {...paint} />
          ) : (
            <polyline key={key} points={points} {...paint} />
          );
        })}
      </svg>
    </section>
  );
}
