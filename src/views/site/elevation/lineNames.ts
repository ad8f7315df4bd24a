import type { Job } from '../../../core';
import type { Frame, Point } from './frame';
import type { Paper } from './paper';
import type { KeptFree } from './tags';

/** What a line of the drawing is called, and where that is written, px: the start of its base line. */
export interface LineName {
  text: string;
  /** the person's own lines, or what the alcove has */
  of: 'lines' | 'alcove';
  at: Point;
}

/** Beside its line, px. */
const BESIDE = 4;
const BELOW = 13;
/** Of a letter as these names are set, px. */
const LETTER = 6.2;
/** Of a letter with what hangs below the base line, px. */
const HEIGHT = 14;

/** The names of the lines that `Ground` draws, each at its line. */
export function lineNames(frame: Frame, paper: Paper, { fit }: Pick<Job, 'fit'>): LineName[] {
  const { left } = frame.front;
  const [levelX, levelY] = paper.at(frame.point('left', left(0), 0));
  const [plumbX, plumbFoot] = paper.at([0, frame.rim('back', 0)]);
  const [, panelsTop] = paper.at([frame.box.left, fit.top]);
  const [, rim] = paper.at(frame.point('left', left(0), frame.rim('left', left(0))));
  return [
    { text: 'level line', of: 'lines', at: [levelX + BESIDE, levelY - BESIDE] },
    { text: 'plumb line', of: 'lines', at: [plumbX + BESIDE, plumbFoot + BELOW] },
    { text: 'top of the panels', of: 'alcove', at: [levelX + BESIDE, panelsTop - BESIDE] },
    { text: 'rim', of: 'alcove', at: [levelX + BESIDE, rim + BELOW] },
  ];
}

/** The room that a name takes: its middle and its size, px. */
export function roomOf({ text, at: [x, y] }: LineName): KeptFree {
  const width = LETTER * text.length;
  return { x: x + width / 2, y: y - HEIGHT / 2 + 3, width, height: HEIGHT };
}
