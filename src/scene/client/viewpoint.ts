import type { Room } from './geometry';

export type Viewpoint = 'door' | 'tub' | 'eye';

/** Where the viewer stands and looks, mm and radians, and how far the view turns about what is looked at. */
export interface Stand {
  from: readonly [number, number, number];
  to: readonly [number, number, number];
  /** upright angle of view, degrees */
  fov: number;
  turn: { around: number; up: number; down: number };
  /** nearest and farthest that the viewer comes to what is looked at */
  near: number;
  far: number;
}

/**
 * Eyes are this share of a person's height above the floor: standing height less 0.12 m of 1.75 m (common figures, no
 * source).
 */
export const EYE_SHARE = 0.93;
/** Eyes above the rim of somebody who sits in the tub, mm (common practice, no source). */
const SEATED = 420;

/** The door lies to one side, so that the wall with the valve is seen from there, radians. */
const DOOR_SLANT = 0.36;

/** What is looked at, by whom, mm. */
export interface Sight {
  room: Room;
  /** heights of the rim and of the panels' top */
  rim: number;
  top: number;
  /** of the person */
  height: number;
  /** width of the picture by its height */
  aspect: number;
  /** side of the valve: -1 left, 1 right, 0 back */
  wet: -1 | 0 | 1;
}

export function standAt(viewpoint: Viewpoint, { room, rim, top, height, aspect, wet }: Sight): Stand {
  const eye = room.floor + EYE_SHARE * height;
  const [x, wide] = [(room.left + room.right) / 2, room.right - room.left];
  if (viewpoint === 'tub') {
    const dry = wet === 0 ? 0 : wet;
    const from = [x - 0.28 * wide * dry, rim + SEATED, 0.62 * room.front] as const;
    const to = [
      from[0] + (dry === 0 ? 0 : dry * 0.5 * wide),
      from[1] + 60,
      dry === 0 ? 0.1 * room.front : 0.42 * room.front,
    ] as const;
    const reach = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
    return {
      from,
      to,
      fov: aspect < 1 ? 82 : 66,
      turn: { around: 0.75, up: 0.4, down: 0.35 },
      near: 0.75 * reach,
      far: 1.05 * reach,
    };
  }
  const fov = 36;
  const upright = (fov * Math.PI) / 360;
  const across = Math.atan(Math.tan(upright) * aspect);
  const away = Math.max((0.5 * wide + 130) / Math.tan(across), (0.5 * (top - room.floor) + 150) / Math.tan(upright));
  const to = [x, (room.floor + top) / 2 + 30, 0.45 * room.front] as const;
  const slant = viewpoint === 'door' ? -DOOR_SLANT * (wet === 0 ? 1 : wet) : 0;
  const from = [x + Math.sin(slant) * away, eye, to[2] + Math.cos(slant) * away + 0.5 * room.front] as const;
  return { from, to, fov, turn: { around: 1.05, up: 0.55, down: 0.22 }, near: 0.4 * away, far: 1.7 * away };
}
