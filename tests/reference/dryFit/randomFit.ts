import { Matrix } from 'ml-matrix';
import type { DryFit, Job, JobInput, ReadBack, Result } from '../../../src/core';
import { dryFitIn } from '../../../src/core/dry-fit';
import { fitPieces } from '../../../src/core/fitPieces';
import { fitPanel, type PanelName } from '../../../src/core/panel';
import { panelDxf, pieceDxf } from '../../../src/output';
import { panelDrawing, pieceDrawing, type View } from '../../../src/output/drawing';
import { readTemplate } from '../../../src/output/dryFit';
import { jobWith, plausibleAlcove, surfacesOf } from '../../simulate';

/** Trim, legs, fillers and shelves in all their joints. */
const CHOICES: Partial<JobInput>[] = [
  { rim: { width: 700 }, trim: { rise: 20 }, shelves: [{}, { corner: 'left', aboveRim: 900 }] },
  { rim: { width: 745 }, trim: { joinery: 'mitre', lip: 6, insideCorners: true } },
  {
    rim: { width: 800 },
    trim: { lip: 6, rise: 24, insideCorners: true },
    shelves: [{}, { corner: 'left', aboveRim: 800, front: 'returned' }],
  },
  {
    rim: {
      width: 690,
      profile: [
        [0, 0],
        [20, -8],
      ],
      apron: [
        [5, -60],
        [-12, -240],
        [-12, -400],
      ],
    },
  },
];

export interface RandomJob {
  truth: ReturnType<typeof plausibleAlcove>;
  job: Job;
  result: Pick<Result, 'panels' | 'pieces'>;
}

/** A random alcove and everything cut for it. */
export function randomJob(seed: number, choices = CHOICES[seed % CHOICES.length]): RandomJob {
  const truth = plausibleAlcove(seed);
  const job = jobWith([], choices);
  const alcove = surfacesOf(truth);
  const covariance = Matrix.eye(25, 25, 0);
  const panel = (name: PanelName) => fitPanel(alcove, covariance, job, name).panel;
  const panels = { back: panel('back'), left: panel('left'), right: panel('right') };
  return { truth, job, result: { panels, pieces: fitPieces(alcove, covariance, job, panels).pieces } };
}

/** The text of every template's DXF file. */
export async function dxfFiles(
  { job, result: { panels, pieces } }: RandomJob,
  view: View,
): Promise<Map<string, string>> {
  const files = new Map<string, string>();
  for (const panel of Object.values(panels)) {
    files.set(`panels.${panel.name}`, await panelDxf(panelDrawing(panel, job, [], view)));
  }
  for (const piece of [...pieces.trim, ...pieces.legs, ...pieces.fillers, ...pieces.shelves]) {
    files.set(piece.id, await pieceDxf(pieceDrawing(piece, job, view)));
  }
  return files;
}

/**
 * The virtual dry fit of every piece in a random alcove, from the text of its DXF file; every other one with the back
 * up.
 */
export async function randomFit(seed: number, choices?: Partial<JobInput>): Promise<DryFit> {
  const made = randomJob(seed, choices);
  const templates = new Map<string, ReadBack>();
  for (const [piece, text] of await dxfFiles(made, seed % 2 === 0 ? 'face' : 'back')) {
    templates.set(piece, await readTemplate(text));
  }
  return dryFitIn(surfacesOf(made.truth), made.job, made.result, templates);
}
