import { type Alcove, towardsRoom } from '../alcove';
import type { Job, Side } from '../job-file';
import { apronAt, apronLine } from '../leg';
import { frontLine } from '../panel';
import type { Piece } from '../piece';
import type { ShelfPiece } from '../shelf';
import { ROOM, type TrimLines } from '../trim';
import { behindFront, type EdgeRule, offWall, overRimAt } from './rule';
import type { Rules } from './trimRules';

/** A leg: beside the apron, behind the front line, under its panel, over the floor. */
export function legRules(alcove: Alcove, job: Job, piece: Piece): Rules {
  const { fit, rim, legs } = job;
  const side = piece.wall as Side;
  const apron = apronLine(alcove, job, side, [fit.bed, fit.bed + fit.thickness]);
  return {
    'beside the tub': { depths: [0], clear: ([, y, z]) => z - apronAt(apron, y) - fit.rimJoint },
    front: { depths: [0], clear: (point) => behindFront(alcove, side, point) - fit.frontSetBack },
    top: {
      // heights are those of the back; the panel's lower edge clears the rim, and the leg ends a joint below it
      depths: [0],
      clear: ([, y, z]) => {
        const over = [fit.bed, fit.bed + fit.thickness].map((off) =>
          overRimAt(alcove, rim, [alcove[side].value(z, y) + towardsRoom(side) * off, y, z]),
        );
        return Math.min(...over) - fit.rimJoint + legs.joint;
      },
    },
    foot: { depths: [0], clear: ([, y]) => y + job.levelAboveFloor - legs.floorGap },
  };
}

/** A filler: room to the walls, the trim and the panel that it hides behind. */
export function fillerRules(lines: TrimLines, piece: Piece, outer: number | null): Rules {
  const { alcove, bare, job, trim, panelFace, panelBack, lipWidth, verticalWidth } = lines;
  const { fit } = job;
  const depths = [0, piece.thickness];
  if (piece.wall === 'back' || outer === null) {
    const end = (side: Side): EdgeRule => ({ depths, clear: (point) => offWall(bare, side, point) - ROOM });
    return { 'left end': end('left'), 'right end': end('right') };
  }
  const side = piece.wall as Side;
  const front: EdgeRule = { depths: [0], clear: ([, , z]) => outer - lipWidth - z };
  const behind = trim.top ? panelFace + (trim.joinery === 'butt' ? trim.thickness : 0) : 0;
  const panelEdge = frontLine(alcove, side, fit.frontSetBack);
  const apron = apronLine(alcove, job, side, [panelBack, panelFace]);
  return {
    'back end': { depths, clear: (point) => offWall(behind > 0 ? alcove : bare, 'back', point) - behind - ROOM },
    'front end': front,
    front,
    'beside the panel': { depths: [0], clear: ([, y, z]) => z - panelEdge(y).value - ROOM },
    'beside the tub': {
      depths: [0],
      clear: ([, y, z]) => z - Math.max(outer - verticalWidth, apronAt(apron, y) + fit.rimJoint),
    },
  };
}

/** A shelf: straight edges, a gap off both panels' faces. */
export function shelfRules(alcove: Alcove, { fit }: Job, { corner, thickness }: ShelfPiece, gap: number): Rules {
  const depths = [0, thickness];
  const off = fit.bed + fit.thickness + gap;
  return {
    'back edge': { depths, endsOnly: true, clear: (point) => offWall(alcove, 'back', point) - off },
    'side edge': { depths, endsOnly: true, clear: (point) => offWall(alcove, corner, point) - off },
  };
}
