import {
  appendBezierCurve,
  beginText,
  clip,
  closePath,
  concatTransformationMatrix,
  endPath,
  endText,
  fill,
  lineTo,
  moveTo,
  type PDFName,
  type PDFOperator,
  popGraphicsState,
  pushGraphicsState,
  setDashPattern,
  setFillingGrayscaleColor,
  setFontAndSize,
  setLineWidth,
  setStrokingGrayscaleColor,
  setTextMatrix,
  showText,
  stroke,
} from 'pdf-lib';
import type { Point } from '../../core';
import { corners, type Rectangle } from '../drawing';
import type { Typefaces } from './typeface';

export interface Stroke {
  width: number;
  gray?: number;
  dash?: number[];
}
export interface TextStyle {
  size: number;
  bold?: boolean;
  align?: 'start' | 'middle' | 'end';
  angle?: number;
  gray?: number;
}
export interface FontKeys {
  regular: PDFName;
  bold: PDFName;
}

/** Writes drawing operators in whatever unit the current matrix makes of one; here millimetres. */
export class Pen {
  readonly operators: PDFOperator[] = [];

  constructor(
    readonly type: Typefaces,
    private readonly keys: FontKeys | null,
  ) {}

  push(...operators: PDFOperator[]): void {
    for (const operator of operators) this.operators.push(operator);
  }

  /** Runs `draw` with the matrix [scale 0 0 scale x y] in force. */
  within(scale: number, [x, y]: Point, draw: () => void): void {
    this.push(pushGraphicsState(), concatTransformationMatrix(scale, 0, 0, scale, x, y));
    draw();
    this.push(popGraphicsState());
  }

  clipped(points: Point[], draw: () => void): void {
    this.push(pushGraphicsState());
    this.path(points, true);
    this.push(clip(), endPath());
    draw();
    this.push(popGraphicsState());
  }

  line(from: Point, to: Point, style: Stroke): void {
    this.polyline([from, to], false, style);
  }

  polyline(points: Point[], closed: boolean, style: Stroke): void {
    this.setStroke(style);
    this.path(points, closed);
    this.push(stroke());
  }

  /** Separate strokes as one path. */
  strokes(parts: [Point, Point][], style: Stroke): void {
    this.setStroke(style);
    for (const part of parts) this.path(part, false);
    this.push(stroke());
  }

  filled(points: Point[], gray: number): void {
    this.push(setFillingGrayscaleColor(gray));
    this.path(points, true);
    this.push(fill());
  }

  box(rectangle: Rectangle, style: Stroke): void {
    this.polyline(corners(rectangle), true, style);
  }

  circle(centre: Point, radius: number, style: Stroke): void {
    this.setStroke(style);
    this.circlePath(centre, radius);
    this.push(stroke());
  }

  private circlePath([x, y]: Point, radius: number): void {
    const k = radius * 0.5522847498;
    this.push(
      moveTo(round(x + radius), round(y)),
      curve(x + radius, y + k, x + k, y + radius, x, y + radius),
      curve(x - k, y + radius, x - radius, y + k, x - radius, y),
      curve(x - radius, y - k, x - k, y - radius, x, y - radius),
      curve(x + k, y - radius, x + radius, y - k, x + radius, y),
      closePath(),
    );
  }

  filledCircle([x, y]: Point, radius: number, gray: number): void {
    this.push(setFillingGrayscaleColor(gray));
    this.circlePath([x, y], radius);
    this.push(fill());
  }

  text(text: string, [x, y]: Point, { size, bold = false, align = 'start', angle = 0, gray = 0 }: TextStyle): void {
    if (!this.keys) throw new Error('this pen has no fonts');
    const face = bold ? this.type.bold : this.type.regular;
    const shift = align === 'start' ? 0 : face.width(text, size) * (align === 'middle' ? 0.5 : 1);
    const radians = (angle * Math.PI) / 180;
    const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
    this.push(
      beginText(),
      setFillingGrayscaleColor(gray),
      setFontAndSize(bold ? this.keys.bold : this.keys.regular, round(size)),
      setTextMatrix(round(cos), round(sin), round(-sin), round(cos), round(x - shift * cos), round(y - shift * sin)),
      showText(face.encode(text)),
      endText(),
    );
  }

  private setStroke({ width, gray = 0, dash = [] }: Stroke): void {
    this.push(setLineWidth(width), setStrokingGrayscaleColor(gray), setDashPattern(dash, 0));
  }

  private path(points: Point[], closed: boolean): void {
    points.forEach(([x, y], i) => this.push(i === 0 ? moveTo(round(x), round(y)) : lineTo(round(x), round(y))));
    if (closed) this.push(closePath());
  }
}

const curve = (...values: [number, number, number, number, number, number]): PDFOperator =>
  appendBezierCurve(...(values.map(round) as [number, number, number, number, number, number]));

/** To 1e-5 of a unit: files stay small, geometry exact far below what paper holds. */
const round = (value: number): number => Math.round(value * 1e5) / 1e5;
