import type { Job, Result } from '../../core';
import { type PanelDrawing, pieceDrawing } from '../drawing';
import type { OutputFonts } from '../outputFonts';
import { cardPage } from './card';
import { coverPages } from './coverPages';
import { dryFitPages } from './dryFitPages';
import { materialsPages } from './materialsPages';
import { Pack } from './pack';
import { type PaperName, papers } from './paper';
import { piecePages } from './piecePages';
import { sheetPages } from './sheetPages';
import { surveyPages } from './surveyPages';
import { tileMapPage } from './tileMapPage';
import { tilePages } from './tilePages';
import { tilePlan } from './tilePlan';
import { workPages } from './workPages';

export interface JobPackOptions {
  /** Letter for a job shown in inches, A4 otherwise */
  paper?: PaperName;
}

/**
 * The whole job on paper: summary, survey record, a cut card per panel, the other pieces, sheets, materials, order of
 * work, then every panel at 1:1.
 */
export async function jobPack(
  job: Job,
  result: Result,
  drawings: PanelDrawing[],
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const paper = papers[options.paper ?? (job.display === 'in' ? 'letter' : 'a4')];
  const pack = await Pack.open(job.name, paper, fonts);
  const contents = coverPages(pack, job, result, drawings, 6 + 2 * drawings.length);
  contents.enter('Survey record', surveyPages(pack, job, result));
  for (const drawing of drawings) contents.enter(`${drawing.title}: cut card`, cardPage(pack, drawing));
  const { trim, legs, fillers, shelves } = result.pieces;
  const view = drawings[0]?.view;
  const pieceDrawings = [...trim, ...legs, ...fillers, ...shelves].map((piece) => pieceDrawing(piece, job, view));
  const pieces = piecePages(pack, job, result, pieceDrawings);
  if (pieces !== null) contents.enter('Trim, legs and shelves', pieces);
  const sheets = sheetPages(pack, job, result);
  if (sheets !== null) contents.enter('Sheets', sheets);
  contents.enter('Materials to buy', materialsPages(pack, job, result));
  contents.enter('Order of work', workPages(pack, job, result));
  const tried = dryFitPages(pack, job, result);
  if (tried !== null) contents.enter('Virtual dry fit', tried);
  for (const drawing of drawings) {
    const plan = tilePlan(drawing, paper);
    contents.enter(`${drawing.title}: full-size template`, tileMapPage(pack, drawing, plan));
    tilePages(pack, drawing, plan);
  }
  return pack.close();
}
