import type { Side } from '../job-file';
import { apronAt, apronLine } from '../leg';
import { type Piece, uprightStrip } from '../piece';
import { fillerPiece, LEAST_FILLER, ROOM } from './fillerPiece';
import { footLine } from './foot';
import type { OuterLine } from './outerLine';
import type { TrimSite } from './site';

/** A wedge is cut off where it is narrower than this, mm (common practice, no source). */
const LEAST_TIP = 2;

/** Strips behind a vertical: the wedge in front of the panel's edge, and beside the tub where no leg is. */
export function verticalFillers(site: TrimSite, side: Side, outer: OuterLine): Piece[] {
  const line = outer.at.value;
  const strip = uprightStrip(site.alcove, side, site.panelBack, line);
  const { onFloor } = footLine(site, side, strip, line - site.verticalWidth, line);
  return [
    wedge(site, side, outer, onFloor ? outer.low : rimLevel(site, side, outer)),
    onFloor && !outer.withLeg ? besideTub(site, side, outer) : null,
  ].filter((each) => each !== null);
}

/** Where a vertical that ends on the rim ends at its outer edge. */
function rimLevel(site: TrimSite, side: Side, { at, low }: OuterLine): number {
  const strip = uprightStrip(site.alcove, side, site.panelBack, at.value);
  const { points } = footLine(site, side, strip, at.value - LEAST_TIP, at.value);
  return Math.max(low, ...points.map(({ v }) => v));
}

/** Between the panel's front edge, which follows the wall, and the plumb outer line; null where too thin. */
function wedge(site: TrimSite, side: Side, outer: OuterLine, bottom: number): Piece | null {
  const { alcove, panelBack, lipWidth, trim, lowerEdge, job } = site;
  const front = outer.at.value - lipWidth;
  const strip = uprightStrip(alcove, side, panelBack, front);
  const widthAt = (height: number): number => front - outer.panelEdge(height).value - ROOM;
  const span = clipToTip(widthAt, bottom, trim.sideTops ? lowerEdge : job.fit.top);
  if (span === null || Math.max(...span.map(widthAt)) < LEAST_FILLER) return null;

  const mark = (u: number, v: number, sd: number) => ({ at: strip.toFlat(u, v), sd });
  const panelSide = span.map((height) => {
    const edge = outer.panelEdge(height);
    return mark(edge.value + ROOM, height, site.sd(edge));
  });
  const frontSide = span.map((height) => mark(front, height, site.sd(outer.at)));
  return fillerPiece(site, {
    id: `fillers.${side}.vertical`,
    name: `filler behind the ${side} side vertical`,
    wall: side,
    axis: 'y',
    outline: [...panelSide, ...[...frontSide].reverse()].map(({ at }) => at),
    edges: [
      { name: 'beside the panel', method: 'knife', marks: panelSide },
      { name: 'front', method: 'knife', marks: frontSide },
    ],
    stations: strip.stations(...span),
  });
}

/** From the apron to the outer line, below the panel; null where too thin. */
function besideTub(site: TrimSite, side: Side, outer: OuterLine): Piece | null {
  const { alcove, job, panelBack, panelFace, lipWidth, trim } = site;
  const front = outer.at.value - lipWidth;
  const behind = outer.at.value - site.verticalWidth;
  const strip = uprightStrip(alcove, side, panelBack, front);
  const apron = apronLine(alcove, job, side, [panelBack, panelFace]);
  const floor = -job.levelAboveFloor + trim.floorGap;
  const head = outer.low - ROOM;
  const turns = apron.map(({ y }) => y.value).filter((height) => height < head && height > floor);
  const heights = [head, ...turns, floor];
  const inner = heights.map((height) => Math.max(behind, apronAt(apron, height) + job.fit.rimJoint));
  if (front - Math.min(...inner) < LEAST_FILLER) return null;

  const mark = (u: number, v: number, sd: number) => ({ at: strip.toFlat(u, v), sd });
  const tubSide = heights.map((height, i) => mark(inner[i]!, height, job.rim.contourSd));
  const frontSide = [floor, head].map((height) => mark(front, height, site.sd(outer.at)));
  return fillerPiece(site, {
    id: `fillers.${side}.foot`,
    name: `filler behind the foot of the ${side} side vertical`,
    wall: side,
    axis: 'y',
    outline: [...tubSide, ...frontSide].map(({ at }) => at),
    edges: [
      { name: 'beside the tub', method: 'knife', marks: tubSide },
      { name: 'front', method: 'knife', marks: frontSide },
    ],
    stations: strip.stations(floor, head),
  });
}

/** Heights between which a width that grows evenly is at least a tip's; null where it never is. */
function clipToTip(widthAt: (height: number) => number, low: number, high: number): [number, number] | null {
  const [a, b] = [widthAt(low) - LEAST_TIP, widthAt(high) - LEAST_TIP];
  if (a < 0 && b < 0) return null;
  const crossing = low + ((high - low) * a) / (a - b);
  return [a < 0 ? crossing : low, b < 0 ? crossing : high];
}
