import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Point } from '../../../../src/core';
import type { OutputFonts } from '../../../../src/output';

type Matrix = [number, number, number, number, number, number];

/** A painted path in mm on the paper, curves as their end points. */
export interface PaintedPath {
  points: Point[];
  width: number;
}
export interface ReadPage {
  width: number;
  height: number;
  paths: PaintedPath[];
  text: string;
  lines: { text: string; size: number }[];
}

const MM = 25.4 / 72;
const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

/** Reads a PDF with an independent reader: painted paths and words of its pages, or of the first few. */
export async function readPdf(bytes: Uint8Array, first = Number.POSITIVE_INFINITY): Promise<ReadPage[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= Math.min(first, document.numPages); number++) {
    const page = await document.getPage(number);
    const { fnArray, argsArray } = await page.getOperatorList();
    const [, , width, height] = page.view as [number, number, number, number];
    const content = await page.getTextContent();
    const items = content.items.flatMap((item) => ('str' in item ? [item] : []));
    pages.push({
      width: width * MM,
      height: height * MM,
      paths: pathsOf(fnArray, argsArray),
      text: items.map(({ str, hasEOL }) => str + (hasEOL ? '\n' : '')).join(''),
      lines: items.map(({ str, transform }) => ({ text: str, size: Math.hypot(transform[0], transform[1]) })),
    });
  }
  await document.destroy();
  return pages;
}

function pathsOf(operators: number[], argumentsOf: unknown[]): PaintedPath[] {
  const paths: PaintedPath[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let width = 1;
  const kept: [Matrix, number][] = [];
  const restore = () => {
    [matrix, width] = kept.pop() ?? [matrix, width];
  };
  operators.forEach((operator, i) => {
    const given = argumentsOf[i] as unknown[];
    if (operator === OPS.save) kept.push([matrix, width]);
    else if (operator === OPS.restore) restore();
    else if (operator === OPS.transform) matrix = times(matrix, given as Matrix);
    else if (operator === OPS.setLineWidth) width = given[0] as number;
    else if (operator === OPS.paintFormXObjectBegin) {
      kept.push([matrix, width]);
      if (given[0]) matrix = times(matrix, Array.from(given[0] as ArrayLike<number>) as Matrix);
    } else if (operator === OPS.paintFormXObjectEnd) restore();
    else if (operator === OPS.constructPath && given[0] !== OPS.endPath) {
      const data = (given[1] as (ArrayLike<number> | null)[])[0];
      for (const points of data ? subpaths(Array.from(data)) : []) {
        paths.push({
          points: points.map(([x, y]) => apply(matrix, x, y)),
          width: width * Math.hypot(matrix[0], matrix[1]) * MM,
        });
      }
    }
  });
  return paths;
}

const apply = ([a, b, c, d, e, f]: Matrix, x: number, y: number): Point => [
  (a * x + c * y + e) * MM,
  (b * x + d * y + f) * MM,
];

/** Path data: 0 move, 1 line, 2 cubic curve, 3 quadratic curve, 4 close. */
function subpaths(data: number[]): Point[][] {
  const all: Point[][] = [];
  const length = [2, 2, 6, 4, 0];
  for (let i = 0; i < data.length; ) {
    const code = data[i]!;
    const count = length[code]!;
    const end: Point = [data[i + count - 1]!, data[i + count]!];
    if (code === 0) all.push([end]);
    else if (code !== 4) all.at(-1)!.push(end);
    i += count + 1;
  }
  return all;
}

const locate = createRequire(import.meta.url).resolve;

export async function testFonts(): Promise<OutputFonts> {
  const [regular, bold] = await Promise.all(
    ['', '-Bold'].map((weight) => readFile(locate(`dejavu-fonts-ttf/ttf/DejaVuSansCondensed${weight}.ttf`))),
  );
  return { regular: regular!, bold: bold! };
}
