import type { Job, Result } from '../../core';
import type { OutputFonts } from '../outputFonts';
import { Flow } from './flow';
import type { JobPackOptions } from './jobPack';
import { Pack } from './pack';
import { pagePaper } from './paper';
import { readingAdvice } from './readingAdvice';
import { surveyPages } from './surveyPages';
import { verdictPages } from './verdictPages';

/** The filled survey record: every reading with its misfit, what the survey says about itself, walls judged. */
export async function surveyRecord(
  job: Job,
  result: Result,
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const paper = pagePaper(job, options.paper);
  const pack = await Pack.open(job.name, paper, fonts);
  surveyPages(pack, job, result);
  const flow = new Flow(pack, 'What the readings say', 'What was assumed, what looks wrong and what to read next.');
  flow.list(readingAdvice(job, result.adjustment));
  flow.paragraph('Read by ____________________   date ______________   signed ____________________');
  verdictPages(pack, job, result);
  return pack.close();
}
