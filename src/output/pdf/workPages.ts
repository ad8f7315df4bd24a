import type { Job, Result } from '../../core';
import { durationWords, whenWords } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

const kinds = { work: '', gate: 'CHECK', wait: 'wait' };

/** Checklist of the work with times and room for initials, cautions, sign-off; returns the first page. */
export function workPages(pack: Pack, job: Job, { sequence }: Result): Leaf {
  const { people, temperature } = job.schedule;
  const flow = new Flow(
    pack,
    'Order of work',
    `For ${people === 1 ? 'one person' : 'two people'} at ${temperature} °C, by the rates in the job. A step with an asterisk cannot slip without moving the end.`,
  );
  const first = flow.leaf;
  flow.table(
    [
      { title: 'Begin' },
      { title: 'Step', bold: true },
      { title: '' },
      { title: 'Takes', align: 'end' },
      { title: 'Can slip', align: 'end' },
      { title: 'Done by' },
    ],
    sequence.map((step) => [
      whenWords(step.start, job.schedule),
      `${step.label}${step.people === 2 ? ' (two people)' : ''}${step.during.length > 0 ? ' – while it cures' : ''}`,
      kinds[step.kind],
      durationWords(step.duration),
      step.critical ? '*' : durationWords(step.float),
      '________',
    ]),
    8 * POINT,
  );
  flow.heading('Cautions, and the steps they belong to');
  const cautions = [...new Set(sequence.flatMap((step) => step.cautions))];
  flow.list(
    cautions.map((caution) => {
      const steps = sequence
        .filter((step) => step.cautions.includes(caution))
        .map(({ label }) => label.split(/[:,]/)[0]!);
      const named = steps.slice(0, 3).join('; ');
      return `${caution} (${named}${steps.length > 3 ? `; and ${steps.length - 3} more` : ''})`;
    }),
    '!',
    8 * POINT,
  );
  flow.heading('Sign-off');
  for (const line of [
    'Walls and readings checked',
    'Every panel dry fitted',
    'Sealed, cured, no leaks',
    'Handed over',
  ]) {
    flow.paragraph(`${line}:  name ____________________  date ______________  signature ____________________`);
  }
  return first;
}
