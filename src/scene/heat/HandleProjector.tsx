import { useFrame, useThree } from '@react-three/fiber';
import { type RefObject, useEffect } from 'react';
import { Vector3 } from 'three';
import type { Vec3 } from '../geometry';

/** A place on the screen, px from the drawing's left top. */
type Place = readonly [x: number, y: number];

/** Where the handle stands for a share of its way, and the share whose place is nearest a point of the screen. */
export interface HandleTrack {
  /** where the handle's middle is on the screen */
  at: Place;
  nearest(x: number, y: number): number;
}

interface HandleProjectorProps {
  /** places that the handle passes, evenly spaced, first to last */
  path: readonly Vec3[];
  /** along the path, 0 to 1 */
  share: number;
  element: RefObject<HTMLElement | null>;
  track: RefObject<HandleTrack | null>;
}

/** Keeps the section's handle where its place appears on the screen. */
export function HandleProjector({ path, share, element, track }: HandleProjectorProps) {
  const invalidate = useThree((state) => state.invalidate);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place needs another frame
  useEffect(() => invalidate(), [path, share, invalidate]);
  useFrame(({ camera, size }) => {
    camera.updateMatrixWorld();
    const on = new Vector3();
    const places = path.map(([x, y, z]): Place => {
      on.set(x, y, z).project(camera);
      return [((on.x + 1) / 2) * size.width, ((1 - on.y) / 2) * size.height];
    });
    const [across, down] = between(places, share);
    const [left, top] = [within(across, size.width), within(down, size.height)];
    track.current = { at: [left, top], nearest: (x, y) => nearestShare(places, x, y) };
    const handle = element.current;
    if (!handle) return;
    handle.style.transform = `translate(${left}px, ${top}px) translate(-50%, -50%)`;
    handle.style.visibility = 'visible';
  });
  return null;
}

const within = (value: number, size: number): number => Math.min(Math.max(value, 22), size - 22);

function between(places: readonly Place[], share: number): Place {
  const along = share * (places.length - 1);
  const i = Math.min(Math.floor(along), places.length - 2);
  const t = along - i;
  const [a, b] = [places[i]!, places[i + 1]!];
  return [a[0] * (1 - t) + b[0] * t, a[1] * (1 - t) + b[1] * t];
}

/** Share along a line on the screen of its point nearest to (x, y). */
export function nearestShare(places: readonly Place[], x: number, y: number): number {
  let [best, found] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i + 1 < places.length; i++) {
    const [[ax, ay], [bx, by]] = [places[i]!, places[i + 1]!];
    const [dx, dy] = [bx - ax, by - ay];
    const square = dx * dx + dy * dy;
    const t = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
    const apart = Math.hypot(ax + t * dx - x, ay + t * dy - y);
    if (apart < best) [best, found] = [apart, (i + t) / (places.length - 1)];
  }
  return found;
}
