import { constant } from '../dual';
import type { Side } from '../job-file';
import { fewestMarks, type Point } from '../panel';
import { type Body, makePiece, type Piece, type PieceEdge, type PieceNote, uprightStrip } from '../piece';
import { cutAngles, SQUARE } from './angle';
import { coverNotes, verticalCover } from './cover';
import { type Foot, footLine } from './foot';
import { mitreLine } from './mitreLine';
import type { OuterLine } from './outerLine';
import type { TrimSite } from './site';
import { tapePlaces } from './tape';

/** A strip that stands past the wall's front edge by no more than this needs no word, mm (common practice, no source). */
const UNSEEN = 0.5;

/**
 * The piece down a side panel's front edge: plumb at the outer line, from the side top to the rim or, past the apron, to
 * the floor; its lower end scribed to the tub.
 */
export function vertical(site: TrimSite, side: Side, outer: OuterLine): Piece {
  const { alcove, trim, panelFace, verticalWidth, lipWidth } = site;
  const line = outer.at.value;
  const inner = line - verticalWidth;
  const strip = uprightStrip(alcove, side, panelFace, line);
  const mitred = trim.joinery === 'mitre' && trim.sideTops;
  const headAt = (u: number): number => {
    if (mitred) return mitreLine(site).verticalHead(u - line);
    return trim.sideTops ? site.lowerEdge - trim.joint : site.job.fit.top;
  };
  const foot = footLine(site, side, strip, inner, line);

  const turned = (points: Point[]): Point[] => (side === 'left' ? points.reverse() : points);
  const loop = (from: number, { points }: Foot): Point[] =>
    turned([
      ...points.map(({ u, v }) => strip.toFlat(u, v)),
      strip.toFlat(line, headAt(line)),
      strip.toFlat(from, headAt(from)),
    ]);
  const face = loop(inner, foot);
  const bodies: Body[] = [{ back: face, face, from: 0, to: trim.thickness }];
  if (lipWidth > 0) {
    const lip = loop(line - lipWidth, footLine(site, side, strip, line - lipWidth, line));
    bodies.push({ back: lip, face: lip, from: -trim.lip, to: 0 });
  }

  const headSd = site.sd(outer.at);
  const edges: PieceEdge[] = [
    {
      name: 'head',
      method: 'saw',
      marks: [inner, line].map((u) => ({ at: strip.toFlat(u, headAt(u)), sd: mitred ? headSd : 0 })),
    },
    { name: 'foot', method: foot.points.length > 2 ? 'jigsaw' : 'saw', marks: footMarks() },
  ];
  const cover = verticalCover(site, site.panels[side], outer);
  const lowest = Math.min(...foot.points.map(({ v }) => v));
  return makePiece({
    id: `trim.${side}.vertical`,
    kind: 'vertical',
    name: `${side} side vertical`,
    wall: side,
    outline: face,
    thickness: trim.thickness,
    bodies,
    axis: 'y',
    edges,
    ends: [
      {
        name: 'head',
        joint: mitred ? 'mitre' : 'butt',
        ...headAngles(),
      },
      { name: 'foot', joint: 'scribe', mitre: SQUARE, bevel: SQUARE },
    ],
    stations: strip.stations(lowest, headAt(line)),
    tape: tapePlaces(face, 'y', trim.tapeSpacing),
    cover,
    stock: 'trim',
    notes: [...coverNotes(cover), ...footNotes(foot, outer)],
    cautions: ['saw', 'jigsaw', 'dust', 'adhesive'],
  });

  function headAngles() {
    const [[x0, y0], [x1, y1]] = [strip.toFlat(inner, headAt(inner)), strip.toFlat(line, headAt(line))];
    const ends = [constant(y0), constant(y1)] as const;
    return cutAngles({ mitre: { run: y1 - y0, over: Math.abs(x1 - x0), ends }, bevel: null, sd: site.sd });
  }

  /** The rim's part of the foot is a curve over u; what goes down the apron turns at its own points. */
  function footMarks() {
    const points = foot.points;
    const turn = points.findIndex(({ u }, i) => i > 0 && u <= points[i - 1]!.u);
    const curve = turn < 0 ? points : points.slice(0, turn);
    const chosen =
      curve.length < 3
        ? curve
        : fewestMarks(
            curve.map(({ u, v }) => ({ along: u, at: v })),
            site.job.fit.markTolerance,
          ).map((i) => curve[i]!);
    return [...chosen, ...points.slice(curve.length)].map(({ u, v, sd }) => ({ at: strip.toFlat(u, v), sd }));
  }
}

function footNotes({ onFloor }: Foot, { pastWall }: OuterLine): PieceNote[] {
  return [
    {
      text: onFloor
        ? 'scribe the foot to rim, apron and floor before cutting the head'
        : 'scribe the foot to the rim before cutting the head',
      howMuch: null,
    },
    ...(pastWall > UNSEEN
      ? [
          {
            text: "plumb, it stands past the wall's front edge; set the panels back by as much to keep it on the wall",
            howMuch: pastWall,
          },
        ]
      : []),
  ];
}
