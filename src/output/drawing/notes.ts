import type { PanelDrawing } from './drawing';

/** What a template says in sentences besides its dimensions. */
export function templateNotes(drawing: PanelDrawing): string[] {
  return [
    `Sheet ${drawing.sheetWords}; panel ${drawing.sizeWords}.`,
    drawing.levelLine.setOut,
    drawing.plumbDatum.setOut,
    ...(drawing.grain ? [drawing.grain.words] : []),
    drawing.kerfWords,
    ...drawing.edges.map((edge) => `${edge.title}: ${edgeSentence(edge)}.`),
    ...drawing.holes.map(
      (hole) => `${hole.name}: Ø ${hole.diameter.text}, ${hole.toolWords}; ${hole.aboveRimWords}, ${hole.fromWords}.`,
    ),
    ...drawing.holes.flatMap(({ name, advice }) => advice.map((words) => `ADVICE, ${name}: ${words}`)),
    ...(drawing.holes.length > 0
      ? ['At each hole: its centre’s distance from the plumb line, then from the level line, with ± at 95 %.']
      : []),
    'At each mark: its number; distance from the control line that runs the same way as the edge, with ± at 95 %; distance along the edge; width to cut off.',
    ...(drawing.edges.some((edge) => edge.leave)
      ? ['* The readings leave this mark too uncertain to cut to the line: leave extra and scribe on dry fit.']
      : []),
    ...drawing.problems.map((problem) => `PROBLEM: ${problem}.`),
  ];
}

export const edgeSentence = ({ methodWords, wasteWords, sliverWords, leave }: PanelDrawing['edges'][number]): string =>
  [methodWords, ...(wasteWords ? [wasteWords] : []), sliverWords, ...(leave ? [leave.words] : [])].join('; ');
