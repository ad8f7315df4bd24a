import type { Job, Result } from '../../core';
import type { OutputFonts } from '../outputFonts';
import { adhesivePages } from './adhesivePages';
import type { JobPackOptions } from './jobPack';
import { jointPages } from './jointPages';
import { Pack } from './pack';
import { pagePaper } from './paper';
import { cautionPages, signOffPages } from './signOffPages';
import { workPages } from './workPages';

/** The pages of the job pack that hang on the wall while one works: order of work, adhesive, joints, cautions, sign-off. */
export async function checklist(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const paper = pagePaper(job, options.paper);
  const pack = await Pack.open(job.name, paper, fonts);
  workPages(pack, job, result);
  adhesivePages(pack, job, result);
  jointPages(pack, job, result);
  cautionPages(pack, result);
  signOffPages(pack, job, result);
  return pack.close();
}
