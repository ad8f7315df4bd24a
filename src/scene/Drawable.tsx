import { Fragment, type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import { DrawingBoundary } from './DrawingBoundary';
import { NoDrawing } from './NoDrawing';
import { canDraw3d } from './webgl';

/** A drawing that was taken away is drawn again by itself after so long, ms. */
const breath = 1500;
/** One that is taken away again within so long waits until it is asked for, ms. */
const tooSoon = 60_000;

interface DrawableProps {
  /** what works without a drawing, as a sentence */
  besides: string;
  /** a flat picture that stands in for the drawing */
  instead?: ReactNode;
  children: (onLost: () => void) => ReactNode;
}

/**
 * A 3D drawing; where the browser cannot draw it or took it away, a sentence and a flat picture in its place. A drawing
 * that was taken away comes back by itself, once.
 */
export function Drawable({ besides, instead, children }: DrawableProps) {
  const [drawable] = useState(canDraw3d);
  const [attempt, setAttempt] = useState(0);
  const [lost, setLost] = useState(false);
  const drawnAgainAt = useRef(Number.NEGATIVE_INFINITY);
  const onLost = useCallback(() => setLost(true), []);
  const again = useCallback(() => {
    setLost(false);
    setAttempt((count) => count + 1);
  }, []);
  useEffect(() => {
    if (!lost || performance.now() - drawnAgainAt.current < tooSoon) return;
    const timer = setTimeout(() => {
      drawnAgainAt.current = performance.now();
      again();
    }, breath);
    return () => clearTimeout(timer);
  }, [lost, again]);
  const nothing = (sentence: string, retry?: () => void) => (
    <NoDrawing sentence={`${sentence} ${besides}`} instead={instead} again={retry} />
  );
  if (!drawable) return nothing('This browser cannot draw in 3D (WebGL 2 is missing or switched off).');
  const stopped = (retry: () => void) => nothing('The 3D drawing stopped.', retry);
  if (lost) return stopped(again);
  return (
    <DrawingBoundary instead={stopped}>
      <Fragment key={attempt}>{children(onLost)}</Fragment>
    </DrawingBoundary>
  );
}
