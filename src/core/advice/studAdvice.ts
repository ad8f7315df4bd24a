import type { Fixture, Job } from '../job-file';
import type { Panel } from '../panel';
import { whereOf } from './accessAdvice';
import type { Advice } from './advice';

/** A bar's flange wants this much wood either side of its middle, mm (common practice, no source). */
const HALF_HOLD = 10;

/**
 * Where studs are known: a body or pipe that would come out of a stud, and a grab bar that would miss one. Bars must be
 * fixed to what holds a person; the panel never does.
 */
export function studAdvice({ fixtures, studs }: Job, panels: Record<Fixture['wall'], Panel>): Advice[] {
  return fixtures.flatMap((fixture): Advice[] => {
    const hole = panels[fixture.wall].holes.find(({ id }) => id === fixture.id);
    const known = studs.filter(({ wall }) => wall === fixture.wall);
    if (!hole || known.length === 0) return [];
    const common = { where: whereOf(fixture), source: 'common practice, no source' };
    if (fixture.kind === 'grab-bar') {
      const off = Math.min(...known.map(({ at, width }) => Math.abs(hole.u - at) - (width / 2 - HALF_HOLD)));
      return [
        {
          ...common,
          what: 'a grab bar must be fixed to a stud or to blocking that holds a person, never to the panel',
          met: off <= 0,
          howMuch: Math.max(0, off),
        },
      ];
    }
    const over = Math.max(...known.map(({ at, width }) => width / 2 + hole.diameter / 2 - Math.abs(hole.u - at)));
    return [
      {
        ...common,
        what: 'the hole is to stay clear of the studs, so that the body behind it has room',
        met: over <= 0,
        howMuch: Math.max(0, over),
      },
    ];
  });
}
