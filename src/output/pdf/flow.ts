import { wrapText } from '../drawing';
import { columnWidths } from './columnWidths';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

export interface Column {
  title: string;
  align?: 'start' | 'end';
  bold?: boolean;
}

const BODY = 9 * POINT;
const LEADING = 1.35;

/** Headings, paragraphs and tables set one under another, over as many pages as they take. */
export class Flow {
  leaf!: Leaf;
  /** top of the free room, mm from the bottom of the page */
  y = 0;

  constructor(
    private readonly pack: Pack,
    private readonly title: string,
    private readonly strapline = '',
  ) {
    this.openLeaf(title);
  }

  get width(): number {
    return this.leaf.content.right - this.leaf.content.left;
  }

  /** Turns the page if less than `height` mm is left. */
  ensure(height: number): void {
    if (this.y - height < this.leaf.content.bottom) this.openLeaf(`${this.title} (continued)`);
  }

  heading(text: string): void {
    const size = 11.5 * POINT;
    this.ensure(5 * size);
    this.y -= 1.9 * size;
    this.leaf.pen.text(text, [this.leaf.content.left, this.y], { size, bold: true });
    this.y -= 0.5 * size;
  }

  paragraph(text: string, { bold = false, size = BODY, indent = 0, mark = '' } = {}): void {
    const lines = wrapText(text, this.width - indent, size, this.pack.measure, bold);
    if (lines.length < 8) this.ensure(lines.length * LEADING * size);
    lines.forEach((line, i) => {
      this.ensure(LEADING * size);
      this.y -= LEADING * size;
      const x = this.leaf.content.left;
      if (i === 0 && mark) this.leaf.pen.text(mark, [x, this.y], { size, bold: true });
      this.leaf.pen.text(line, [x + indent, this.y], { size, bold });
    });
    this.y -= 0.35 * size;
  }

  list(items: string[], mark = '–', size = BODY): void {
    for (const item of items) this.paragraph(item, { indent: 4, mark, size });
  }

  /** A heavy frame round sentences that must not be missed. */
  framed(heading: string, items: string[]): void {
    const inset = 3;
    const rows = items.map((item) => wrapText(item, this.width - 2 * inset - 4, BODY, this.pack.measure));
    const step = LEADING * BODY;
    const height = (rows.flat().length + 1) * step + rows.length * 0.35 * BODY + 2 * inset;
    if (height > this.leaf.content.top - this.leaf.content.bottom - 30) {
      this.heading(heading);
      this.list(items, '!');
      return;
    }
    this.ensure(height + 3);
    this.y -= 3;
    const { left, right } = this.leaf.content;
    const { pen } = this.leaf;
    pen.box({ left, right, top: this.y, bottom: this.y - height }, { width: 0.6 });
    let y = this.y - inset - step * 0.8;
    pen.text(heading, [left + inset, y], { size: BODY, bold: true });
    for (const lines of rows) {
      y -= 0.35 * BODY;
      lines.forEach((line, i) => {
        y -= step;
        if (i === 0) pen.text('!', [left + inset, y], { size: BODY, bold: true });
        pen.text(line, [left + inset + 4, y], { size: BODY });
      });
    }
    this.y -= height + 1;
  }

  table(columns: Column[], rows: string[][], size = 8.5 * POINT): void {
    const pad = 1.2;
    const natural = columns.map(
      ({ title, bold = false }, i) =>
        Math.max(this.pack.measure(title, size, true), ...rows.map((row) => this.pack.measure(row[i]!, size, bold))) +
        2 * pad +
        0.1,
    );
    const widths = columnWidths(natural, this.width);
    const step = 1.25 * size;
    const titles = columns.map(({ title }) => title);
    const drawHead = () => {
      if (titles.some((title) => title !== '')) drawRow(titles, true);
    };
    const drawRow = (cells: string[], bold: boolean) => {
      const wrapped = cells.map((cell, i) =>
        wrapText(cell, widths[i]! - 2 * pad, size, this.pack.measure, bold || columns[i]!.bold),
      );
      const height = Math.max(...wrapped.map((lines) => lines.length)) * step + 1.2;
      const before = this.leaf;
      this.ensure(height);
      if (this.leaf !== before && !bold) drawHead();
      let x = this.leaf.content.left;
      const { pen } = this.leaf;
      wrapped.forEach((lines, i) => {
        const { align = 'start', bold: always = false } = columns[i]!;
        const at = align === 'start' ? x + pad : x + widths[i]! - pad;
        lines.forEach((line, row) =>
          pen.text(line, [at, this.y - 0.6 - (row + 0.8) * step], { size, bold: bold || always, align }),
        );
        x += widths[i]!;
      });
      this.y -= height;
      const { left, right } = this.leaf.content;
      pen.line([left, this.y], [right, this.y], bold ? { width: 0.4 } : { width: 0.12, gray: 0.5 });
    };
    this.ensure(4 * step);
    this.y -= 1;
    drawHead();
    for (const row of rows) drawRow(row, false);
    this.y -= 1.5;
  }

  private openLeaf(title: string): void {
    this.leaf = this.pack.addLeaf();
    this.y = drawTitle(this.pack, this.leaf, title, title === this.title ? this.strapline : '');
  }
}

/** Title over a rule that starts heavy; returns the height of the free room's top. */
export function drawTitle(pack: Pack, { pen, content }: Leaf, title: string, strapline: string): number {
  const size = 17 * POINT;
  const lines = wrapText(title, content.right - content.left, size, pack.measure, true);
  let y = content.top;
  for (const line of lines) {
    y -= 1.15 * size;
    pen.text(line, [content.left, y], { size, bold: true });
  }
  y -= 2.4;
  pen.line([content.left, y], [content.right, y], { width: 0.25 });
  pen.line([content.left, y - 0.45], [content.left + 34, y - 0.45], { width: 1.15 });
  if (strapline) {
    const small = 9.5 * POINT;
    y -= 1.2;
    for (const line of wrapText(strapline, content.right - content.left, small, pack.measure)) {
      y -= 1.35 * small;
      pen.text(line, [content.left, y], { size: small });
    }
  }
  return y - 2;
}
