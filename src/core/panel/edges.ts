import type { Alcove } from '../alcove';
import { add, constant, type Dual, fixedPoint, larger, shift, smaller } from '../dual';
import type { Job, Side } from '../job-file';
import { contourKinks, contourRise } from './contour';
import type { EdgeName, PanelName, Point } from './panel';

/** Position of an edge at a place along it, wall coordinates, mm. */
export type EdgeAt = (along: number) => Dual;

/**
 * The four edges of a panel on its wall. `lower` and `upper` bound u at each height v; `bottom` and `top` bound v at
 * each u.
 */
export interface PanelEdges {
  lower: { name: EdgeName; at: EdgeAt };
  upper: { name: EdgeName; at: EdgeAt };
  bottom: EdgeAt;
  /** u at which the bottom turns sharply, ascending */
  bottomKinks: number[];
  top: EdgeAt;
}

/** Edge rules of design section 5: cut square, clear of the neighbour at the tighter of the panel's two faces. */
export function panelEdges(alcove: Alcove, job: Job, panel: PanelName): PanelEdges {
  return panel === 'back' ? backEdges(alcove, job) : sideEdges(alcove, job, panel);
}

/** Which way the room lies from a side wall: +1 from the left wall, −1 from the right. */
export const towardsRoom = (side: Side): 1 | -1 => (side === 'left' ? 1 : -1);

function backEdges(alcove: Alcove, { fit, rim }: Job): PanelEdges {
  const faces = [fit.bed, fit.bed + fit.thickness];

  const corner =
    (side: Side): EdgeAt =>
    (height) => {
      const v = constant(height);
      const joint = towardsRoom(side) * fit.cornerJoint;
      const [wallFace, roomFace] = faces.map((offset) =>
        fixedPoint(
          (u) => shift(alcove[side].at(shift(alcove.back.at(u, v), offset), v), joint),
          alcove[side].value(0, height),
        ),
      );
      return side === 'left' ? larger(wallFace!, roomFace!) : smaller(wallFace!, roomFace!);
    };

  const bottom: EdgeAt = (along) => {
    const u = constant(along);
    const [wallFace, roomFace] = faces.map((offset) =>
      fixedPoint(
        (v) => {
          const z = shift(alcove.back.at(u, v), offset);
          return shift(add(alcove.rim.at(u, z), contourRise(rim, z)), fit.rimJoint);
        },
        alcove.rim.value(along, 0),
      ),
    );
    return larger(wallFace!, roomFace!);
  };

  return {
    lower: { name: 'left', at: corner('left') },
    upper: { name: 'right', at: corner('right') },
    bottom,
    bottomKinks: [],
    top: () => constant(fit.top),
  };
}

function sideEdges(alcove: Alcove, { fit, rim }: Job, side: Side): PanelEdges {
  const faces = [fit.bed, fit.bed + fit.thickness].map((offset) => towardsRoom(side) * offset);
  const backPanelFace = fit.bed + fit.thickness;

  const back: EdgeAt = (height) => {
    const v = constant(height);
    const [wallFace, roomFace] = faces.map((offset) =>
      fixedPoint(
        (z) => shift(alcove.back.at(shift(alcove[side].at(z, v), offset), v), backPanelFace + fit.cornerJoint),
        0,
      ),
    );
    return larger(wallFace!, roomFace!);
  };

  const bottom: EdgeAt = (along) => {
    const z = constant(along);
    const rise = contourRise(rim, z);
    const [wallFace, roomFace] = faces.map((offset) =>
      fixedPoint(
        (v) => {
          const x = shift(alcove[side].at(z, v), offset);
          return shift(add(alcove.rim.at(x, z), rise), fit.rimJoint);
        },
        alcove.rim.value(0, along),
      ),
    );
    return larger(wallFace!, roomFace!);
  };

  return {
    lower: { name: 'back', at: back },
    upper: {
      name: 'front',
      at: (height) => shift(alcove.front[side].at(constant(0), constant(height)), -fit.frontSetBack),
    },
    bottom,
    bottomKinks: contourKinks(rim),
    top: () => constant(fit.top),
  };
}

/** Where two crossing edges meet: u = side(v), v = level(u); slopes are small, so iteration settles fast. */
export function meet(side: EdgeAt, level: EdgeAt, start: Point): Point {
  let [u, v] = start;
  for (let step = 0; step < 50; step++) {
    const nextU = side(v).value;
    const nextV = level(nextU).value;
    const moved = Math.abs(nextU - u) + Math.abs(nextV - v);
    u = nextU;
    v = nextV;
    if (moved < 1e-10) break;
  }
  return [u, v];
}
