import type { Job, Result } from '../../core';
import type { PanelDrawing } from '../drawing';
import { pieceDrawings } from '../jobDrawings';
import type { OutputFonts } from '../outputFonts';
import { adhesivePages } from './adhesivePages';
import { bedPages } from './bedPages';
import { cardPage } from './card';
import { coverPages } from './coverPages';
import { dryFitPages } from './dryFitPages';
import { type FullSize, panelFullSize, pieceFullSize } from './fullSize';
import { holePages } from './holePages';
import { jointPages } from './jointPages';
import { materialsPages } from './materialsPages';
import { type Leaf, Pack } from './pack';
import { type PaperName, pagePaper, papers } from './paper';
import { piecePages } from './piecePages';
import { sheetPages } from './sheetPages';
import { cautionPages, signOffPages } from './signOffPages';
import { stockPages } from './stockPages';
import { surveyPages } from './surveyPages';
import { tileMapPage } from './tileMapPage';
import { tilePages } from './tilePages';
import { tilePlan } from './tilePlan';
import { wallPages } from './wallPages';
import { workPages } from './workPages';

export interface JobPackOptions {
  /** Letter for a job shown in inches, A4 otherwise */
  paper?: PaperName;
}

/**
 * The whole job on paper: cover, walls, survey record, a cut card per panel, holes, the other pieces, sheets, stock
 * lengths, materials, adhesive, how the sheets sit, order of work, joints, cautions, sign-off, then every panel at 1:1.
 */
export async function jobPack(
  job: Job,
  result: Result,
  drawings: PanelDrawing[],
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const paper = pagePaper(job, options.paper);
  const tilePaper = options.paper ? papers[options.paper] : paper;
  const pack = await Pack.open(job.name, paper, fonts);
  const contents = coverPages(pack, job, result, drawings, 16 + 2 * drawings.length);
  const enter = (title: string, leaf: Leaf | null): void => {
    if (leaf !== null) contents.enter(title, leaf);
  };
  enter('Walls and what was assumed', wallPages(pack, job, result));
  enter('Survey record', surveyPages(pack, job, result));
  for (const drawing of drawings) enter(`${drawing.title}: cut card`, cardPage(pack, drawing));
  enter('Hole map', holePages(pack, job, drawings));
  const pieces = pieceDrawings(job, result, drawings[0]?.view);
  enter('Trim, legs and shelves', piecePages(pack, job, result, pieces));
  enter('Sheets', sheetPages(pack, job, result));
  enter('Stock lengths', stockPages(pack, job, result));
  enter('Materials to buy', materialsPages(pack, job, result));
  enter('Adhesive layout', adhesivePages(pack, job, result));
  enter('How the sheets sit', bedPages(pack, job, result));
  enter('Virtual dry fit', dryFitPages(pack, job, result));
  enter('Order of work', workPages(pack, job, result));
  enter('Joint map', jointPages(pack, job, result));
  enter('Cautions', cautionPages(pack, result));
  enter('Sign-off', signOffPages(pack, job, result));
  for (const drawing of drawings) {
    enter(`${drawing.title}: full-size template`, fullSizePages(panelFullSize(drawing)));
  }
  const small = pieces.flatMap((drawing) => pieceFullSize(drawing) ?? []);
  const [firstSmall] = small.map(fullSizePages);
  if (firstSmall) contents.enter('Legs, shelves and feet: full-size templates', firstSmall);
  return pack.close();

  /** A map of the tiles and the tiles; the tile alone where one page holds all. */
  function fullSizePages(full: FullSize): Leaf {
    const plan = tilePlan(full.tiled, tilePaper);
    const leaf = plan.tiles.length > 1 ? tileMapPage(pack, full, plan) : null;
    const [tile] = tilePages(pack, full, plan);
    return leaf ?? tile!;
  }
}
