import {
  concatTransformationMatrix,
  PDFDocument,
  type PDFPage,
  type PDFRef,
  popGraphicsState,
  pushGraphicsState,
} from 'pdf-lib';
import type { MeasureText, Rectangle } from '../drawing';
import type { OutputFonts } from '../outputFonts';
import { type Paper, POINT, POINTS_PER_MM } from './paper';
import { Pen } from './pen';
import { embedTypefaces, type Typefaces } from './typeface';

/** Clear border that every printer leaves, mm. */
export const MARGIN = 10;
const FOOTER = 7;

/** One page: a pen in mm from the lower left corner, and the room that content may take. */
export interface Leaf {
  pen: Pen;
  page: PDFPage;
  paper: Paper;
  number: number;
  content: Rectangle;
}

/** The document being written, page by page. */
export class Pack {
  readonly leaves: Leaf[] = [];
  readonly measure: MeasureText;

  private constructor(
    readonly pdf: PDFDocument,
    readonly type: Typefaces,
    readonly paper: Paper,
    readonly jobName: string,
  ) {
    this.measure = (text, size, bold) => (bold ? type.bold : type.regular).width(text, size);
  }

  static async open(jobName: string, paper: Paper, fonts: OutputFonts): Promise<Pack> {
    const pdf = await PDFDocument.create({ updateMetadata: false });
    pdf.setTitle(jobName || 'Job pack');
    pdf.setCreator('Nookwright');
    pdf.setProducer('Nookwright');
    pdf.setLanguage('en');
    return new Pack(pdf, await embedTypefaces(pdf, fonts), paper, jobName);
  }

  addLeaf(paper: Paper = this.paper): Leaf {
    const page = this.pdf.addPage([paper.width * POINTS_PER_MM, paper.height * POINTS_PER_MM]);
    const keys = {
      regular: page.node.newFontDictionary('Regular', this.type.regular.font.ref),
      bold: page.node.newFontDictionary('Bold', this.type.bold.font.ref),
    };
    const leaf: Leaf = {
      pen: new Pen(this.type, keys),
      page,
      paper,
      number: this.leaves.length + 1,
      content: { left: MARGIN, right: paper.width - MARGIN, bottom: MARGIN + FOOTER, top: paper.height - MARGIN },
    };
    this.leaves.push(leaf);
    return leaf;
  }

  /** A drawing without words in mm, kept once in the file and shown on any number of pages. */
  addStamp(bounds: Rectangle, draw: (pen: Pen) => void): PDFRef {
    const pen = new Pen(this.type, null);
    draw(pen);
    const { left, bottom, right, top } = bounds;
    return this.pdf.context.register(this.pdf.context.formXObject(pen.operators, { BBox: [left, bottom, right, top] }));
  }

  /** Writes the foot of every page and the file. */
  async close(): Promise<Uint8Array> {
    for (const { pen, paper, page, number } of this.leaves) {
      const y = MARGIN + 1;
      const size = 7.5 * POINT;
      const count = `page ${number} of ${this.leaves.length}`;
      pen.line([MARGIN, y + 3.6], [paper.width - MARGIN, y + 3.6], { width: 0.15, gray: 0.4 });
      pen.text(fitted(this.jobName, paper.width - 2 * MARGIN - 40, size, this.measure), [MARGIN, y], {
        size,
        gray: 0.2,
      });
      pen.text(count, [paper.width - MARGIN, y], { size, align: 'end', gray: 0.2 });
      page.pushOperators(pushGraphicsState(), concatTransformationMatrix(POINTS_PER_MM, 0, 0, POINTS_PER_MM, 0, 0));
      for (let i = 0; i < pen.operators.length; i += 5000) page.pushOperators(...pen.operators.slice(i, i + 5000));
      page.pushOperators(popGraphicsState());
    }
    return this.pdf.save();
  }
}

/** The text, cut short with an ellipsis where it is wider than `width` mm. */
export function fitted(text: string, width: number, size: number, measure: MeasureText): string {
  if (measure(text, size, false) <= width) return text;
  const characters = [...text];
  let [low, high] = [0, characters.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (measure(`${characters.slice(0, middle).join('')}…`, size, false) <= width) low = middle;
    else high = middle - 1;
  }
  return `${characters.slice(0, low).join('')}…`;
}
