// What is entered at the places of a survey, as a person does who reads it off the tape.
import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { formatLength, type Unread } from '../../src/core';
import { exactValue, gapFromLine, type TrueAlcove } from '../simulate';
import { jobMenu } from './app';

interface NumberInHand {
  where: Unread;
  field: number;
}

export const entryOf = (page: Page) => page.getByTestId('entry');

/** Where the number in hand is read, and which of the place's numbers it is. */
export async function inHand(page: Page): Promise<NumberInHand> {
  const where = JSON.parse((await entryOf(page).getAttribute('data-where')) ?? '') as Unread;
  const chips = entryOf(page).getByRole('list', { name: 'Numbers of this place' }).getByRole('button');
  const current = await chips.evaluateAll((all) => all.map((chip) => chip.hasAttribute('aria-current')));
  const names = await chips.evaluateAll((all) => all.map((chip) => chip.getAttribute('data-field')));
  const at = current.indexOf(true);
  return { where, field: at < 0 ? 0 : Number(names[at]) };
}

/** What the tape, rule or straightedge shows there, mm. */
export function shownAt(alcove: TrueAlcove, { where, field }: NumberInHand): number {
  if (where.kind !== 'plumb') return exactValue(alcove, { id: 'x', ...where });
  const { wall, at, gaps } = where;
  const hung = wall === 'right' ? -40 : 40;
  const base = gapFromLine(alcove, wall, at, 0, 0);
  return gapFromLine(alcove, wall, at, gaps[field]!.height, 0) - base + Math.abs(hung);
}

/** A length as a tape divided into sixteenths shows it. */
export const inSixteenths = (mm: number): string => formatLength(mm, { unit: 'in', denominator: 16, bare: true });

/** How much of the plan is still to be read, in the words of the page. */
export const openEntries = async (page: Page): Promise<string> =>
  (await page.getByText(/(\d+ of \d+ to go|All of the plan is read)$/).textContent()) ?? '';

/** The text of the job file that the job menu saves. */
export async function savedJob(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await jobMenu(page, 'Save as a job file');
  return readFile(await (await download).path(), 'utf8');
}
