import { edgeStretch, type Job, type Piece, type PieceEdge, type Point, type ShelfPiece } from '../../../core';
import { capital } from '../capital';
import type { Place, View } from '../drawing';
import { leaveExtra } from '../leaveExtra';
import { type Lengths, lengthsOf, SCRIBE_BEYOND } from '../lengths';
import { around, type Rectangle } from '../rectangle';
import { bracketFeatures } from './bracketFeatures';
import type { PieceDrawing, PieceEdgeDrawing, PieceFeature, PieceMarkDrawing } from './drawing';
import { pieceNotes } from './pieceNotes';
import { angleLines, cutFrom, pieceMethodWords, pieceStatement, placeWords } from './pieceWords';

/** Outlines that agree to this are one, mm. */
const SAME = 0.01;

/** Draws a piece's template as seen from its face (a shelf from above), or mirrored as seen from its back. */
export function pieceDrawing(piece: Piece | ShelfPiece, job: Job, view: View = 'face'): PieceDrawing {
  const lengths = lengthsOf(job);
  const sign = view === 'face' ? 1 : -1;
  const turn = ([x, y]: Point): Point => [x === 0 ? 0 : sign * x, y];
  const outline = piece.outline.map(turn);
  const bounds = around([piece.outline, ...piece.bodies.flatMap(({ back, face }) => [back, face])].flat().map(turn));
  const setting = { piece, lengths, sign, turn, bounds } as const;
  const edges: PieceEdgeDrawing[] = [];
  let number = 1;
  for (const edge of piece.edges) {
    if (edge.method === 'none' || edge.marks.length === 0) continue;
    edges.push(edgeOf(edge, number, setting));
    number += edge.marks.length;
  }
  const [body, ...others] = piece.bodies;
  const back = body && slants(body) ? body.back : null;
  const { along, across } = piece.size;
  const { fine } = lengths;
  return {
    id: piece.id,
    kind: piece.kind,
    view,
    title: capital(piece.name),
    statement: pieceStatement(piece.kind, view),
    wallWords: placeWords(piece, piece.id),
    outline,
    back: back?.map(turn) ?? null,
    lips: others.map(({ face }) => face.map(turn)),
    sign,
    axis: piece.axis,
    edges,
    notches: notchesOf(setting, outline),
    tapes: tapesOf(setting),
    brackets: bracketFeatures(piece, edges, lengths),
    sizeWords: `${fine(along).text} × ${fine(across).text}, ${fine(piece.thickness).text} thick, ${cutFrom(piece)}`,
    notes: pieceNotes(piece, job, lengths),
    cautions: piece.cautions,
    breaks: [],
    bounds,
  };
}

interface Setting {
  piece: Piece;
  lengths: Lengths;
  sign: 1 | -1;
  turn: (point: Point) => Point;
  bounds: Rectangle;
}

function edgeOf(edge: PieceEdge, firstNumber: number, { piece, lengths, turn, bounds }: Setting): PieceEdgeDrawing {
  const others = piece.edges.filter((other) => other !== edge).flatMap(({ marks }) => marks.map(({ at }) => at));
  const own = edge.marks.map(({ at }) => at);
  const path = edgeStretch(piece.outline, own, others).map(turn);
  const place = placeOf(path, bounds);
  const marks = edge.marks.map(({ at, sd }, i): PieceMarkDrawing => {
    const drawn = turn(at);
    const [fromLeft, up] = [lengths.fine(drawn[0] - bounds.left), lengths.fine(drawn[1] - bounds.bottom)];
    const plusMinus = lengths.plusMinus(sd);
    const scribe = plusMinus.mm > SCRIBE_BEYOND;
    const [left, high] = [`${fromLeft.text} from left`, `${up.text} up`];
    const [first, second] = place === 'left' || place === 'right' ? [left, high] : [high, left];
    return {
      number: firstNumber + i,
      at: drawn,
      fromLeft,
      up,
      plusMinus,
      scribe,
      lines: [[`${firstNumber + i}: ${first}`, plusMinus.text, scribe ? '*' : ''].filter(Boolean).join(' '), second],
    };
  });
  const end = piece.ends.find(({ name }) => name === edge.name);
  return {
    name: edge.name,
    title: capital(edge.name),
    place,
    method: edge.method,
    methodWords: [pieceMethodWords[edge.method], ...(end ? [end.joint] : [])].join(', '),
    angles: end ? angleLines(end, piece.axis) : [],
    path,
    marks,
    leave: leaveExtra(marks, lengths)?.words ?? null,
  };
}

/** The side of the piece that an edge lies on: where its middle is farthest out for the piece's size. */
function placeOf(path: readonly Point[], { left, right, bottom, top }: Rectangle): Place {
  const middle = around([path[0]!, path.at(-1)!]);
  const x = (middle.left + middle.right - left - right) / (right - left || 1);
  const y = (middle.bottom + middle.top - bottom - top) / (top - bottom || 1);
  if (Math.abs(x) > Math.abs(y)) return x < 0 ? 'left' : 'right';
  return y < 0 ? 'bottom' : 'top';
}

function notchesOf({ piece, lengths, sign, bounds }: Setting, outline: readonly Point[]): PieceFeature[] {
  return piece.notches.map(({ corner, along, across, sd }) => {
    const left = corner.includes('left') === (sign === 1);
    const lower = corner.includes('lower');
    const target: Point = [
      left ? bounds.left + along : bounds.right - along,
      lower ? bounds.bottom + across : bounds.top - across,
    ];
    const at = outline.reduce((best, point) => (apart(point, target) < apart(best, target) ? point : best));
    return {
      at,
      line: null,
      place: left ? 'left' : 'right',
      lines: [
        `Notch, ${corner}`,
        `${lengths.fine(along).text} ${lengths.plusMinus(sd).text} along`,
        `${lengths.fine(across).text} across`,
      ],
    };
  });
}

function tapesOf({ piece, lengths, turn, bounds }: Setting): PieceFeature[] {
  const { left, right, bottom, top } = bounds;
  return piece.tape.map((place) => {
    if (piece.axis === 'y') {
      const y = turn([0, place])[1];
      return {
        at: [right, y],
        line: [
          [left, y],
          [right, y],
        ],
        place: 'right',
        lines: ['tape', `${lengths.coarse(y - bottom).text} up`],
      };
    }
    const x = turn([place, 0])[0];
    return {
      at: [x, top],
      line: [
        [x, bottom],
        [x, top],
      ],
      place: 'top',
      lines: ['tape', `${lengths.coarse(x - left).text} from left`],
    };
  });
}

/** Whether a cut slants through the thickness. */
const slants = ({ back, face }: Piece['bodies'][number]): boolean =>
  back.some((point, i) => apart(point, face[i]!) > SAME);

const apart = ([ax, ay]: Point, [bx, by]: Point): number => Math.hypot(ax - bx, ay - by);
