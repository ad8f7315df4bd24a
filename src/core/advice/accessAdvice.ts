import type { Fixture, Job } from '../job-file';
import { MM_PER_INCH } from '../length';
import type { Panel, PanelHole } from '../panel';
import type { Advice } from './advice';

const STANDARDS = '2010 ADA Standards for Accessible Design';
/** From a bar's middle up to the top of its grip: bars are 1 1/4 to 2 in across (section 609.2.1). */
const GRIP = { least: 0.625 * MM_PER_INCH, most: MM_PER_INCH };

/** A height that a section asks for, as a range above the floor or above the rim, or both at once, mm. */
interface Rule {
  what: string;
  section: string;
  aboveFloor?: readonly [number, number];
  aboveRim?: readonly [number, number];
}

/** 609.4: top of the gripping surface 33 to 36 in above the floor. */
const BAR: Rule = {
  what: "a grab bar's grip is to lie 33 to 36 in above the floor, measured to its top",
  section: '609.4',
  aboveFloor: [33 * MM_PER_INCH - GRIP.most, 36 * MM_PER_INCH - GRIP.least],
};
/** 607.4.2.1: on the back wall of a tub a second bar, 8 to 10 in above the rim. */
const LOWER_BAR: Rule = {
  what: "the lower bar on the back wall of a tub is to lie 8 to 10 in above the rim, measured to its grip's top",
  section: '607.4.2.1',
  aboveRim: [8 * MM_PER_INCH - GRIP.most, 10 * MM_PER_INCH - GRIP.least],
};
/** 608.5.1: 38 to 48 in above the shower's floor. */
const SHOWER_CONTROL: Rule = {
  what: "a shower's controls are to lie 38 to 48 in above its floor",
  section: '608.5.1',
  aboveFloor: [38 * MM_PER_INCH, 48 * MM_PER_INCH],
};
/** 607.5: between the rim and the grab bar. */
const TUB_CONTROL: Rule = {
  what: "a tub's controls are to lie between its rim and the grab bar above it (at most 36 in above the floor)",
  section: '607.5',
  aboveFloor: [0, 36 * MM_PER_INCH],
  aboveRim: [0, Number.POSITIVE_INFINITY],
};

/**
 * What the published accessibility clauses say of the heights and places of bars and controls, for those who want an
 * accessible bath. Never a statement that a job complies: local code decides.
 */
export function accessAdvice(job: Job, panels: Record<Fixture['wall'], Panel>): Advice[] {
  return job.fixtures.flatMap((fixture) => {
    const hole = panels[fixture.wall].holes.find(({ id }) => id === fixture.id);
    return hole ? rulesFor(fixture, job, hole).map((advice) => ({ where: whereOf(fixture), ...advice })) : [];
  });
}

export const whereOf = ({ wall, id }: Pick<Fixture, 'wall' | 'id'>): string => `panels.${wall}.holes.${id}`;

function rulesFor(fixture: Fixture, job: Job, hole: PanelHole): Omit<Advice, 'where'>[] {
  const tub = job.rim.kind === 'tub';
  const judged = ({ what, section, aboveFloor, aboveRim }: Rule): Omit<Advice, 'where'> => {
    const off = Math.max(outside(job.levelAboveFloor + hole.v, aboveFloor), outside(fixture.aboveRim, aboveRim));
    return { what, met: off === 0, howMuch: off, source: `${STANDARDS}, section ${section}` };
  };
  if (fixture.kind === 'grab-bar') {
    const both = [judged(BAR), ...(tub && fixture.wall === 'back' ? [judged(LOWER_BAR)] : [])];
    return [both.find(({ met }) => met) ?? both.reduce((a, b) => ((b.howMuch ?? 0) < (a.howMuch ?? 0) ? b : a))];
  }
  if (fixture.kind !== 'valve') return [];
  if (!tub) return [judged(SHOWER_CONTROL)];
  return [judged(TUB_CONTROL), ...(fixture.wall === 'back' ? [] : [openSide(hole, job)])];
}

/** 607.5: between the open side and the middle of the tub's width. */
function openSide(hole: PanelHole, { rim }: Job): Omit<Advice, 'where'> {
  const off = outside(hole.u, [rim.width / 2, rim.width]);
  return {
    what: "a tub's controls are to lie between its open side and the middle of its width",
    met: off === 0,
    howMuch: off,
    source: `${STANDARDS}, section 607.5`,
  };
}

const outside = (value: number, range: readonly [low: number, high: number] | undefined): number =>
  range === undefined ? 0 : Math.max(0, range[0] - value, value - range[1]);
