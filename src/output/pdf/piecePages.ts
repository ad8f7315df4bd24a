import { type Job, type Result, Z_95 } from '../../core';
import { lengthsOf } from '../drawing';
import { capital } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

type Piece = Result['pieces']['trim'][number];
type Shelf = Result['pieces']['shelves'][number];

const methods: Record<Piece['edges'][number]['method'], string> = {
  saw: 'mitre saw',
  none: "the stock's own edge",
  factory: 'factory edge kept',
  plane: 'plane or sand',
  knife: 'knife: score and snap',
  jigsaw: 'jigsaw',
};
const cautions: Record<Piece['cautions'][number], string> = {
  saw: 'Mitre saw: guard on, piece held against the fence, hands clear, let the blade stop.',
  knife: 'Knife: sharp blade, straightedge clamped, cut away from the body.',
  jigsaw: 'Jigsaw: clamp both sides, hands from under the work.',
  dust: 'Dust: extraction or outdoors, and a respirator rated for it.',
  adhesive: 'Adhesive: air the room, no flame, gloves.',
  'thin-piece': 'Thin pieces break and jump: hold them with a push stick or a clamp, never by hand near a blade.',
  load: 'A shelf is no seat and no grab bar; nothing that a person may lean on hangs from it.',
};

/** Trim, legs, fillers and shelves: sizes, ends, notches and marks of each; null where the job has none. */
export function piecePages(pack: Pack, job: Job, { pieces }: Result): Leaf | null {
  const all = [...pieces.trim, ...pieces.legs, ...pieces.shelves, ...pieces.fillers];
  if (all.length === 0) return null;
  const flow = new Flow(
    pack,
    'Trim, legs and shelves',
    'Seen from the face, the way up each piece is fitted; measured from its own left and lower ends. ± holds in 95 of 100 cases; where it is large, cut long and scribe on the dry fit.',
  );
  const first = flow.leaf;
  sizeTable(flow, all, job);
  for (const piece of all) pieceCard(flow, piece, job);
  flow.heading('Take care');
  flow.list(
    [...new Set(all.flatMap((piece) => piece.cautions))].map((caution) => cautions[caution]),
    '!',
    8 * POINT,
  );
  return first;
}

function sizeTable(flow: Flow, all: Piece[], job: Job): void {
  const { fine, plusMinus } = lengthsOf(job);
  flow.table(
    [
      { title: 'Piece', bold: true },
      { title: 'Cut from' },
      { title: 'Length', align: 'end', bold: true },
      { title: 'Width', align: 'end' },
      { title: 'Thick', align: 'end' },
      { title: 'Widest ±', align: 'end' },
    ],
    all.map(({ name, stock, size, thickness, worst95 }) => [
      capital(name),
      stock.replace('-', ' '),
      fine(size.along).text,
      fine(size.across).text,
      fine(thickness).text,
      plusMinus(worst95 / Z_95).text,
    ]),
    8 * POINT,
  );
}

function pieceCard(flow: Flow, piece: Piece | Shelf, job: Job): void {
  const { fine, coarse, plusMinus } = lengthsOf(job);
  const low = { x: Math.min(...piece.outline.map(([x]) => x)), y: Math.min(...piece.outline.map(([, y]) => y)) };
  flow.heading(capital(piece.name));
  for (const { name, joint, mitre, bevel } of piece.ends) {
    flow.paragraph(
      `${capital(name)}: ${joint}, ${angleWords('in the face', mitre)}, ${angleWords('through the thickness', bevel)}`,
    );
  }
  for (const { corner, along, across, sd } of piece.notches) {
    flow.paragraph(`Notch, ${corner}: ${fine(along).text} ${plusMinus(sd).text} along by ${fine(across).text} across`);
  }
  for (const { name, method, marks } of piece.edges.filter((edge) => edge.method !== 'none')) {
    const places = marks.map(({ at: [x, y], sd }) =>
      `${fine(x - low.x).text} from the left, ${fine(y - low.y).text} up ${plusMinus(sd).text}`.trim(),
    );
    flow.paragraph(`${capital(name)} (${methods[method]}): ${places.join('; ')}`);
  }
  if ('bracketLines' in piece) {
    flow.paragraph(
      `Corner ${piece.angle.degrees.toFixed(1)}° ±${(Z_95 * piece.angle.sd).toFixed(1)}°; falls ${fine(piece.slope * 0.3048).text} in each foot (${(piece.slope / 10).toFixed(1)} %) towards the room; top ${coarse(Math.abs(piece.height)).text} ${piece.height < 0 ? 'below' : 'above'} the level line in the corner`,
    );
    for (const { wall, min, max } of piece.gaps) {
      flow.paragraph(`Gap at the ${wall} wall: ${fine(min).text} to ${fine(max).text}, for sealant`);
    }
  }
  if (piece.tape.length > 0)
    flow.paragraph(
      `Tape while it cures at ${piece.tape.map((at) => coarse(at - low[piece.axis]).text).join(', ')} from its ${piece.axis === 'x' ? 'left' : 'lower'} end`,
    );
  if (piece.cover !== null && piece.cover.taper > 0) {
    flow.paragraph(
      `Hides a taper of ${fine(piece.cover.taper).text}; laps the panel by ${fine(piece.cover.lap).text} at least${piece.cover.shows > 0 ? `; ${fine(piece.cover.shows).text} stays in sight` : ''}`,
    );
  }
  flow.list(piece.notes.map(({ text, howMuch }) => (howMuch === null ? text : `${text}: ${coarse(howMuch).text}`)));
}

function angleWords(where: string, { degrees, sd }: { degrees: number; sd: number }): string {
  if (Math.abs(degrees) < 0.05) return `square ${where}`;
  return `${degrees.toFixed(1)}° ±${(Math.ceil(Z_95 * sd * 10) / 10).toFixed(1)}° off square ${where}`;
}
