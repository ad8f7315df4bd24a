import { MM_PER_INCH, type Point } from '../../core';
import { POINT } from './paper';
import type { Pen } from './pen';

/** mm */
const METRIC_BAR = 100;
const INCH_BAR = 4 * MM_PER_INCH;

/** Two bars to lay a rule on: 100 mm and 4 in. `at` is the left end of the lower one, mm on the paper. */
export function drawCheckBars(pen: Pen, [x, y]: Point): void {
  bar(pen, [x, y + 7], METRIC_BAR, 10, '100 mm');
  bar(pen, [x, y], INCH_BAR, 8, '4 in');
}

function bar(pen: Pen, [x, y]: Point, length: number, parts: number, label: string): void {
  pen.line([x, y], [x + length, y], { width: 0.25 });
  for (let i = 0; i <= parts; i++) {
    const at = x + (length * i) / parts;
    pen.line([at, y], [at, y + (i === 0 || i === parts ? 3.2 : i * 2 === parts ? 2.2 : 1.4)], { width: 0.25 });
  }
  pen.text(label, [x + length + 1.5, y + 0.3], { size: 8 * POINT, bold: true });
}
