import { formatPlusMinus, type Job, type PlannedReading, type Reading, surveyPlan } from '../../core';
import type { OutputFonts } from '../outputFonts';
import { Flow } from './flow';
import type { JobPackOptions } from './jobPack';
import { Pack } from './pack';
import { pagePaper } from './paper';
import { readingWords } from './readingWords';

const BLANK = '__________';

/** The field sheet of the shortest plan of readings for this alcove. */
export const plannedFieldSheet = (job: Job, fonts: OutputFonts, options?: JobPackOptions): Promise<Uint8Array> =>
  fieldSheet(job, surveyPlan(job), fonts, options);

/** The readings of a survey plan in walking order with room to write what is read, twice, and a note. */
async function fieldSheet(
  job: Job,
  plan: readonly PlannedReading[],
  fonts: OutputFonts,
  options: JobPackOptions = {},
): Promise<Uint8Array> {
  const paper = pagePaper(job, options.paper);
  const pack = await Pack.open(job.name, paper, fonts);
  const reached = plan.at(-1);
  const width = (mm: number): string => formatPlusMinus(mm, { unit: job.display });
  const flow = new Flow(
    pack,
    'Field sheet',
    `Draw a level line round the alcove and a plumb line on the back wall, then read in this order. ${reached === undefined ? '' : `With all of it every cut edge is known to ${width(reached.after)}, 19 times in 20. `}Read twice where there is room; write what the tape says, not what it should say.`,
  );
  const planned = { ...job, readings: plan.map(({ reading, step }) => ({ ...reading, id: String(step) }) as Reading) };
  for (const round of [1, 2] as const) {
    const steps = plan.filter((each) => each.round === round);
    if (steps.length === 0) continue;
    flow.heading(
      round === 1
        ? 'First: enough for a drawing, and for gross misreadings to show'
        : 'Then: until every cut edge is certain enough',
    );
    flow.table(
      [
        { title: '' },
        { title: 'What and where', bold: true },
        { title: 'Read', align: 'end' },
        { title: 'Again', align: 'end' },
        { title: 'Cut edges then', align: 'end' },
      ],
      steps.flatMap(({ step, reading, after }) =>
        rowIds(step, reading).map((id, i) => {
          const { what, where } = readingWords(id, planned);
          return [i === 0 ? String(step) : '', `${what}: ${where}`, BLANK, BLANK, i === 0 ? width(after) : ''];
        }),
      ),
    );
  }
  flow.paragraph('Read by ____________________   date ______________   tape ____________   level ____________');
  return pack.close();
}

const rowIds = (step: number, reading: PlannedReading['reading']): string[] =>
  reading.kind === 'plumb' ? reading.gaps.map((_, i) => `${step}/${i}`) : [String(step)];
