import { type Fault, type ParsedJob, parseJob, parseJobText, solve } from '../../../src/core';
import { resultJson } from '../../../src/output';
import { anyJob, slippedJob } from '../../unit/core/anyJob';
import { mutatedText, mutatedValue } from '../mutate';
import { jobTexts, jobValues } from '../samples';
import { must, target } from '../target';

/** Each fault names a place and says what is wrong there. */
export function tell(faults: readonly Fault[]): void {
  must(faults.length > 0, 'refused without a fault');
  for (const { path, message } of faults) {
    must(path !== '', 'a fault without a place');
    must(/\p{L}/u.test(message), `${path}: says nothing`);
  }
}

/** What is taken is taken whole: written and read again it is the same. */
function takenOrTold(parsed: ParsedJob): void {
  if (!parsed.ok) {
    tell(parsed.faults);
    return;
  }
  const again = parseJob(JSON.parse(JSON.stringify(parsed.job)));
  must(again.ok && JSON.stringify(again.job) === JSON.stringify(parsed.job), 'changes when it is kept');
}

export const jobFileTargets = [
  target({
    name: 'job-values',
    about:
      'Job files with values, keys and items replaced, left out, doubled or added are taken whole or refused with a place.',
    cases: mutatedValue(jobValues),
    check: (value) => {
      const parsed = parseJob(value);
      takenOrTold(parsed);
      if (parsed.ok) keptKeys(value, parsed.job, '');
    },
    inTests: 3000,
  }),
  target({
    name: 'job-text',
    about: 'Texts of job files with stretches changed or cut off are taken whole or refused with a place.',
    cases: mutatedText(jobTexts, ['{', '}', '[', ']', '"', ',', ':', '\\u0000', '1e999', '-', '/*', '\uFEFF', '{"a":']),
    check: (text) => takenOrTold(parseJobText(text)),
    inTests: 2000,
  }),
  target({
    name: 'any-job',
    about: 'Any job that the schema takes, most of alcoves that cannot be, gives a result of finite numbers.',
    cases: anyJob,
    check: (job) => void resultJson(solve(job)),
    inTests: 60,
  }),
  target({
    name: 'slipped-job',
    about: 'A full survey with a few values replaced by any others gives a result of finite numbers.',
    cases: slippedJob,
    check: (job) => void resultJson(solve(job)),
    inTests: 60,
  }),
];

/** Whatever stood in the file stands in the job that was made of it. */
function keptKeys(given: unknown, taken: unknown, path: string): void {
  if (given === null || typeof given !== 'object') {
    must(Object.is(given, taken) || (given === 0 && taken === 0), `${path} is not what the file says`);
    return;
  }
  for (const [key, value] of Object.entries(given)) {
    must(taken !== null && typeof taken === 'object' && Object.hasOwn(taken, key), `${path}.${key} was dropped`);
    keptKeys(value, (taken as Record<string, unknown>)[key], `${path}.${key}`);
  }
}
