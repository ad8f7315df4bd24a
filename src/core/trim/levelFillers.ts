import { type Dual, shift } from '../dual';
import { SIDES, type Side } from '../job-file';
import { endOfStrip, levelStrip, offBack, offSide, type Piece, type WallStrip } from '../piece';
import { fillerPiece, LEAST_FILLER, ROOM } from './fillerPiece';
import type { OuterLine } from './outerLine';
import type { TrimSite } from './site';

/** Strips over the panels' tops, behind the part of the trim that stands above them. */
export function levelFillers(site: TrimSite, outers: Record<Side, OuterLine>): Piece[] {
  const { trim, upperEdge, job, lipWidth } = site;
  const low = job.fit.top + ROOM;
  const high = upperEdge - (lipWidth > 0 ? lipWidth + ROOM : 0);
  if (high - low < LEAST_FILLER) return [];
  return [
    ...(trim.top ? [topFiller(site, low, high)] : []),
    ...(trim.sideTops ? SIDES.map((side) => sideFiller(site, side, outers[side], low, high)) : []),
  ];
}

function topFiller(site: TrimSite, low: number, high: number): Piece {
  const { alcove, bare, job, panelBack } = site;
  const strip = levelStrip(alcove, 'back', panelBack, low);
  const end = (side: Side, height: number): Dual => {
    const start = bare[side].value(0, height);
    const faces = [0, job.fit.thickness];
    return endOfStrip(strip, 'u', height, faces, offSide(bare, side, ROOM), side === 'left' ? 1 : -1, start);
  };
  return levelFiller(site, { id: 'fillers.top', name: 'filler behind the top piece' }, strip, [low, high], (height) => [
    { name: 'left end', u: end('left', height) },
    { name: 'right end', u: end('right', height) },
  ]);
}

function sideFiller(site: TrimSite, side: Side, outer: OuterLine, low: number, high: number): Piece {
  const { alcove, bare, job, panelFace, panelBack, lipWidth, trim } = site;
  const strip = levelStrip(alcove, side, panelBack, low);
  // Butted, the top piece goes past the filler's end to the wall; mitred, it ends in front of the side panel's face.
  const behind = trim.top ? panelFace + (trim.joinery === 'butt' ? trim.thickness : 0) : 0;
  const obstacle = offBack(behind > 0 ? alcove : bare, behind + ROOM);
  const front = shift(outer.at, -lipWidth);
  const named = { id: `fillers.${side}.top`, name: `filler behind the ${side} side top` };
  return levelFiller(site, named, strip, [low, high], (height) => [
    { name: 'back end', u: endOfStrip(strip, 'u', height, [0, job.fit.thickness], obstacle, 1, panelFace) },
    { name: 'front end', u: front },
  ]);
}

type Ends = readonly { name: string; u: Dual }[];

function levelFiller(
  site: TrimSite,
  named: { id: string; name: string },
  strip: WallStrip,
  [low, high]: [number, number],
  ends: (height: number) => Ends,
): Piece {
  const [below, above] = [ends(low), ends(high)];
  const mark = ({ u }: Ends[number], height: number) => ({ at: strip.toFlat(u.value, height), sd: site.sd(u) });
  const edges = below.map((end, k) => ({
    name: end.name,
    method: 'knife' as const,
    marks: [mark(end, low), mark(above[k]!, high)],
  }));
  const outline = [...edges[0]!.marks, ...[...edges[1]!.marks].reverse()].map(({ at }) => at);
  const stations = strip.stations(below[0]!.u.value, below[1]!.u.value);
  return fillerPiece(site, { ...named, wall: strip.wall, axis: 'x', outline, edges, stations });
}
