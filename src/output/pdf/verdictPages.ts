import {
  formatLength,
  formatPlusMinus,
  type Job,
  type PlaceVerdict,
  type Result,
  toleranceSets,
  Z_95,
} from '../../core';
import { figureWords, judgementWords, ruleWords, verdictWords } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Walls, corners and rim judged, figure by figure, with what it means; returns the first page. */
export function verdictPages(pack: Pack, job: Job, result: Result): Leaf {
  const { set, own } = job.tolerances;
  const tolerances = toleranceSets.find(({ id }) => id === set)!;
  const flow = new Flow(pack, 'How the walls are judged', `Tolerances: ${tolerances.name}. ${tolerances.about}`);
  const first = flow.leaf;
  flow.paragraph(`Source: ${tolerances.source} ${ownWords(own)}`, { size: 8 * POINT });
  flow.paragraph(ruleWords, { size: 8 * POINT });
  const { walls, corners, rim } = result;
  const places: [string, PlaceVerdict][] = [
    ['Left wall', walls.left.verdict],
    ['Back wall', walls.back.verdict],
    ['Right wall', walls.right.verdict],
    ['Left corner', corners.left.verdict],
    ['Right corner', corners.right.verdict],
    ['Rim', rim.verdict],
  ];
  for (const [title, { verdict, because }] of places) {
    flow.heading(`${title}: ${verdictWords[verdict].toLowerCase()}`);
    flow.list(because);
  }
  flow.heading('Figures');
  flow.table(
    [
      { title: 'Where', bold: true },
      { title: 'What' },
      { title: 'Found', align: 'end' },
      { title: '±', align: 'end' },
      { title: 'Over', align: 'end' },
      { title: 'Limit', align: 'end' },
      { title: 'Judged' },
    ],
    places.flatMap(([title, { figures }]) =>
      figures.map(({ figure, value, sd, over, limit, judgement }) => [
        title,
        figureWords[figure],
        formatLength(value, { unit: job.display, denominator: 32 }),
        formatPlusMinus(Z_95 * sd, { unit: job.display }),
        formatLength(over, { unit: job.display }),
        limit === null ? '–' : formatLength(limit, { unit: job.display, denominator: 32 }),
        judgementWords[judgement],
      ]),
    ),
    8 * POINT,
  );
  flow.paragraph(
    'Found: plumb and bow as on site, plus = leans into the room or hollow; square plus = open; level plus = higher at the right or the front. Each ± holds 19 times in 20.',
    { size: 8 * POINT },
  );
  return first;
}

function ownWords(own: Job['tolerances']['own']): string {
  const parts = Object.entries(own).map(([name, value]) => `${name} ${value} ${name === 'flat' ? 'mm' : 'mm/m'}`);
  return parts.length > 0 ? `Limits of one’s own in their place: ${parts.join(', ')}.` : '';
}
