import type { HoleDrawing, MarkDrawing } from './drawing';

/** Lines of every label: a bold one and two plain ones. */
export const LABEL_LINES = 3;

/** What is told at a mark, the distance to measure first. */
export function markLines(mark: MarkDrawing): string[] {
  const { number, across, direction, plusMinus, alongWords, sliverWords, scribe } = mark;
  return [
    [`${number}: `, across.text, direction, plusMinus.text, scribe ? '*' : ''].filter(Boolean).join(' '),
    alongWords,
    sliverWords,
  ];
}

/** Name and diameter of a hole, then the distances to the plumb line and to the level line. */
export function holeLines({ id, diameter, fromDatum, fromLevel, plusMinus, side }: HoleDrawing): string[] {
  return [
    `${shortened(id)}: Ø ${diameter.text}`,
    `${fromDatum.text} ${side.across} ${plusMinus.across.text}`.trim(),
    `${fromLevel.text} ${side.up} ${plusMinus.up.text}`.trim(),
  ];
}

const LONGEST_NAME = 24;

function shortened(name: string): string {
  const characters = [...name];
  return characters.length > LONGEST_NAME ? `${characters.slice(0, LONGEST_NAME - 1).join('')}…` : name;
}
