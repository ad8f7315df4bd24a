import { type PointerEvent, useRef, useState } from 'react';
import type { ScreenPoint } from './lasso';
import styles from './scan.module.css';

/** A point of the line for every so many px, so that a slow hand makes no thousand of them. */
const step = 4;

/** Takes the line that is drawn around points over the drawing. Picking by place does the same by the keyboard. */
export function LassoSheet({ onLasso }: { onLasso: (line: readonly ScreenPoint[]) => void }) {
  const [line, setLine] = useState<readonly ScreenPoint[]>([]);
  const drawing = useRef(false);
  const at = ({ nativeEvent }: PointerEvent): ScreenPoint => [nativeEvent.offsetX, nativeEvent.offsetY];
  return (
    <svg
      className={styles.lasso}
      data-testid="lasso"
      aria-hidden="true"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        drawing.current = true;
        setLine([at(event)]);
      }}
      onPointerMove={(event) => {
        const last = line.at(-1);
        const here = at(event);
        if (!drawing.current || (last && Math.hypot(last[0] - here[0], last[1] - here[1]) < step)) return;
        setLine([...line, here]);
      }}
      onPointerUp={() => {
        drawing.current = false;
        if (line.length > 2) onLasso(line);
        setLine([]);
      }}
      onPointerCancel={() => {
        drawing.current = false;
        setLine([]);
      }}
    >
      {line.length > 1 && <polygon points={line.map((point) => point.join()).join(' ')} />}
    </svg>
  );
}
