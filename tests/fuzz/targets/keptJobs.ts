import { strToU8, zipSync } from 'fflate';
import { draftOf } from '../../../src/job/draft';
import { type JobsRead, packJobs, readJobs } from '../../../src/job/jobs-file';
import { keptDraft } from '../../../src/job/kept-draft';
import { usable } from '../../../src/job/usable';
import { mutatedBytes, mutatedValue } from '../mutate';
import { jobs } from '../samples';
import { must, target } from '../target';
import { tell } from './jobFiles';

const drafts = jobs.map((job, i) => ({
  ...draftOf(job, `job-${i}`),
  typed: { '["readings","r1","value"]': '29 3/', '["fit","top"]': 'up to there' },
}));
const picture = new Uint8Array([0xff, 0xd8, 0xff, 1, 2, 3]);
const photo = { job: '', id: 'p1', bytes: picture, type: 'image/jpeg', width: 4, height: 3, takenAt: 7 };
const shelved = drafts.map((draft) => ({ draft, changedAt: 5, photos: [photo] }));
const packed = [shelved, ...shelved.map((each) => [each])].map((some) => {
  const file = packJobs(some);
  if (!file.ok) throw new Error(file.message);
  return typeof file.content === 'string' ? strToU8(file.content) : file.content;
});

function takenOrTold(read: JobsRead): void {
  if (!read.ok) {
    must(/^[A-Z].*\.$/s.test(read.message), `no sentence: ${read.message}`);
    return;
  }
  for (const { job, faults } of read.jobs) {
    if (job === null) tell(faults);
    else must(usable(job.draft).ok, 'a job came in that cannot be worked with');
  }
}

export const keptJobTargets = [
  target({
    name: 'jobs-file',
    about: 'Files of jobs with bytes changed or torn off are brought in or refused with a sentence.',
    cases: mutatedBytes(packed),
    check: (bytes) => takenOrTold(readJobs('x.zip', bytes, 0)),
    inTests: 1500,
  }),
  target({
    name: 'jobs-file-contents',
    about: 'Files of jobs whose table of contents was tampered with are brought in or refused with a sentence.',
    cases: mutatedValue([
      {
        format: 'nookwright-jobs',
        version: 1,
        jobs: [
          {
            file: 'jobs/a.json',
            draft: 'jobs/a.draft.json',
            changedAt: 1,
            photos: [{ file: 'photos/p1.jpg', ...photo, bytes: undefined }],
          },
        ],
      },
    ]),
    check: (contents) => {
      const draft = JSON.stringify(drafts[0]);
      const parts = {
        'contents.json': JSON.stringify(contents) ?? '',
        'jobs/a.json': '{}',
        'jobs/a.draft.json': draft,
      };
      const zip = zipSync({
        ...Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])),
        'photos/p1.jpg': picture,
      });
      takenOrTold(readJobs('x.zip', new Uint8Array(zip), 0));
    },
    inTests: 800,
  }),
  target({
    name: 'kept-draft',
    about: 'What storage gives back is a draft that can be worked with, or none.',
    cases: mutatedValue(drafts),
    check: (value) => {
      const draft = keptDraft(value);
      if (draft === null) return;
      const made = usable(draft);
      must(made.ok, 'taken up, yet no job can be made of it');
      // What is set aside is named by its list and id; a path within it is there where the fault has one.
      for (const { id, faults } of made.setAside)
        tell(faults.map((fault) => ({ ...fault, path: `${id}/${fault.path}` })));
      const items = made.job.readings.length + made.setAside.filter(({ list }) => list === 'readings').length;
      must(items === draft.job.readings.length, 'a reading is neither used nor set aside');
    },
    inTests: 1500,
  }),
];
