import {
  type BedReport,
  type Contact,
  formatLength,
  formatPlusMinus,
  type Job,
  type Patch,
  type WallName,
  Z_95,
} from '../../core';
import { counted } from './counted';
import { slopeWords } from './slopeWords';

/** Something to know of how a sheet sits, and what it is. */
export interface BedLine {
  label: string;
  words: string;
  /** it keeps the sheet from being bedded as it stands */
  bad?: boolean;
}

/** So near to the back wall a place on a side wall is at it, mm. */
const AT_BACK = 25;
const NEWTONS_PER_POUND = 4.448222;

const sits: Record<BedReport['how'], string> = {
  follows: 'follows its wall on an even bed',
  rigid: 'rigid, on three points of the wall',
  bent: 'bent to the wall as far as its stiffness lets it',
  shimmed: 'flat, on its shims',
};

/** How a panel's sheet sits, in words with ±. */
export function bedLines(name: WallName, report: BedReport, job: Job): BedLine[] {
  const { fine, plusMinus, place, area, text: within } = bedText(job);
  const { thinnest, thickest, lean, leanSd, contacts, hollows, strain, springBack, shims, convergence } = report;
  const even = thickest.value - thinnest.value < 0.05;
  const touches = contacts.length > 0 && report.how === 'rigid';
  return [
    { label: 'The sheet', words: sits[report.how] },
    {
      label: 'Bed',
      words: even
        ? `${fine(thickest.value)} all over`
        : `${fine(thinnest.value)} to ${fine(thickest.value)} ${plusMinus(thickest.sd)}, thickest ${place(name, thickest)}`,
    },
    { label: 'Leans', words: leanWords(lean, leanSd === 0 ? null : leanSd, job) },
    ...(contacts.length === 0
      ? []
      : [
          {
            label: 'Touches',
            words: touches
              ? contacts.map((contact) => `${place(name, contact)}${openness(contact)}`).join('; ')
              : `in ${contacts.length === 1 ? 'one stretch' : `${contacts.length} stretches`}, ${area(contacts.reduce((sum, contact) => sum + contact.area, 0))} of ${area(extent(report))}; the strongest ${place(name, contacts[0]!)}${openness(contacts[0]!)}`,
          },
        ]),
    {
      label: 'Beyond the adhesive',
      bad: hollows.length > 0 && report.how !== 'shimmed',
      words:
        hollows.length === 0
          ? `nowhere; it reaches ${fine(report.reach)}`
          : hollows.map((hollow) => hollowWords(name, hollow)).join('; '),
    },
    {
      label: 'Bending',
      bad: strain.overBent.length > 0,
      words:
        strain.radius === null
          ? 'none'
          : `${percent(strain.max)} ${plusMinusPercent(Z_95 * strain.sd)} strain at most, ${place(name, strain)}, to a radius of ${metres(strain.radius)}; the limit is ${percent(strain.limit)}${strain.overBent.map((patch) => `; over-bent over ${area(patch.area)} about ${place(name, patch)}`).join('')}`,
    },
    {
      label: 'Springs back',
      words:
        springBack.largest === null || springBack.total < 0.05
          ? 'with next to nothing'
          : `with ${force(springBack.largest.pull, job)} ${plusMinusForce(Z_95 * springBack.largest.sd, job)} at most on one dot, ${place(name, springBack.largest)}; ${force(springBack.total, job)} ${plusMinusForce(Z_95 * springBack.totalSd, job)} on all that it pulls at. Hold it until the adhesive has cured`,
    },
    {
      label: 'Shims',
      words:
        shims.list.length === 0
          ? `none needed for it to be flat${shims.to === 'plumb' ? ' and plumb' : ''}`
          : `${shims.list.length}, to ${fine(Math.max(...shims.list.map(({ thickness }) => thickness)))}, bring it flat${shims.to === 'plumb' ? ' and plumb' : `; it then ${slopeWords(shims.lean, null, job).none ? 'stands' : 'leans'} ${leanWords(shims.lean, null, job)}`}`,
    },
    ...(convergence === null
      ? []
      : [
          {
            label: 'Worked out',
            bad: !convergence.converged,
            words: `on ${convergence.columns} × ${convergence.rows} cells in ${counted(convergence.steps, 'step')}${convergence.converged ? '' : ', not to the end'}; ${percent(convergence.imbalance)} of the load out of balance, energy ${percent(convergence.energyChange)} off the grid half as fine`,
          },
        ]),
  ];

  /** How far about its place a contact may be. */
  function openness({ from, to }: Contact): string {
    const [wide, high] = [to[0] - from[0], to[1] - from[1]];
    return Math.max(wide, high) < 1 ? '' : `, somewhere within ${within(wide)} × ${within(high)}`;
  }

  function hollowWords(wall: WallName, hollow: Patch & { sd: number }): string {
    return `${area(hollow.area)} with a bed to ${fine(hollow.worst)} ${plusMinus(hollow.sd)} ${place(wall, hollow)}`;
  }
}

/** Places, lengths and areas as a job shows them. */
export function bedText(job: Job) {
  const unit = job.display;
  const fine = (mm: number): string => formatLength(mm, { unit, denominator: 32 });
  const text = (mm: number): string => formatLength(mm, { unit, denominator: 16 });
  const besidePlumbLine = (u: number): string =>
    Math.abs(u) < 1 ? 'on the plumb line' : `${text(Math.abs(u))} ${u > 0 ? 'right' : 'left'} of the plumb line`;
  const outFromBack = (u: number): string => (u < AT_BACK ? 'at the back wall' : `${text(u)} out from the back wall`);
  return {
    fine,
    text,
    plusMinus: (sd: number): string => formatPlusMinus(Z_95 * sd, { unit, denominator: 32 }),
    area: (square: number): string =>
      unit === 'in' ? `${(square / 92_903.04).toFixed(1)} ft²` : `${(square / 1e6).toFixed(2)} m²`,
    across: (wall: WallName, u: number): string => {
      if (wall !== 'back') return `${text(u)} out`;
      return Math.abs(u) < 1 ? 'on the plumb line' : `${text(Math.abs(u))} ${u > 0 ? 'right' : 'left'}`;
    },
    up: (v: number): string =>
      Math.abs(v) < 1 ? 'on the level line' : `${text(Math.abs(v))} ${v > 0 ? 'above' : 'below'}`,
    place: (wall: WallName, { u, v }: { u: number; v: number }): string =>
      `${wall === 'back' ? besidePlumbLine(u) : outFromBack(u)}, ${Math.abs(v) < 1 ? 'on the level line' : `${text(Math.abs(v))} ${v > 0 ? 'above' : 'below'} the level line`}`,
  };
}

const extent = ({ map: { at, height } }: BedReport): number => (at.at(-1)! - at[0]!) * (height.at(-1)! - height[0]!);

const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
const plusMinusPercent = (share: number): string => `±${Number((100 * share).toPrecision(1))} %`;
const metres = (mm: number): string => `${Number((mm / 1000).toPrecision(2))} m`;
/** A force in newtons as a job shows it. */
export const force = (newtons: number, { display }: Pick<Job, 'display'>): string =>
  display === 'in' ? `${(newtons / NEWTONS_PER_POUND).toFixed(2)} lbf` : `${newtons.toFixed(1)} N`;

/** Half an interval of a force, rounded up to one digit. */
function plusMinusForce(newtons: number, { display }: Pick<Job, 'display'>): string {
  const value = display === 'in' ? newtons / NEWTONS_PER_POUND : newtons;
  const digit = 10 ** Math.floor(Math.log10(value));
  const up = value > 0 ? Number((Math.ceil(value / digit - 1e-9) * digit).toPrecision(1)) : 0;
  return `±${up} ${display === 'in' ? 'lbf' : 'N'}`;
}

/** @param sd mm/m; null where the lean is chosen, not measured */
function leanWords(lean: number, sd: number | null, job: Job): string {
  const { none, words, plusMinus } = slopeWords(lean, sd, job);
  if (none) return `plumb ${plusMinus}`.trim();
  return `${words} ${lean > 0 ? 'into the room' : 'away from the room'} going up`;
}
