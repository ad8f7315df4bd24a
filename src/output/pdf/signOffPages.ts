import type { Job, Result } from '../../core';
import { capital } from '../drawing';
import { whenWords } from '../words';
import { generalCautions, printCaution } from './cautions';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

const BLANK = '______________';

/** Usual cautions, general ones first, then those of steps of the work; returns the page. */
export function cautionPages(pack: Pack, { sequence }: Result): Leaf {
  const flow = new Flow(
    pack,
    'Cautions',
    "Usual ones, not all there are. The product's own sheet, local code and licensed trades go before anything printed here.",
  );
  const first = flow.leaf;
  flow.heading('Before you start');
  flow.list([...generalCautions, printCaution], '!');
  flow.heading('With the steps they belong to');
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
  );
  return first;
}

/** Every check of the work with room for initials, and who stands for the whole; returns the page. */
export function signOffPages(pack: Pack, job: Job, { sequence }: Result): Leaf {
  const flow = new Flow(
    pack,
    'Sign-off',
    'A check is a gate: what comes after it waits until it has passed and is initialled.',
  );
  const first = flow.leaf;
  flow.table(
    [
      { title: '' },
      { title: 'Check', bold: true },
      { title: 'Planned' },
      { title: 'Passed on' },
      { title: 'Initials' },
    ],
    sequence
      .filter(({ kind }) => kind === 'gate')
      .map(({ label, start }) => ['☐', capital(label), whenWords(start, job.schedule), BLANK, '________']),
    9.5 * POINT,
  );
  for (const [heading, words] of [
    ['Survey', 'Readings taken and checked; what the record names for re-measuring was measured again.'],
    ['Fitting', 'Every panel was dry fitted before adhesive; joints are sealed as mapped; the cure was kept.'],
    ['Hand-over', 'No leaks seen; the water does not scald; care notes and this record were handed over.'],
  ] as const) {
    flow.heading(heading);
    flow.paragraph(words);
    flow.y -= 5;
    flow.paragraph(`Name ${BLANK}${BLANK}    date ${BLANK}    signature ${BLANK}${BLANK}`);
  }
  flow.heading('Found on the job, changed or left open');
  for (let line = 0; line < 4; line++) {
    flow.ensure(9);
    flow.y -= 8;
    flow.leaf.pen.line([flow.leaf.content.left, flow.y], [flow.leaf.content.right, flow.y], { width: 0.15, gray: 0.4 });
  }
  return first;
}
