import type { Job, Result } from '../../core';
import { capital } from '../drawing';
import { judgedPlaces, verdictWords } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { readingAdvice } from './readingAdvice';
import { placesOf } from './readingWords';
import { angleWords, hollowWords, leanWords, rimWords, twistWords } from './wallWords';

/** How each wall stands, and what the readings say about themselves; returns the page. */
export function wallPages(pack: Pack, job: Job, result: Result): Leaf {
  const flow = new Flow(
    pack,
    'Walls and what was assumed',
    'As adjusted from the readings. ± holds in 95 of 100 cases.',
  );
  const first = flow.leaf;
  verdicts(flow, result);
  wallTables(flow, result, job);
  flow.heading('What the readings say');
  flow.list(readingAdvice(job, result.adjustment));
  return first;
}

/** What each wall, corner and the rim mean for the panels, and why. */
function verdicts(flow: Flow, result: Result): void {
  flow.heading('Verdict');
  flow.table(
    [{ title: 'Place', bold: true }, { title: 'Verdict', bold: true }, { title: 'Because' }],
    judgedPlaces(result).map(({ place, verdict, because }) => [
      place,
      verdictWords[verdict],
      because.join(' ') || 'all within limits',
    ]),
  );
}

function wallTables(flow: Flow, { walls, corners, rim }: Result, job: Job): void {
  const { height } = placesOf(job);
  flow.heading('Walls as measured');
  flow.table(
    [
      { title: 'Wall', bold: true },
      { title: 'Out of plumb' },
      { title: 'Bow, upright' },
      { title: 'Bow, across' },
      { title: 'Twist' },
    ],
    (['back', 'left', 'right'] as const).map((name) => {
      const wall = walls[name];
      return [
        capital(name),
        leanWords(wall, job),
        hollowWords(wall.bow, wall.bowSd, job),
        hollowWords(wall.bowAcross, wall.bowAcrossSd, job),
        twistWords(wall.twist, wall.twistSd, job),
      ];
    }),
  );
  const stations = corners.left.angle;
  flow.table(
    [{ title: 'Inside angle', bold: true }, ...stations.map((station) => ({ title: height(station.height) }))],
    (['left', 'right'] as const).map((side) => [
      `${side === 'left' ? 'Left' : 'Right'} corner`,
      ...corners[side].angle.map(({ value, sd }) => angleWords(value, sd)),
    ]),
  );
  flow.paragraph(rimWords(rim, job));
}
