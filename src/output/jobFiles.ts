import type { DryFit, Job, Result } from '../core';
import { orderOfWorkCalendar } from './calendar';
import type { View } from './drawing';
import { jobDrawings } from './jobDrawings';
import type { OutputFonts } from './outputFonts';
import type { JobPackOptions } from './pdf';
import { resultJson } from './resultJson';
import { shoppingListCsv } from './shoppingList';
import { type TemplateFiles, templateFiles } from './templateFiles';

export interface JobFilesOptions extends JobPackOptions {
  /** side that is up on every template; the face by default */
  view?: View;
  /** when the files are made; the present by default */
  now?: Date;
}

/** The job pack alone; the code that writes it is loaded when first asked for. */
export async function jobPackPdf(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobFilesOptions = {},
): Promise<Uint8Array> {
  const { jobPack } = await import('./pdf');
  const tried = await dryFitted(job, result, options.view);
  return jobPack(job, tried, jobDrawings(job, tried, options.view), fonts, options);
}

/** The result with its virtual dry fit, made from the templates' files where it is not there yet. */
export async function dryFitted(
  job: Job,
  result: Result,
  view: View = 'face',
  files?: readonly TemplateFiles[],
): Promise<Result & Required<Pick<Result, 'dryFit'>>> {
  if (result.dryFit) return { ...result, dryFit: result.dryFit };
  const made = files ?? (await templateFiles(job, result, view));
  const { dryFitOf } = await import('./dryFit');
  return { ...result, dryFit: await dryFitOf(job, result, new Map(made.map(({ piece, dxf }) => [piece, dxf]))) };
}

/** The blank field sheet: the shortest plan of readings for this alcove, to print and fill in. */
export async function fieldSheetPdf(job: Job, fonts: OutputFonts, options: JobPackOptions = {}): Promise<Uint8Array> {
  const { plannedFieldSheet } = await import('./pdf');
  return plannedFieldSheet(job, fonts, options);
}

/** The checklist alone: order of work, adhesive, joints, cautions and sign-off. */
export async function checklistPdf(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const { checklist } = await import('./pdf');
  return checklist(job, result, fonts, options);
}

/** The filled survey record: readings with their misfits, what was assumed, and how the walls are judged. */
export async function surveyRecordPdf(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const { surveyRecord } = await import('./pdf');
  return surveyRecord(job, result, fonts, options);
}

/**
 * Every file of a job by its path in the folder: result, templates, shopping list, job pack, and a calendar where the job
 * has a first day; with the virtual dry fit of the very templates that are in it.
 */
export async function jobFiles(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobFilesOptions = {},
): Promise<{ files: Map<string, Uint8Array>; dryFit: DryFit }> {
  const bytes = (text: string) => new TextEncoder().encode(text);
  const templates = await templateFiles(job, result, options.view);
  const { dryFit: _, ...untried } = result;
  const tried = await dryFitted(job, untried, options.view, templates);
  const files = new Map<string, Uint8Array>([['result.json', bytes(resultJson(tried))]]);
  for (const { stem, svg, dxf } of templates) {
    files.set(`templates/${stem}.svg`, bytes(svg));
    files.set(`templates/${stem}.dxf`, bytes(dxf));
  }
  files.set('shopping-list.csv', bytes(await shoppingListCsv(job, tried)));
  const calendar = await orderOfWorkCalendar(job, tried, options.now ?? new Date());
  if (calendar.ok) files.set('order-of-work.ics', bytes(calendar.text));
  files.set('checklist.pdf', await checklistPdf(job, tried, fonts, options));
  files.set('field-sheet.pdf', await fieldSheetPdf(job, fonts, options));
  files.set('survey-record.pdf', await surveyRecordPdf(job, tried, fonts, options));
  files.set('job-pack.pdf', await jobPackPdf(job, tried, fonts, options));
  return { files, dryFit: tried.dryFit };
}
