import type { Job, Result } from '../../core';
import type { PanelDrawing } from '../drawing';
import type { OutputFonts } from '../outputFonts';
import { cardPage } from './card';
import { coverPages } from './coverPages';
import { Pack } from './pack';
import { type PaperName, papers } from './paper';
import { surveyPages } from './surveyPages';
import { tileMapPage } from './tileMapPage';
import { tilePages } from './tilePages';
import { tilePlan } from './tilePlan';

export interface JobPackOptions {
  /** Letter for a job shown in inches, A4 otherwise */
  paper?: PaperName;
}

/** The whole job on paper: summary, survey record, a cut card per panel, then every panel at 1:1. */
export async function jobPack(
  job: Job,
  result: Result,
  drawings: PanelDrawing[],
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const paper = papers[options.paper ?? (job.display === 'in' ? 'letter' : 'a4')];
  const pack = await Pack.open(job.name, paper, fonts);
  const contents = coverPages(pack, job, result, drawings, 1 + 2 * drawings.length);
  contents.enter('Survey record', surveyPages(pack, job, result));
  for (const drawing of drawings) contents.enter(`${drawing.title}: cut card`, cardPage(pack, drawing));
  for (const drawing of drawings) {
    const plan = tilePlan(drawing, paper);
    contents.enter(`${drawing.title}: full-size template`, tileMapPage(pack, drawing, plan));
    tilePages(pack, drawing, plan);
  }
  return pack.close();
}
