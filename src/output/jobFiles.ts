import { type Job, type Result, surveyPlan, type WallName } from '../core';
import { orderOfWorkCalendar } from './calendar';
import { type PanelDrawing, type PieceDrawing, panelDrawing, pieceDrawing, type View } from './drawing';
import type { OutputFonts } from './outputFonts';
import type { JobPackOptions } from './pdf';
import { resultJson } from './resultJson';
import { shoppingListCsv } from './shoppingList';
import { panelDxf, panelSvg, pieceDxf, pieceSvg } from './template';

export interface JobFilesOptions extends JobPackOptions {
  /** side that is up on every template; the face by default */
  view?: View;
  /** when the files are made; the present by default */
  now?: Date;
}

const panelNames: WallName[] = ['back', 'left', 'right'];

/** The template drawings of a job, back panel first. */
export function jobDrawings(job: Job, result: Result, view: View = 'face'): PanelDrawing[] {
  return panelNames.map((name) => panelDrawing(result.panels[name], job, result.problems, view));
}

/** The template drawings of every cut piece besides the panels: trim, legs, fillers, shelves. */
export function pieceDrawings(job: Job, { pieces }: Pick<Result, 'pieces'>, view: View = 'face'): PieceDrawing[] {
  const { trim, legs, fillers, shelves } = pieces;
  return [...trim, ...legs, ...fillers, ...shelves].map((piece) => pieceDrawing(piece, job, view));
}

/** The job pack alone; the code that writes it is loaded when first asked for. */
export async function jobPackPdf(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobFilesOptions = {},
): Promise<Uint8Array> {
  const { jobPack } = await import('./pdf');
  return jobPack(job, result, jobDrawings(job, result, options.view), fonts, options);
}

/** The blank field sheet: the shortest plan of readings for this alcove, to print and fill in. */
export async function fieldSheetPdf(job: Job, fonts: OutputFonts, options: JobPackOptions = {}): Promise<Uint8Array> {
  const { fieldSheet } = await import('./pdf');
  return fieldSheet(job, surveyPlan(job), fonts, options);
}

/** Every file of a job by its path in the folder: result, templates, shopping list, job pack, and a calendar where the job has a first day. */
export async function jobFiles(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobFilesOptions = {},
): Promise<Map<string, Uint8Array>> {
  const bytes = (text: string) => new TextEncoder().encode(text);
  const files = new Map<string, Uint8Array>([['result.json', bytes(resultJson(result))]]);
  for (const drawing of jobDrawings(job, result, options.view)) {
    files.set(`templates/${drawing.name}.svg`, bytes(panelSvg(drawing)));
    files.set(`templates/${drawing.name}.dxf`, bytes(await panelDxf(drawing)));
  }
  for (const drawing of pieceDrawings(job, result, options.view)) {
    files.set(`templates/${drawing.id}.svg`, bytes(pieceSvg(drawing)));
    files.set(`templates/${drawing.id}.dxf`, bytes(await pieceDxf(drawing)));
  }
  files.set('shopping-list.csv', bytes(await shoppingListCsv(job, result)));
  const calendar = await orderOfWorkCalendar(job, result, options.now ?? new Date());
  if (calendar.ok) files.set('order-of-work.ics', bytes(calendar.text));
  files.set('field-sheet.pdf', await fieldSheetPdf(job, fonts, options));
  files.set('job-pack.pdf', await jobPackPdf(job, result, fonts, options));
  return files;
}
