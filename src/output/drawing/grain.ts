import type { Job, Point } from '../../core';
import type { PanelDrawing } from './drawing';
import type { Lengths } from './lengths';
import type { Rectangle } from './rectangle';

/** Where the arrow stands, as shares of the panel's size; clear of the control lines and of most labels. */
const ACROSS = 0.36;
const FROM = 0.6;
const TO = 0.78;

/** The arrow along the grain or pattern of a panel. */
export function grainOf(
  grain: Job['sheets']['back']['grain'],
  { left, right, bottom, top }: Rectangle,
): PanelDrawing['grain'] {
  if (grain === 'none') return null;
  const at = (x: number, y: number): Point => [left + x * (right - left), bottom + y * (top - bottom)];
  return grain === 'up'
    ? {
        arrow: [at(ACROSS, FROM), at(ACROSS, TO)],
        words: 'Grain or pattern runs up the panel (arrow): never turn the sheet.',
      }
    : {
        arrow: [at(FROM, ACROSS), at(TO, ACROSS)],
        words: 'Grain or pattern runs across the panel (arrow): never turn the sheet.',
      };
}

/** What the blade takes, and from which side of the line. */
export const kerfWords = ({ cutting: { kerf } }: Pick<Job, 'cutting'>, { coarse }: Lengths): string =>
  kerf > 0
    ? `Keep the blade on the waste side: its cut of ${coarse(kerf).text} comes off the waste, and the line stays.`
    : 'Keep the blade on the waste side, so that the line stays.';
