import { type Carried, formatLength, formatPlusMinus, type Job, type Passage, type WayIn, Z_95 } from '../../core';
import { force } from './bedWords';

/** How a panel gets in, for people: weight, one line, and what goes with it. */
export interface WayWords {
  weight: 'good' | 'warn' | 'bad';
  head: string;
  more: string[];
}

type Shown = Pick<Job, 'display'>;

const fine = (mm: number, { display }: Shown): string => formatLength(mm, { unit: display, denominator: 32 });
const sure = (sd: number, { display }: Shown): string => formatPlusMinus(Z_95 * sd, { unit: display, denominator: 32 });

const panelNames: Record<WayIn['panel'], string> = {
  back: 'back panel',
  left: 'left side panel',
  right: 'right side panel',
};

const heads: Record<WayIn['way'], string> = {
  straight: 'Goes straight in',
  tilted: 'Goes in turned',
  bowed: 'Goes in bowed',
  blocked: 'Does not go in as it is',
};

export function wayWords(way: WayIn, job: Shown): WayWords {
  return {
    weight: way.way === 'blocked' ? 'bad' : way.way === 'straight' && !way.doubtful ? 'good' : 'warn',
    head: `${heads[way.way]}${turnWords(way)}`,
    more: [
      ...clearanceWords(way, job),
      ...straightWords(way, job),
      ...bowWords(way, job),
      ...roomWords(way, job),
      help(way),
    ].filter((line) => line !== ''),
  };
}

function turnWords({ tilt, way }: WayIn): string {
  if (tilt === null || way !== 'tilted') return '';
  const about = tilt.about === 'upright' ? 'about an upright line' : 'about a level line';
  return ` by ${degrees(tilt.angle)} ${about}, ${tilt.first} edge first`;
}

function clearanceWords({ clearance, sd, doubtful, way, tightest, panel }: WayIn, job: Shown): string[] {
  if (clearance === null) {
    return ['Nothing bounds it: no ceiling or header is given.'];
  }
  const where =
    tightest && panel === 'back'
      ? `, tightest ${fine(Math.abs(tightest.height), job)} ${tightest.height < 0 ? 'below' : 'above'} the level line, ${fine(Math.max(0, tightest.depth), job)} out from the back wall`
      : '';
  const sides = panel === 'back' ? 'on each side' : 'above and below';
  if (way === 'blocked') return [`Lacks ${fine(-clearance, job)} ${sure(sd, job)} ${sides}${where}.`];
  return [
    `${fine(clearance, job)} ${sure(sd, job)} free ${sides}${where}.`,
    ...(doubtful ? ['That is less than the readings are sure of: try it dry, with a plane at hand.'] : []),
  ];
}

function straightWords({ way, straight }: WayIn, job: Shown): string[] {
  if (way === 'straight' || way === 'blocked' || straight.clearance === null || straight.clearance >= 0) return [];
  return [`Straight in it would lack ${fine(-straight.clearance, job)} ${sure(straight.sd, job)} on each side.`];
}

function bowWords({ bow, way }: WayIn, job: Shown): string[] {
  if (bow === null) return [];
  const strain = `${bow.strain.toFixed(2)} % strain at its face, its limit is ${bow.limit.toFixed(2)} %`;
  if (way === 'blocked') {
    return [`Bowed so that it passes, its middle would stand out by ${fine(bow.sagitta, job)}: ${strain}.`];
  }
  return [
    `Edges drawn together by ${fine(bow.shortening, job)}, its middle stands out by ${fine(bow.sagitta, job)}: ${strain}. About ${force(bow.force, job)} hold it.`,
  ];
}

function roomWords({ lift, reach }: WayIn, job: Shown): string[] {
  return [
    ...(lift > 0.5 ? [`Lift it by ${fine(lift, job)} until it is at the wall, so that it clears the rim.`] : []),
    ...(reach > 1 ? [`Keep ${fine(reach, job)} free in front of the alcove for the turn.`] : []),
  ];
}

const help = ({ way, panel }: WayIn): string =>
  way !== 'blocked'
    ? ''
    : panel === 'back'
      ? 'What helps: a seam, so that it comes in two parts; a thinner sheet that bends further; side walls brought back where they lean in.'
      : 'What helps: a lower top, or a level seam, so that it comes in two parts.';

export const degrees = (angle: number): string =>
  `${angle < 10 ? Math.max(0.1, Math.round(angle * 10) / 10) : Math.round(angle)}°`;

export const carriedName = ({ panel, as }: Pick<Carried, 'panel' | 'as'>): string =>
  as === 'sheet' ? `sheet for the ${panelNames[panel]}` : `${panelNames[panel]}, cut`;

export const passageNames: Record<Passage['place'], string> = {
  door: 'Door',
  corridor: 'Turn of the corridor',
  stair: 'Stair',
  landing: 'Landing',
  standing: 'Stood up',
};

/** How a sheet passes a place: `passes on its long edge, leaned 12°, 1" ±1/32" free`. */
export function passageWords({ passes, clearance, sd, edge, lean, place }: Passage, job: Shown): string {
  const by = `${fine(Math.abs(clearance), job)} ${sure(sd, job)}`;
  const held = place === 'standing' ? '' : ` on its ${edge} edge${lean > 0.5 ? `, leaned ${degrees(lean)}` : ''}`;
  return passes ? `passes${held}: ${by} to spare` : `does not pass: lacks ${by}`;
}
