import type { Job, Result, WallName } from '../core';
import { type PanelDrawing, panelDrawing, type View } from './drawing';
import type { OutputFonts } from './outputFonts';
import type { JobPackOptions } from './pdf';
import { resultJson } from './resultJson';
import { panelDxf, panelSvg } from './template';

export interface JobFilesOptions extends JobPackOptions {
  /** side that is up on every template; the face by default */
  view?: View;
}

const panelNames: WallName[] = ['back', 'left', 'right'];

/** The template drawings of a job, back panel first. */
export function jobDrawings(job: Job, result: Result, view: View = 'face'): PanelDrawing[] {
  return panelNames.map((name) => panelDrawing(result.panels[name], job, result.problems, view));
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

/** Every file of a job by its path in the folder: result, templates, job pack. */
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
  files.set('job-pack.pdf', await jobPackPdf(job, result, fonts, options));
  return files;
}
