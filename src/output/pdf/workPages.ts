import { type Job, type Result, type SequenceStep, temperatureText } from '../../core';
import { capital } from '../drawing';
import { durationWords, whenWords } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

const kinds = { work: '', gate: 'CHECK', wait: 'wait' };

/**
 * Checklist of the work with times and room for initials, and what can be done while something cures; returns the first
 * page.
 */
export function workPages(pack: Pack, job: Job, { sequence }: Result): Leaf {
  const { people, temperature } = job.schedule;
  const flow = new Flow(
    pack,
    'Order of work',
    `For ${people === 1 ? 'one person' : 'two people'} at ${temperatureText('temperature', temperature, job.display)}, by the rates in the job (common practice, no source, until you put in your own). A step with an asterisk cannot slip without moving the end; nothing goes past a CHECK until it is initialled.`,
  );
  const first = flow.leaf;
  flow.table(
    [
      { title: '' },
      { title: 'Begin' },
      { title: 'Step', bold: true },
      { title: '' },
      ...(people === 2 ? [{ title: 'Who' }] : []),
      { title: 'Takes', align: 'end' as const },
      { title: 'Can slip', align: 'end' as const },
      { title: 'Initials' },
    ],
    sequence.map((step) => [
      step.kind === 'wait' ? '' : '☐',
      whenWords(step.start, job.schedule),
      capital(step.label),
      kinds[step.kind],
      ...(people === 2 ? [whoWords(step)] : []),
      durationWords(step.duration),
      step.critical ? '*' : durationWords(step.float),
      step.kind === 'wait' ? '' : '_______',
    ]),
    8 * POINT,
  );
  const waits = sequence.filter(({ kind }) => kind === 'wait');
  flow.heading('While it cures');
  flow.list(
    waits.map((wait) => {
      const during = sequence.filter((step) => step.during.includes(wait.id)).map(({ label }) => label.split(':')[0]!);
      return `${capital(wait.label)}, until ${whenWords(wait.finish, job.schedule)}: ${during.length === 0 ? 'nothing else is left to do meanwhile' : during.join('; ')}.`;
    }),
  );
  return first;
}

const whoWords = ({ who }: SequenceStep): string => (who.length === 2 ? 'both' : who.map(String).join(''));
