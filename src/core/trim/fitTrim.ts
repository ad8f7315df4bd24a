import type { Matrix } from 'ml-matrix';
import type { Alcove } from '../alcove';
import { type Job, SIDES, type Side, type WallName } from '../job-file';
import { type Panel, type Problem, polygonArea } from '../panel';
import type { Piece } from '../piece';
import { angleStrip } from './angleStrip';
import { levelFillers } from './levelFillers';
import { type OuterLine, outerLine } from './outerLine';
import { sideTop } from './sideTop';
import { type TrimSite, trimSite } from './site';
import { topPiece } from './topPiece';
import { vertical } from './vertical';
import { verticalFillers } from './verticalFillers';

export interface FittedTrim {
  trim: Piece[];
  fillers: Piece[];
  problems: Problem[];
}

/** All trim that the job asks for, fitted to the alcove, its panels and legs, and the filler strips behind it. */
export function fitTrim(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  panels: Record<WallName, Panel>,
  legs: readonly Piece[],
  seats = alcove,
): FittedTrim {
  const site = trimSite(alcove, covariance, job, panels, seats);
  const wanted = job.trim;
  const outer = (side: Side): OuterLine =>
    outerLine(
      site,
      side,
      legs.some(({ wall }) => wall === side),
    );
  const outers = { left: outer('left'), right: outer('right') };
  const made: Piece[] = [
    ...(wanted.top ? [topPiece(site)] : []),
    ...SIDES.flatMap((side) => [
      ...(wanted.sideTops ? [sideTop(site, side, outers[side])] : []),
      ...(wanted.verticals ? [vertical(site, side, outers[side])] : []),
      ...(wanted.insideCorners ? [angleStrip(site, side)] : []),
    ]),
  ];
  const trim = made.filter(hasRoom);
  const fillers = [
    ...levelFillers(site, outers),
    ...(wanted.verticals ? SIDES.flatMap((side) => verticalFillers(site, side, outers[side])) : []),
  ];
  return {
    trim,
    fillers: fillers.filter(hasRoom),
    problems: [
      ...made.filter((piece) => !hasRoom(piece)).map(noRoom),
      ...(trim.length === 0 ? [] : problemsOf(site, trim)),
    ],
  };
}

/** False where both ends of a piece have passed each other, so that nothing is left of it. */
const hasRoom = ({ bodies }: Piece): boolean =>
  bodies.every(({ back, face }) => polygonArea(back) > 0 && polygonArea(face) > 0);

const noRoom = ({ id }: Piece): Problem => ({
  where: `pieces.${id}`,
  what: 'there is no room for the piece between its two ends; check the height of the panels and the widths of the trim',
  howMuch: null,
});

function problemsOf({ job, panelFace }: TrimSite, trim: readonly Piece[]): Problem[] {
  const problems: Problem[] = [];
  if (job.trim.lip > panelFace) {
    problems.push({
      where: 'pieces.trim',
      what: 'the lip is deeper than panel and bed together, so the trim would stand off the panel; use a shallower lip',
      howMuch: job.trim.lip - panelFace,
    });
  }
  for (const { id, cover, size, stock } of trim) {
    if (cover !== null && cover.shows > 0) {
      problems.push({
        where: `pieces.${id}`,
        what: "the trim is too narrow to hide the panel's edge; use a wider strip",
        howMuch: cover.shows,
      });
    }
    const longest = Math.max(...job.trim.stock.map(({ length }) => length));
    if (stock === 'trim' && size.along + job.trim.allowance > longest) {
      problems.push({
        where: `pieces.${id}`,
        what: 'the piece is longer than any stock length; list a longer one, or splice it',
        howMuch: size.along + job.trim.allowance - longest,
      });
    }
  }
  return problems;
}
