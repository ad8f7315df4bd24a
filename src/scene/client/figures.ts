import type { AlcoveShape, Vec3 } from '../geometry';
import type { Tag } from '../tags';
import type { Side } from './FinishedView';
import { type Dimension, type DrawnLean, dimensionsOf, leansOf, throughOpening } from './geometry';

/** How lengths are told. */
export interface FigureWords {
  /** a dimension */
  text(mm: number): string;
  /** a small difference */
  fine(mm: number): string;
  /** the 95 % half-width that belongs to a standard deviation */
  plusMinus(sd: number): string;
}

export interface Figures {
  dimensions: Dimension[];
  leans: DrawnLean[];
  tags: Tag[];
}

/** Dimensions of a finished alcove, or how far the walls of a bare one lean, with the words beside them. */
export function figuresOf(shape: AlcoveShape, { job, result, bare }: Side, words: FigureWords | null): Figures {
  if (words === null) return { dimensions: [], leans: [], tags: [] };
  const tag = (key: string, text: string, [a, b]: readonly [Vec3, Vec3]): Tag => {
    const at: Vec3 = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2];
    return { key, kind: 'line', text, at, seenFrom: (eye) => throughOpening(shape.nominal, at, eye) };
  };
  if (bare) {
    const leans = leansOf(shape, result, job);
    const text = ({ into, value, sd }: DrawnLean) =>
      `leans ${into ? 'in' : 'out'} ${words.fine(value)} ${words.plusMinus(sd)}`;
    return { dimensions: [], leans, tags: leans.map((lean) => tag(lean.key, text(lean), lean.gap)) };
  }
  const dimensions = dimensionsOf(shape, result, job);
  const tags = dimensions.map(({ key, from, to, value, sd }) =>
    tag(key, `${words.text(value)} ${words.plusMinus(sd)}`, [from, to]),
  );
  return { dimensions, leans: [], tags };
}
