import { Fragment, type ReactNode, useCallback, useState } from 'react';
import { DrawingBoundary } from './DrawingBoundary';
import { NoDrawing } from './NoDrawing';
import { canDraw3d } from './webgl';

interface DrawableProps {
  /** what works without a drawing, as a sentence */
  besides: string;
  children: (onLost: () => void) => ReactNode;
}

/** A 3D drawing, or a sentence in its place where the browser cannot draw it or took it away. */
export function Drawable({ besides, children }: DrawableProps) {
  const [drawable] = useState(canDraw3d);
  const [attempt, setAttempt] = useState(0);
  const [lost, setLost] = useState(false);
  const onLost = useCallback(() => setLost(true), []);
  const again = () => {
    setLost(false);
    setAttempt((count) => count + 1);
  };
  if (!drawable) {
    return <NoDrawing sentence={`This browser cannot draw in 3D (WebGL 2 is missing or switched off). ${besides}`} />;
  }
  const stopped = (retry: () => void) => <NoDrawing sentence={`The 3D drawing stopped. ${besides}`} again={retry} />;
  if (lost) return stopped(again);
  return (
    <DrawingBoundary instead={stopped}>
      <Fragment key={attempt}>{children(onLost)}</Fragment>
    </DrawingBoundary>
  );
}
