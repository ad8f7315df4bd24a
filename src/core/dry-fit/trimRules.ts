import type { Side } from '../job-file';
import { apronAt, apronLine } from '../leg';
import { levelOverSquare, type Piece, type Vec3 } from '../piece';
import { cornerAngle } from '../survey';
import { goesToFloor, halfJoint, mitreLine, standsAbove, type TrimLines } from '../trim';
import { type EdgeRule, offWall, overRimAt } from './rule';

export type Rules = Record<string, EdgeRule>;

/** The top piece's ends: over the side panels' faces below, against the side walls above; or half a mitre's joint. */
export function topRules(lines: TrimLines, piece: Piece): Rules {
  const { alcove, bare, job, trim, panelFace } = lines;
  const depths = [0, piece.thickness];
  const notchTop = job.fit.top + trim.joint;
  const mitred = piece.ends.some(({ joint }) => joint === 'mitre');
  const notched = piece.notches.length > 0;
  const above = standsAbove(lines);
  const rule = (side: Side): EdgeRule => {
    if (mitred) {
      return {
        depths,
        clear: (point, w) => {
          const square = levelOverSquare(alcove, side, panelFace, point[1]);
          const half = halfJoint(trim.joint, cornerAngle(alcove, side, point[1]).value);
          return offWall(alcove, side, point) - panelFace - w * square - half;
        },
      };
    }
    return {
      depths: (notched || above) && trim.lip > 0 ? [-trim.lip, ...depths] : depths,
      clear: (point, w, { middle, level }) => {
        // heights are those of the back, which lies on the panel
        if (notched && level) return w === 0 ? point[1] - notchTop : Infinity;
        const onWall = above || (notched && middle[1] > notchTop);
        // a lip stands above the notch alone
        if (w < 0 && !onWall) return Infinity;
        return offWall(onWall ? bare : alcove, side, point) - (onWall ? 0 : panelFace) - trim.joint;
      },
    };
  };
  return { 'left end': rule('left'), 'right end': rule('right') };
}

/** A side top: its back end against the top piece's face or half a mitre's joint, its front end at the outer line. */
export function sideTopRules(lines: TrimLines, piece: Piece, outer: number): Rules {
  const { alcove, trim, panelFace, upperEdge } = lines;
  const side = piece.wall as Side;
  const end = (name: string) => piece.ends.find((each) => each.name === name)?.joint;
  const outerCorner = alcove[side].value(panelFace, upperEdge);
  const depths = [0, piece.thickness];
  return {
    'back end': {
      depths,
      clear: (point, w) => {
        const square = levelOverSquare(alcove, 'back', outerCorner, point[1]);
        const clearance =
          end('back end') === 'mitre'
            ? w * square + halfJoint(trim.joint, cornerAngle(alcove, side, point[1]).value)
            : (trim.top ? trim.thickness * square : 0) + trim.joint;
        return offWall(alcove, 'back', point) - panelFace - clearance;
      },
    },
    'front end': {
      // a plumb line up the panel's face, where the strip's back lies
      depths: [0],
      clear: ([, y, z]) => outer + (end('front end') === 'mitre' ? mitreLine(lines).sideTopFront(y) : 0) - z,
    },
  };
}

/** A vertical: its head under the side top, its foot over rim and floor or beside the apron. */
export function verticalRules(lines: TrimLines, piece: Piece, outer: number): Rules {
  const { alcove, job, trim, panelFace, lowerEdge, verticalWidth } = lines;
  const side = piece.wall as Side;
  const mitred = piece.ends.some(({ name, joint }) => name === 'head' && joint === 'mitre');
  const head = trim.sideTops ? lowerEdge - trim.joint : job.fit.top;
  const { rim, fit } = job;
  const apron = apronLine(alcove, job, side, [panelFace, panelFace + trim.thickness]);
  const floor = -job.levelAboveFloor + trim.floorGap;
  const onFloor = goesToFloor(lines, apron, outer);
  const inner = outer - verticalWidth;
  return {
    head: {
      depths: [0],
      clear: ([, y, z]) => (mitred ? mitreLine(lines).verticalHead(z - outer) : head) - y,
    },
    foot: {
      depths: trim.lip > 0 ? [-trim.lip, 0, piece.thickness] : [0, piece.thickness],
      clear: clearOfTub,
    },
  };

  /**
   * Over the rim at every depth; beside the apron and over the floor as set out on its back. At its own inner edge the
   * strip can reach in no further.
   */
  function clearOfTub(point: Vec3, w: number): number {
    const [, y, z] = point;
    const over = overRimAt(alcove, rim, point) - fit.rimJoint;
    if (!onFloor) return over;
    const past = z > rim.width + fit.rimJoint + EDGE;
    if (w !== 0) return past || over < -BESIDE ? Infinity : over;
    const clear = Math.min(past ? beside(point) : roundCorner(over, beside(point)), y - floor);
    return z <= inner + EDGE ? Math.min(clear, 0) : clear;
  }

  function beside([, y, z]: Vec3): number {
    return z - apronAt(apron, y) - fit.rimJoint;
  }
}

/** Clearance of a corner that a point may pass on either side: the nearer side's, unless it is past that one. */
const roundCorner = (a: number, b: number): number => (Math.min(a, b) >= -EDGE ? Math.min(a, b) : Math.max(a, b));

/** A point this far under the rim is beside it, mm. */
const BESIDE = 1;
/** How close to an edge counts as on it, mm. */
const EDGE = 0.02;

/** An angle strip: its foot over the rim, its head under the trim. */
export function angleRules({ alcove, job, trim, lowerEdge }: TrimLines, piece: Piece): Rules {
  const head = trim.top || trim.sideTops ? lowerEdge - trim.joint : job.fit.top;
  const depths = [0, piece.thickness];
  return {
    head: { depths, clear: ([, y]) => head - y },
    foot: { depths, clear: (point) => overRimAt(alcove, job.rim, point) - job.fit.rimJoint },
  };
}
