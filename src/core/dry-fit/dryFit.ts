import { adjust } from '../adjust';
import { type Alcove, restrained } from '../alcove';
import type { Job, Side } from '../job-file';
import type { EdgeName, Panel, Point } from '../panel';
import { edgeStretch, type Fold, fold, foldPanel, type Piece } from '../piece';
import type { Result } from '../result';
import { seatPanels } from '../seat';
import type { ShelfPiece } from '../shelf';
import { outerLine, trimLines } from '../trim';
import { measureEdge } from './measureEdge';
import { panelRules } from './panelRules';
import { DRY_FIT_TOLERANCE, type DryFit, type EdgeFit, type PieceFit } from './report';
import { fillerRules, legRules, shelfRules } from './sheetRules';
import { angleRules, type Rules, sideTopRules, topRules, verticalRules } from './trimRules';

/** A template as it was read back: flat coordinates of the piece or, of a panel, of its sheet; mm. */
export interface FlatTemplate {
  /** of the face */
  outline: Point[];
  /** at the back, where a cut slants through the thickness */
  back: Point[] | null;
  holes: { centre: Point; diameter: number }[];
}

export type ReadBack = { ok: true; template: FlatTemplate } | { ok: false; why: string };

/**
 * The virtual dry fit: every template, as read back from its file, folded up into the adjusted alcove and measured
 * against the surfaces that its edges must clear with their joints.
 * @param templates by `panels.left` or the piece's id
 */
export function dryFit(job: Job, result: Result, templates: ReadonlyMap<string, ReadBack>): DryFit {
  const { alcove } = restrained(adjust(job).alcove, job.fit.top);
  return dryFitIn(alcove, job, result, templates, seatPanels(alcove, job).edges);
}

/**
 * The same in an alcove known beforehand.
 * @param seats the alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function dryFitIn(
  alcove: Alcove,
  job: Job,
  { panels, pieces }: Pick<Result, 'panels' | 'pieces'>,
  templates: ReadonlyMap<string, ReadBack>,
  seats = alcove,
): DryFit {
  const found: PieceFit[] = [];
  const unread: DryFit['unread'] = [];
  const take = (piece: string, fit: (template: FlatTemplate) => EdgeFit[]): void => {
    const read = templates.get(piece) ?? { ok: false as const, why: 'there is no template of it' };
    if (!read.ok) unread.push({ piece, why: read.why });
    else found.push({ piece, edges: fit(read.template) });
  };
  for (const panel of [panels.back, panels.left, panels.right]) {
    take(`panels.${panel.name}`, (template) => fitOfPanel(alcove, seats, job, panel, template));
  }
  const rulesOf = pieceRules(alcove, seats, job, pieces);
  for (const piece of [...pieces.trim, ...pieces.legs, ...pieces.fillers, ...pieces.shelves]) {
    take(piece.id, (template) => fitOfPiece(piece, rulesOf(piece), template));
  }
  const worst = worstOf(found);
  return {
    tolerance: DRY_FIT_TOLERANCE,
    fits: unread.length === 0 && (worst === null || worst.by <= DRY_FIT_TOLERANCE),
    worst,
    pieces: found,
    unread,
  };
}

function fitOfPanel(alcove: Alcove, seats: Alcove, job: Job, panel: Panel, template: FlatTemplate): EdgeFit[] {
  const place = foldPanel(seats, job, panel);
  const rules = panelRules(alcove, seats, job, panel.name);
  const names = (Object.keys(panel.edges) as EdgeName[]).filter((name) => rules[name] !== undefined);
  const marks = (name: EdgeName): Point[] => panel.edges[name]!.marks.map(({ sheet }) => sheet);
  const edges = names.map((name) => {
    const others = names.filter((other) => other !== name).flatMap(marks);
    const face = edgeStretch(template.outline, marks(name), others);
    return measureEdge(name, { face, back: null }, place, panel.thickness, rules[name]!);
  });
  return [...edges, ...panel.holes.map((hole) => fitOfHole(hole, template, place))];
}

/** How far a hole's centre or its rim lies from where it must be: counted as a gap, for it has no inside. */
function fitOfHole({ id, sheet, diameter }: Panel['holes'][number], { holes }: FlatTemplate, place: Fold): EdgeFit {
  const off = holes.map(
    (hole) => Math.hypot(hole.centre[0] - sheet[0], hole.centre[1] - sheet[1]) + Math.abs(hole.diameter - diameter) / 2,
  );
  return {
    edge: `hole ${id}`,
    overlap: 0,
    gap: off.length === 0 ? diameter : Math.min(...off),
    at: place(...sheet, 0),
  };
}

function fitOfPiece(piece: Piece | ShelfPiece, rules: Rules, template: FlatTemplate): EdgeFit[] {
  const place = fold(piece);
  const marks = ({ marks: all }: Piece['edges'][number]): Point[] => all.map(({ at }) => at);
  return piece.edges.flatMap((edge) => {
    const rule = rules[edge.name];
    if (rule === undefined || edge.marks.length === 0) return [];
    const others = piece.edges.filter((other) => other !== edge).flatMap(marks);
    const stretch = (outline: Point[]): Point[] => edgeStretch(outline, marks(edge), others);
    const flat = { face: stretch(template.outline), back: template.back && stretch(template.back) };
    return [measureEdge(edge.name, flat, place, piece.thickness, rule)];
  });
}

function pieceRules(
  alcove: Alcove,
  seats: Alcove,
  job: Job,
  { legs }: Result['pieces'],
): (piece: Piece | ShelfPiece) => Rules {
  const lines = trimLines(alcove, job, seats);
  const outer = (side: Side): number =>
    outerLine(
      lines,
      side,
      legs.some(({ wall }) => wall === side),
    ).at.value;
  const outers = { left: outer('left'), right: outer('right') };
  return (piece) => {
    const at = piece.wall === 'back' ? null : outers[piece.wall];
    switch (piece.kind) {
      case 'top':
        return topRules(lines, piece);
      case 'side-top':
        return sideTopRules(lines, piece, at!);
      case 'vertical':
        return verticalRules(lines, piece, at!);
      case 'angle':
        return angleRules(lines, piece);
      case 'leg':
        return legRules(alcove, job, piece);
      case 'filler':
        return fillerRules(lines, piece, at);
      case 'shelf': {
        const shelf = job.shelves.find(({ id }, i) => piece.id === `shelves.${id ?? i + 1}`);
        return shelf && 'corner' in piece ? shelfRules(seats, job, piece, shelf.gap) : {};
      }
    }
  };
}

function worstOf(pieces: readonly PieceFit[]): DryFit['worst'] {
  let worst: DryFit['worst'] = null;
  for (const { piece, edges } of pieces) {
    for (const { edge, overlap, gap } of edges) {
      const by = Math.max(overlap, gap);
      if (worst === null || !(by <= worst.by)) worst = { piece, edge, kind: overlap >= gap ? 'overlap' : 'gap', by };
    }
  }
  return worst;
}
