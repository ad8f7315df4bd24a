import { type ReadingReport, type Suspect, surveyPlan, type Unread } from '../../src/core';
import { jobWith, plausibleAlcove, type TrueAlcove } from '../simulate';
import { type Case, caseOf, numbersIn } from './accuracy/cases';
import { type EdgePlace, misfitsOf } from './accuracy/edges';
import type { Misread } from './accuracy/misread';
import { afterAdvice, nookwright, type Outcome } from './accuracy/nookwright';
import { cutOnPaper, paperPlaces } from './accuracy/paperMethod';
import { fitted, type Reach } from './accuracy/places';
import { unevenAlcove } from './accuracy/uneven';
import type { Asked, BenchOptions, Row } from './bench';
import { share } from './time';

export const name = 'accuracy';
export const about =
  'Simulated alcoves taped with the errors of a class II tape, without and with misread readings: cut edges against the truth.';

/** Nominal job whose plans are moved to each alcove; the simulated rims lie about 700 mm below the level line. */
const NOMINAL = jobWith([], { levelAboveFloor: 1200 });
const NOMINAL_REACH: Reach = { foot: -660, top: 940, left: -722, right: 722, out: 720 };
/** Half-width (95 %) of the full plan at every single cut edge, mm: together they then keep within 1 mm. */
const FULL = 0.7;

const SIX = { heights: 3, drops: { back: 3, side: 2 }, profile: false };
const MORE = { heights: 9, drops: { back: 7, side: 5 }, profile: true };
const TWICE = { heights: 5, drops: { back: 5, side: 3 }, profile: true };

/** Two readings at once are misread in every so many surveys, and walls are uneven in as many. */
const TWO_MISREAD = 4;

const ON_THE_SAME_READINGS: Readonly<Record<string, string>> = {
  'Nookwright, same as "more places": 95th percentile': 'paper, more places: 95th percentile',
  'Nookwright, same as "places twice": 95th percentile': 'paper, places twice: 95th percentile',
};
const HALF: Asked = { of: 'ratio', atMost: 0.5 };
const ASKED: Readonly<Record<string, Asked>> = {
  'Nookwright, same as "more places": 95th percentile': HALF,
  'Nookwright, same as "places twice": 95th percentile': HALF,
  'Nookwright, full plan: 95th percentile': { atMost: 1 },
  'Nookwright, full plan: within the stated 95 %': { atLeast: 93, atMost: 97 },
  'Nookwright, full plan: false alarms': { atMost: 1 },
  'Nookwright, full plan, one misread, advice followed: 95th percentile': { atMost: 1.2 },
  'Nookwright, full plan: misread reading named first': { atLeast: 98 },
};

interface Survey {
  what: string;
  places(reach: Reach): Unread[];
  /** whether misread readings are tried as well */
  misread?: boolean;
}

const twice = (places: Unread[]): Unread[] =>
  places.flatMap((place): Unread[] => (place.kind === 'plumb' ? [place] : [place, place]));

export function run({ count = 2000 }: BenchOptions): Row[] {
  const plan = (options: { target?: number }) => {
    const places = surveyPlan(NOMINAL, options).map(({ reading }) => reading);
    return (reach: Reach) => fitted(places, NOMINAL_REACH, reach);
  };
  const more = (reach: Reach): Unread[] => paperPlaces(MORE, reach);
  const each = (reach: Reach): Unread[] => twice(paperPlaces(TWICE, reach));
  const full = plan({ target: FULL });
  return withAsked([
    ...paperRows({ what: 'paper, six tapes', places: (reach) => paperPlaces(SIX, reach) }, count),
    ...paperRows({ what: 'paper, more places', places: more }, count),
    ...paperRows({ what: 'paper, places twice', places: each }, count),
    ...ourRows({ what: 'Nookwright, same as "more places"', places: more }, count),
    ...ourRows({ what: 'Nookwright, same as "places twice"', places: each }, count),
    ...ourRows({ what: 'Nookwright, plan to 1/32 in', places: plan({}), misread: true }, count),
    ...ourRows({ what: 'Nookwright, full plan', places: full, misread: true }, count),
    ...unevenRows({ what: 'uneven walls, full plan', places: full }, Math.ceil(count / TWO_MISREAD)),
  ]);
}

/** The rows, with what is asked of some and the paper method's figure beside ours where the readings are the same. */
function withAsked(rows: readonly Row[]): Row[] {
  return rows.map((row) => {
    const asked = ASKED[row.what];
    const paper = rows.find(({ what }) => what === ON_THE_SAME_READINGS[row.what]);
    return { ...row, ...(asked && { asked }), ...(paper && { against: { what: 'paper method', value: paper.value } }) };
  });
}

function* cases({ places }: Survey, count: number, alcoveOf: (seed: number) => TrueAlcove): Generator<Case> {
  for (let seed = 1; seed <= count; seed++) yield caseOf(alcoveOf(seed), NOMINAL, places, seed);
}

function paperRows(survey: Survey, count: number): Row[] {
  const [clean, back, wrong]: [number[], number[], number[]] = [[], [], []];
  let numbers = 0;
  for (const { job, places, misread, again } of cases(survey, count, plausibleAlcove)) {
    numbers = numbersIn(job.readings);
    const misfits = misfitsOf(places, cutOnPaper(job.readings, job, places, again));
    clean.push(worst(misfits));
    back.push(backOnly(misfits, places));
    wrong.push(worst(misfitsOf(places, cutOnPaper(misread.readings, job, places, again))));
  }
  return [
    ...misfitRows(survey.what, clean, `${count} alcoves, ${numbers} numbers read in each`),
    { what: `${survey.what}: back panel, 95th percentile`, value: share(back, 0.95), unit: 'mm' },
    ...misfitRows(`${survey.what}, one misread`, wrong),
  ];
}

function ourRows(survey: Survey, count: number): Row[] {
  const { what } = survey;
  const outcomes: Outcome[] = [];
  const backs: number[] = [];
  let numbers = 0;
  for (const { job, places } of cases(survey, count, plausibleAlcove)) {
    numbers = numbersIn(job.readings);
    const outcome = nookwright(job, places);
    outcomes.push(outcome);
    backs.push(backOnly(outcome.misfits, places));
  }
  const rough = mean(outcomes.map((each) => Number(each.rough)));
  return [
    ...misfitRows(
      what,
      outcomes.map(({ misfits }) => worst(misfits)),
      `${count} alcoves, ${numbers} numbers read in each`,
    ),
    { what: `${what}: back panel, 95th percentile`, value: share(backs, 0.95), unit: 'mm' },
    percentRow(
      `${what}: within the stated 95 %`,
      mean(outcomes.map(({ covered }) => covered)),
      'of the places on cut edges',
    ),
    percentRow(
      `${what}: false alarms`,
      mean(outcomes.map(({ suspects }) => Number(suspects.length > 0))),
      'surveys in which a reading is named',
    ),
    percentRow(
      `${what}: taken for uneven`,
      mean(outcomes.map(({ uneven }) => Number(uneven))),
      `taken for rough: ${(100 * rough).toFixed(2)} %`,
    ),
    ...(survey.misread ? misreadRows(survey, count, outcomes) : []),
  ];
}

/** @param first what each survey gave before a reading was misread */
function misreadRows(survey: Survey, count: number, first: readonly Outcome[]): Row[] {
  const { what } = survey;
  const [wrong, mended]: [number[], number[]] = [[], []];
  const both: boolean[] = [];
  let [testable, named, listed, retaken, seen] = [0, 0, 0, 0, 0];
  for (const { job, places, misread, misreadTwice, again } of cases(survey, count, plausibleAlcove)) {
    const misreadJob = { ...job, readings: misread.readings };
    const blundered = nookwright(misreadJob, places);
    const advice = afterAdvice(misreadJob, places, blundered, again);
    wrong.push(worst(blundered.misfits));
    mended.push(worst(advice.outcome.misfits));
    retaken += advice.retaken;
    if (isTestable(first[seen++]!.readings, misread)) {
      testable++;
      named += Number(blundered.suspects[0]?.id === misread.id);
      listed += Number(namesOf(blundered.suspects).includes(misread.id));
    }
    if (seen % TWO_MISREAD === 0) {
      const names = namesOf(nookwright({ ...job, readings: misreadTwice.readings }, places).suspects);
      both.push(misreadTwice.ids.every((id) => names.includes(id)));
    }
  }
  return [
    ...misfitRows(`${what}, one misread, left in`, wrong),
    ...misfitRows(
      `${what}, one misread, advice followed`,
      mended,
      `${(retaken / count).toFixed(2)} readings taken again a survey`,
    ),
    percentRow(
      `${what}: misread reading named first`,
      named / testable,
      `of ${testable} with a minimal detectable error under half the slip; first or as an alternative: ${((100 * listed) / testable).toFixed(2)} %`,
    ),
    percentRow(
      `${what}: both of two misread named`,
      mean(both.map(Number)),
      `${both.length} surveys, whatever the minimal detectable errors`,
    ),
  ];
}

function unevenRows(survey: Survey, count: number): Row[] {
  const outcomes: Outcome[] = [];
  for (const { job, places } of cases(survey, count, unevenAlcove)) outcomes.push(nookwright(job, places));
  const { what } = survey;
  return [
    ...misfitRows(
      what,
      outcomes.map(({ misfits }) => worst(misfits)),
      `${count} alcoves with a hump or hollow of 1 to 4 mm on each wall`,
    ),
    percentRow(`${what}: within the stated 95 %`, mean(outcomes.map(({ covered }) => covered))),
    percentRow(`${what}: taken for uneven`, mean(outcomes.map(({ uneven }) => Number(uneven)))),
    percentRow(`${what}: a reading is named`, mean(outcomes.map(({ suspects }) => Number(suspects.length > 0)))),
  ];
}

function misfitRows(what: string, misfits: number[], note = ''): Row[] {
  return [
    { what: `${what}: median worst misfit`, value: share(misfits, 0.5), unit: 'mm', note },
    { what: `${what}: 95th percentile`, value: share(misfits, 0.95), unit: 'mm' },
    { what: `${what}: worst of all`, value: worst(misfits), unit: 'mm' },
  ];
}

const percentRow = (what: string, part: number, note = ''): Row => ({ what, value: 100 * part, unit: '%', note });

const worst = (misfits: readonly number[]): number => misfits.reduce((most, each) => Math.max(most, each), 0);
const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

const backOnly = (misfits: readonly number[], places: readonly EdgePlace[]): number =>
  worst(misfits.filter((_, i) => places[i]!.panel === 'back'));

const isTestable = (reports: readonly ReadingReport[], { id, size }: Misread): boolean => {
  const { mdb } = reports.find((report) => report.id === id)!;
  return mdb !== null && mdb < Math.abs(size) / 2;
};

const namesOf = (suspects: readonly Suspect[]): string[] =>
  suspects.flatMap(({ id, alternatives }) => [id, ...alternatives]);
