import { type CSSProperties, useEffect, useRef, useState } from 'react';
import styles from '../scene.module.css';
import { cellsFor } from './cells';

interface NamesProps {
  names: readonly string[];
  /** two views in one picture: a name to each side */
  wiped: boolean;
}

/** The name of each view over it; the lists beside the drawing say the same. */
export function Names({ names, wiped }: NamesProps) {
  const frame = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState({ width: 2, height: 1 });
  useEffect(() => {
    const element = frame.current;
    if (!element) return undefined;
    const observer = new ResizeObserver(() => setSize({ width: element.clientWidth, height: element.clientHeight }));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const cells = cellsFor(names.length, size.width, size.height);
  const placeOf = (i: number): CSSProperties => {
    if (wiped) return i === 0 ? { left: 0, top: 0 } : { right: 0, top: 0 };
    const { x, y, width, height } = cells[i]!;
    return { left: x, top: size.height - y - height, maxWidth: width - 16 };
  };
  return (
    <div ref={frame} className={styles.names} aria-hidden="true">
      {names.length > 1 &&
        names.map((name, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two views may have one name
          <span key={i} style={placeOf(i)}>
            {name}
          </span>
        ))}
    </div>
  );
}
