import { foldedOutline, type Job, type Panel, type Result, type Vec3 } from '../../core';
import { onWall, type Surfaces, surfacesOf } from './surfaces';

/** A filled area of the picture, in its own unit, y down. */
export interface Face {
  points: [number, number][];
  fill: string;
  line: string | null;
}

export interface Picture {
  width: number;
  height: number;
  faces: Face[];
}

const WIDTH = 1000;
const HEIGHT = 760;
const ASIDE = 6000;
const CEILING = 2440;
/** The viewer's eye above the middle of what is seen. */
const RAISED = 180;
/** How much light a face turned that way gets. */
const LIGHT = { back: 1, left: 0.9, right: 0.84 };

/**
 * The finished alcove as a plain picture, drawn from behind forwards: what is shown until the 3D drawing is there, or
 * where there can be none.
 */
export function alcovePicture(job: Job, result: Result): Picture {
  const surfaces = surfacesOf(result);
  const { finish, fit, rim } = job;
  const floor = -job.levelAboveFloor;
  const front = rim.width;
  const at = viewOf(surfaces, job, floor);
  const faces: Face[] = [];
  const draw = (points: readonly Vec3[], fill: string, line: string | null = null): void => {
    faces.push({ points: points.map(at), fill, line });
  };
  const wallFace = fit.bed + fit.thickness;
  const ceiling = floor + CEILING;
  const corner = (wall: 'left' | 'right', y: number, z: number): Vec3 => [surfaces.side(wall, y, z), y, z];

  draw(
    [
      [-ASIDE, floor, 0],
      [ASIDE, floor, 0],
      [ASIDE, floor, front + 1500],
      [-ASIDE, floor, front + 1500],
    ],
    '#a39b8f',
  );
  draw(
    [corner('left', floor, 0), corner('right', floor, 0), corner('right', ceiling, 0), corner('left', ceiling, 0)],
    '#c2c5bd',
  );
  for (const wall of ['left', 'right'] as const) {
    draw(
      [corner(wall, floor, 0), corner(wall, floor, front), corner(wall, ceiling, front), corner(wall, ceiling, 0)],
      wall === 'left' ? '#b3b6ae' : '#abaea6',
    );
  }
  for (const name of ['back', 'left', 'right'] as const) {
    draw(panelFace(surfaces, result.panels[name], wallFace), shade(finish.colour, LIGHT[name]), '#00000030');
  }
  const faceOf = (kinds: readonly string[], fill: string) => {
    for (const piece of result.pieces.trim)
      if (kinds.includes(piece.kind))
        draw(foldedOutline(piece), shade(fill, piece.wall === 'back' ? 1 : 0.92), '#00000038');
  };
  faceOf(['top', 'side-top', 'angle'], finish.trim);
  for (const shelf of result.pieces.shelves) draw(foldedOutline(shelf), shade(finish.colour, 1.04), '#00000050');

  const rimAt = (x: number, z: number): Vec3 => [x, surfaces.rim(x, z), z];
  const [left, right] = [surfaces.side('left', surfaces.rim(0, 0), 0), surfaces.side('right', surfaces.rim(0, 0), 0)];
  draw([rimAt(left, 0), rimAt(right, 0), rimAt(right, front), rimAt(left, front)], '#fbfbf9', '#00000028');
  const ledge = rim.kind === 'tub' ? 85 : 50;
  draw(
    [
      rimAt(left + ledge, ledge),
      rimAt(right - ledge, ledge),
      rimAt(right - ledge, front - ledge),
      rimAt(left + ledge, front - ledge),
    ],
    '#dedfdb',
    '#00000022',
  );
  draw([[left, floor, front], [right, floor, front], rimAt(right, front), rimAt(left, front)], '#f1f1ee', '#00000028');
  for (const leg of result.pieces.legs) draw(foldedOutline(leg), shade(finish.colour, 0.92), '#00000030');
  faceOf(['vertical'], finish.trim);
  for (const wall of ['left', 'right'] as const) {
    const out = wall === 'left' ? -ASIDE : ASIDE;
    draw(
      [corner(wall, floor, front), [out, floor, front], [out, ceiling, front], corner(wall, ceiling, front)],
      '#c9ccc4',
    );
  }
  return { width: WIDTH, height: HEIGHT, faces };
}

const panelFace = (surfaces: Surfaces, { name, outline }: Panel, off: number): Vec3[] =>
  thinned(outline).map((point) => onWall(surfaces, name, point, off));

/** Enough of an outline for a picture: the corners always, and every eighth point between. */
function thinned<T extends readonly [number, number]>(outline: readonly T[]): T[] {
  const turns = (i: number): boolean => {
    const [p, q, r] = [outline.at(i - 1)!, outline[i]!, outline[(i + 1) % outline.length]!];
    const cross = (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0]);
    return Math.abs(cross) > 0.2 * Math.hypot(q[0] - p[0], q[1] - p[1]) * Math.hypot(r[0] - q[0], r[1] - q[1]);
  };
  return outline.filter((_, i) => i % 8 === 0 || turns(i));
}

/** Perspective from in front of the alcove, slightly above eye height, the whole surround within the picture. */
function viewOf(surfaces: Surfaces, job: Job, floor: number): (point: Vec3) => [number, number] {
  const top = Math.max(job.fit.top + 120, floor + 1500);
  const [left, right] = [surfaces.side('left', 0, 0), surfaces.side('right', 0, 0)];
  const [x0, y0, z0] = [(left + right) / 2, (floor + top) / 2 + RAISED, job.rim.width + 2700];
  const scale = Math.min((0.8 * HEIGHT) / (top - floor), (0.8 * WIDTH) / (right - left)) * (z0 - job.rim.width);
  return ([x, y, z]) => {
    const away = Math.max(50, z0 - z);
    return [
      WIDTH / 2 + (scale * (x - x0)) / away,
      HEIGHT / 2 - (scale * (y - y0)) / away - (scale * RAISED) / (z0 - job.rim.width),
    ];
  };
}

/** A colour with its light taken as a share. */
function shade(colour: string, share: number): string {
  const channel = (from: number) =>
    Math.min(255, Math.round(Number.parseInt(colour.slice(from, from + 2), 16) * share));
  return `#${[1, 3, 5].map((from) => channel(from).toString(16).padStart(2, '0')).join('')}`;
}
