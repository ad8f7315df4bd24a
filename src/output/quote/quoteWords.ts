import { type Job, lookWords, nameOfFinish, type Price, type Result, ROUNDING_WORDS } from '../../core';
import { colourWords, counted } from '../words';

const DAY = 86_400_000;

/** A quote as it stands on page and paper, beside the lines of its price. */
export interface QuoteWords {
  date: string;
  /** the last day it holds */
  validUntil: string;
  /** how it will look, in words */
  finish: string[];
  included: string[];
  exclusions: string[];
  cautions: string[];
  /** what the reader must know about the figures */
  figures: string[];
}

const dateText = (date: Date): string =>
  date.toLocaleDateString('en-US', { timeZone: 'UTC', year: 'numeric', month: 'long', day: 'numeric' });

/** @param today `YYYY-MM-DD`, for a job without a date of its own */
export function quoteWords(job: Job, result: Result, price: Price, today: string): QuoteWords {
  const { quote, finish } = job;
  const date = new Date(`${quote.date ?? today}T00:00:00Z`);
  const { trim, legs, shelves } = result.pieces;
  const base = job.rim.kind === 'tub' ? 'tub' : 'shower base';
  const name = nameOfFinish(finish);
  const count = (n: number, one: string, many: string) => (n === 0 ? [] : [counted(n, one, many)]);
  return {
    date: dateText(date),
    validUntil: dateText(new Date(date.getTime() + quote.validity * DAY)),
    finish: [
      name === null
        ? `Panels: ${lookWords[finish.look]}, ${colourWords(finish.colour)}`
        : `Panels: ${name}, ${lookWords[finish.look]}`,
      `Trim: ${colourWords(finish.trim)}`,
    ],
    included: [
      'back panel and both side panels, cut to the measured alcove',
      ...count(legs.length, `piece beside the ${base}`, `pieces beside the ${base}`),
      ...count(trim.length, 'piece of trim', 'pieces of trim'),
      ...count(shelves.length, 'corner shelf', 'corner shelves'),
      'adhesive, flashing tape, sealant and caulk; clean-up',
    ],
    exclusions: quote.exclusions.filter((text) => text.trim() !== ''),
    cautions: [
      'Old walls, paint and adhesives can hold asbestos or lead; where the building is old enough they are tested before anything is disturbed, and work waits for the result.',
      'Water and power to the bathroom are shut off while work goes on; plumbing and wiring that local code reserves is done by licensed trades.',
      ...(job.fixtures.some(({ kind }) => kind === 'grab-bar')
        ? [
            'Grab bars must hold a person: they are fixed to blocking or studs as their maker and local code say; panels and adhesive hold nothing.',
          ]
        : []),
      'Keep water off until the sealant has cured; the day is stated when the work is handed over.',
    ],
    figures: [
      ...(price.unpriced.length === 0 ? [] : [`Not in the total, for want of a price: ${price.unpriced.join('; ')}.`]),
      ...(result.problems.length === 0
        ? []
        : [
            `${result.problems.length === 1 ? 'One problem of the job is' : `${result.problems.length} problems of the job are`} still open and may change the price.`,
          ]),
      ROUNDING_WORDS,
      'Quantities follow from the measured alcove.',
    ],
  };
}
