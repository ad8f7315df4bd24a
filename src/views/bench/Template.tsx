import { useId, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { type Shape, shapeBounds } from '../../output';
import { fitTemplate, type Room } from './fit-template';
import type { Sketch } from './sketch';
import styles from './template.module.css';

interface TemplateProps {
  sketch: Sketch;
  /** times larger than what fits the page */
  closer: number;
}

/** A flat template on the screen, its figures at a readable size whatever the scale. */
export function Template({ sketch, closer }: TemplateProps) {
  const frame = useRef<HTMLElement>(null);
  const [room, setRoom] = useState<Room | null>(null);
  useLayoutEffect(() => {
    const element = frame.current;
    if (!element) return;
    const measure = () => setRoom({ width: element.clientWidth - 4, height: Math.max(420, window.innerHeight * 0.78) });
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a part of the page that scrolls must be reachable by keyboard
    <section ref={frame} className={styles.frame} tabIndex={0} aria-label="Flat template">
      {room && <TemplateSvg sketch={sketch} room={room} closer={closer} />}
    </section>
  );
}

function TemplateSvg({ sketch, room, closer }: TemplateProps & { room: Room }) {
  const id = useId().replace(/[^\w-]/g, '');
  const { shapes, size, width, height } = useMemo(() => fitTemplate(sketch, room, closer), [sketch, room, closer]);
  const { left, right, bottom, top } = shapeBounds(shapes);
  return (
    <svg
      className={styles.template}
      width={width}
      height={height}
      role="img"
      data-testid="template"
      viewBox={`${left - size} ${-top - size} ${right - left + 2 * size} ${top - bottom + 2 * size}`}
      aria-label={sketch.label}
      style={{ '--sliver': `url(#${id}-sliver)`, '--gap': `url(#${id}-gap)` } as React.CSSProperties}
    >
      <defs>
        <pattern
          id={`${id}-sliver`}
          width={size * 0.6}
          height={size * 0.6}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width={size} height={size} className={styles.sliverGround} />
          <path d={`M0 0V${size}`} className={styles.sliverStripe} strokeWidth={size * 0.25} />
        </pattern>
        <pattern
          id={`${id}-gap`}
          width={size * 0.6}
          height={size * 0.6}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width={size} height={size} className={styles.gapGround} />
          <path d={`M0 0V${size}M0 0H${size}`} className={styles.gapStripe} strokeWidth={size * 0.2} />
        </pattern>
      </defs>
      {shapes.map((shape, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: shapes have no other name than their place
        <ShapeElement key={i} shape={shape} />
      ))}
    </svg>
  );
}

function ShapeElement({ shape }: { shape: Shape }) {
  const className = styles[shape.layer];
  if (shape.kind === 'circle')
    return <circle className={className} cx={shape.centre[0]} cy={-shape.centre[1]} r={shape.radius} />;
  if (shape.kind === 'polyline') {
    const points = shape.points.map(([x, y]) => `${x},${-y}`).join(' ');
    return shape.closed ? (
      <polygon className={className} points={points} />
    ) : (
      <polyline className={className} points={points} />
    );
  }
  const [x, y] = [shape.at[0], -shape.at[1]];
  return (
    <text
      className={styles.words}
      x={x}
      y={y}
      fontSize={shape.size}
      textAnchor={shape.anchor}
      fontWeight={shape.bold ? 700 : 500}
      transform={shape.angle ? `rotate(${-shape.angle} ${x} ${y})` : undefined}
    >
      {shape.text}
    </text>
  );
}
