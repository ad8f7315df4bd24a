import { type DryFit, dryFit, type Job, type ReadBack, type Result } from '../../core';
import { readTemplate } from './readTemplate';

/**
 * The virtual dry fit from the text of the templates' DXF files.
 * @param files by `panels.left` or the piece's id
 */
export async function dryFitOf(job: Job, result: Result, files: ReadonlyMap<string, string>): Promise<DryFit> {
  const templates = new Map<string, ReadBack>();
  for (const [piece, text] of files) templates.set(piece, await readTemplate(text));
  return dryFit(job, result, templates);
}
