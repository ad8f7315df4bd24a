import type { Fit, Rim, Side, WallName } from '../../src/core/job-file';
import type { EdgeName, PanelName } from '../../src/core/panel';
import { bisect } from './bisect';
import { frontAt, rimAt, type TrueAlcove, wallAt } from './trueAlcove';

/** What of a job decides where panels end. */
export interface Build {
  fit: Fit;
  rim: Rim;
  /** how far the back of each sheet stands off its even bed, towards the room, mm; without it nowhere */
  stands?: (wall: WallName, at: number, height: number) => number;
}

/** z or x of the back of a sheet, the even bed taken off. */
const seatAt = (alcove: TrueAlcove, { stands }: Build, wall: WallName, at: number, height: number): number =>
  wallAt(alcove, wall, at, height) + (wall === 'right' ? -1 : 1) * (stands?.(wall, at, height) ?? 0);

/** Farther than any edge lies from the origin, mm. */
const FAR = 2500;

/** Where an edge truly lies by the rules of design section 5: u at a height, or v at a u, mm. */
export function trueEdge(alcove: TrueAlcove, build: Build, panel: PanelName, edge: EdgeName, along: number): number {
  const { fit } = build;
  if (edge === 'top') return fit.top;
  if (edge === 'bottom') return bottom(alcove, build, panel, along);
  if (panel === 'back') return backPanelSide(alcove, build, edge as Side, along);
  if (edge === 'front') return frontAt(alcove, panel, along) - fit.frontSetBack;
  return sidePanelBack(alcove, build, panel, along);
}

function backPanelSide(alcove: TrueAlcove, build: Build, side: Side, v: number): number {
  const { fit } = build;
  const limits = (u: number): number[] =>
    bothFaces(fit).map((face) => wallAt(alcove, side, seatAt(alcove, build, 'back', u, v) + face, v));
  return side === 'left'
    ? bisect((u) => u - Math.max(...limits(u)) - fit.cornerJoint, -FAR, FAR)
    : bisect((u) => u - Math.min(...limits(u)) + fit.cornerJoint, -FAR, FAR);
}

function sidePanelBack(alcove: TrueAlcove, build: Build, side: Side, v: number): number {
  const { fit } = build;
  const backPanelFace = fit.bed + fit.thickness;
  return bisect(
    (z) => {
      const limits = facesOf(alcove, build, side, z, v).map((x) => seatAt(alcove, build, 'back', x, v) + backPanelFace);
      return z - Math.max(...limits) - fit.cornerJoint;
    },
    -FAR,
    FAR,
  );
}

function bottom(alcove: TrueAlcove, build: Build, panel: PanelName, u: number): number {
  const { fit, rim } = build;
  return bisect(
    (v) => {
      const faces =
        panel === 'back'
          ? bothFaces(fit).map((face) => [u, seatAt(alcove, build, 'back', u, v) + face] as const)
          : facesOf(alcove, build, panel, u, v).map((x) => [x, u] as const);
      return v - Math.max(...faces.map(([x, z]) => rimAt(alcove, x, z) + contour(rim, z))) - fit.rimJoint;
    },
    -FAR,
    FAR,
  );
}

/** Distances of a panel's two faces from its wall. */
const bothFaces = ({ bed, thickness }: Fit): number[] => [bed, bed + thickness];

/** x of a side panel's two faces. */
const facesOf = (alcove: TrueAlcove, build: Build, side: Side, z: number, v: number): number[] =>
  bothFaces(build.fit).map((face) => seatAt(alcove, build, side, z, v) + (side === 'left' ? face : -face));

/** Rise of the rim over its plane where it rolls over to the apron; the profile's last point lies at the apron's face. */
function contour(rim: Rim, z: number): number {
  const points = contourPoints(rim);
  const next = points.findIndex(([at]) => at >= z);
  if (points.length === 0) return 0;
  if (next === -1) return points.at(-1)![1];
  if (next === 0) return points[0]![1];
  const [[z0, low], [z1, high]] = [points[next - 1]!, points[next]!];
  return low + ((high - low) * (z - z0)) / (z1 - z0);
}

/** Corners of the rim's contour as [z, rise]. */
export const contourPoints = ({ profile, width }: Rim): [z: number, rise: number][] =>
  profile.map(([outward, rise]) => [width - profile.at(-1)![0] + outward, rise]);
