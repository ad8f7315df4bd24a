import { describe, expect, it } from 'vitest';
import { formatLength, type Piece, type Point, solve } from '../../../../../src/core';
import { pieceDrawing, pieceShapes, pieceTemplateNotes, type Words } from '../../../../../src/output/drawing';
import { fixtureJob } from '../../fixture';

const job = fixtureJob({
  rim: { width: 600 },
  shelves: [{ corner: 'left' }],
  trim: { rise: 24, joinery: 'butt' },
});
const mitred = fixtureJob({ rim: { width: 600 }, trim: { joinery: 'mitre', lip: 4, insideCorners: true } });
const piecesOf = (of: typeof job): Piece[] => {
  const { trim, legs, fillers, shelves } = solve(of).pieces;
  return [...trim, ...legs, ...fillers, ...shelves];
};
const butted = piecesOf(job);
const all: [Piece, typeof job][] = [
  ...butted.map((piece): [Piece, typeof job] => [piece, job]),
  ...piecesOf(mitred).map((piece): [Piece, typeof job] => [piece, mitred]),
];
const inches = (mm: number) => formatLength(mm, { unit: 'in', denominator: 32 });
/** Without minus noughts. */
const plain = (points: Point[]): Point[] => points.map(([x, y]) => [x + 0, y + 0]);
const low = (points: Point[], axis: 0 | 1) => Math.min(...points.map((point) => point[axis]));

describe('pieceDrawing', () => {
  it('is there for every kind of piece', () => {
    expect(new Set(all.map(([{ kind }]) => kind))).toEqual(
      new Set(['top', 'side-top', 'vertical', 'angle', 'leg', 'filler', 'shelf']),
    );
  });

  it('draws the face as it lies, and mirrored with the back up', () => {
    for (const [piece, of] of all) {
      const [face, back] = [pieceDrawing(piece, of), pieceDrawing(piece, of, 'back')];
      expect(face.outline).toEqual(plain(piece.outline));
      expect(back.outline).toEqual(piece.outline.map(([x, y]) => [x === 0 ? 0 : -x, y]));
      expect(face.statement).toMatch(/^(FACE|TOP) UP: /);
      expect(back.statement).toMatch(/^(BACK|UNDERSIDE) UP \(MIRRORED\)/);
      expect(back.edges.map(({ place }) => place)).toEqual(
        face.edges.map(({ place }) => ({ left: 'right', right: 'left', bottom: 'bottom', top: 'top' })[place]),
      );
    }
  });

  it('numbers every mark of every edge that is cut, with its distances from the left and lower ends', () => {
    for (const [piece, of] of all) {
      const { edges, bounds } = pieceDrawing(piece, of);
      const drawn = edges.flatMap(({ marks }) => marks);
      expect(drawn.map(({ number }) => number)).toEqual(drawn.map((_, i) => i + 1));
      const marks = piece.edges.filter(({ method }) => method !== 'none').flatMap((edge) => edge.marks);
      expect(drawn.map(({ at }) => at)).toEqual(plain(marks.map(({ at }) => at)));
      for (const mark of drawn) {
        expect(mark.lines.join(' ')).toContain(`${inches(mark.at[0] - bounds.left)} from left`);
        expect(mark.lines.join(' ')).toContain(`${inches(mark.at[1] - bounds.bottom)} up`);
      }
      const loops = [piece.outline, ...piece.bodies.flatMap(({ back, face }) => [back, face])].flat();
      expect([bounds.left, bounds.bottom]).toEqual(plain([[low(loops, 0), low(loops, 1)]])[0]);
    }
  });

  it('draws the back where a cut slants, and lips', () => {
    const of = (id: string) => {
      const [piece, own] = all.findLast(([each]) => each.id === id)!;
      return pieceDrawing(piece, own);
    };
    expect(of('trim.left.top').back).not.toBeNull();
    expect(of('trim.left.top').lips).toHaveLength(1);
    expect(of('legs.right').back).toBeNull();
    expect(pieceTemplateNotes(of('trim.left.top')).join(' ')).toContain('Dashed');
  });

  it('tells joints and angles of ends, notches, tape and bracket lines', () => {
    const of = (id: string) => pieceDrawing(butted.find((piece) => piece.id === id)!, job);
    const top = of('trim.top');
    expect(top.edges.map(({ name, methodWords }) => [name, methodWords])).toEqual([
      ['left end', 'mitre saw, butt'],
      ['right end', 'mitre saw, butt'],
    ]);
    const piece = butted.find(({ id }) => id === 'trim.top')!;
    expect(top.notches.map(({ place, lines }) => [place, lines[0]])).toEqual([
      ['left', 'Notch, lower left'],
      ['right', 'Notch, lower right'],
    ]);
    for (const { at } of top.notches) expect(piece.outline).toContainEqual(at);
    expect(top.tapes).toHaveLength(piece.tape.length);
    const shelf = of('shelves.1');
    expect(shelf.brackets.map(({ lines }) => lines[0])).toEqual([
      'BRACKET LINE, back panel',
      'BRACKET LINE, left panel',
    ]);
  });
});

describe('pieceShapes', () => {
  it('has the outline on the cut layer once and its words clear of one another', () => {
    for (const [piece, of] of all) {
      const drawing = pieceDrawing(piece, of);
      const shapes = pieceShapes(drawing, { size: 8, notes: true, rowWidth: 480 });
      const cuts = shapes.filter(({ layer }) => layer === 'cut');
      expect(cuts).toEqual([{ kind: 'polyline', layer: 'cut', points: drawing.outline, closed: true }]);
      const words = shapes.filter((shape): shape is Words => shape.kind === 'words' && shape.angle === 0);
      const starts = words.map(({ at: [x, y], anchor, text }) => `${anchor} ${x.toFixed(1)} ${y.toFixed(1)} ${text}`);
      expect(new Set(starts).size).toBe(words.length);
      const bold = words.filter((word) => word.bold && word.anchor !== 'middle' && word.size === 8);
      for (const [i, a] of bold.entries()) {
        for (const b of bold.slice(i + 1)) {
          if (a.anchor === b.anchor && Math.abs(a.at[0] - b.at[0]) < 1)
            expect(Math.abs(a.at[1] - b.at[1])).toBeGreaterThan(8);
        }
      }
    }
  });
});
