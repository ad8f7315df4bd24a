import type { Page } from '@playwright/test';
import { undoSteps } from '../../../src/job/draft-store';
import { expect, goTo, jobMenu, kept, openApp } from '../app';

/** Readings typed in one round. */
const TYPED = 8;
/** Places gone through in one round: every drawing in 3D among them. */
const WALK = ['#site/truth', '#van/materials', '#van/work', '#client/look', '#client/price', '#bench/sheets', '#jobs'];
/** The other job is opened every so many rounds. */
const OTHER_EVERY = 3;

const nameField = (page: Page) => page.getByRole('textbox', { name: 'Name of the job' });
const values = (page: Page) => page.getByRole('textbox', { name: /: value$/ });
const rested = (page: Page) => page.getByText(/The sheets cover the alcove|before anything is cut/).first();

/** A job in inches and another one, both changed and kept, the first in hand. */
export async function openBoth(page: Page): Promise<string[]> {
  await openApp(page);
  const names: string[] = [];
  for (const other of [null, /shower base/]) {
    if (other) await jobMenu(page, other);
    const name = names.length === 0 ? 'Soak, first' : 'Soak, second';
    await nameField(page).fill(name);
    await nameField(page).blur();
    await kept(page);
    names.push(name);
  }
  await openJob(page, names[0] as string);
  return names;
}

async function openJob(page: Page, name: string): Promise<void> {
  await goTo(page, '#jobs');
  await page.getByRole('button', { name: `Open ${name}`, exact: true }).click();
  await expect(nameField(page)).toHaveValue(name);
  await goTo(page, '#site/readings');
  await expect(values(page).first()).toBeVisible();
}

/** Types another number into a reading: an eighth of an inch more with each turn, and back after four. */
async function typeReading(page: Page, index: number, turn: number): Promise<void> {
  const field = values(page).nth(index);
  const [whole = '28'] = (await field.inputValue()).split(/[ .]/);
  await field.fill(`${whole} ${1 + ((turn * 2) % 8)}/16`);
  await field.blur();
}

/**
 * Types into the readings of both jobs until undo is full in each, with steps as heavy as those of the rounds.
 * @returns how often a job was changed
 */
export async function fillUndo(page: Page, [first = '', second = '']: string[]): Promise<number> {
  for (const name of [second, first]) {
    await openJob(page, name);
    for (let step = 0; step < undoSteps; step++) await typeReading(page, step % TYPED, Math.floor(step / TYPED));
    await kept(page);
  }
  return 2 * undoSteps;
}

async function chooseOnBench(page: Page, turn: number): Promise<number> {
  await goTo(page, '#bench/back');
  const pick = (label: string, choices: readonly string[]) =>
    page.getByLabel(label, { exact: true }).selectOption(choices[turn % choices.length] as string);
  await pick('Factory edge kept, up', ['top', 'bottom', 'none']);
  await pick('Grain or pattern runs', ['up', 'none', 'across']);
  await pick('Wet wall', ['left', 'back', 'right']);
  await page.getByRole('checkbox', { name: /Thin sheets/ }).click();
  return 4;
}

/** Through all parts of the app, with no more than a glance at each. */
export async function walk(page: Page): Promise<void> {
  for (const place of WALK) {
    await goTo(page, place);
    await page.waitForTimeout(100);
  }
}

/**
 * One round of edits, as a person goes about: another job, readings, undo and redo, choices, other parts of the app.
 * It ends where it began: at the readings of the first job.
 * @returns how often the job was changed
 */
export async function editRound(page: Page, [first = '', second = '']: string[], round: number): Promise<number> {
  let edits = 0;
  // First, so that nothing of it is on the page any more when the round ends.
  if (round % OTHER_EVERY === 0) {
    await openJob(page, second);
    await typeReading(page, 0, round);
    edits++;
    await openJob(page, first);
  }
  for (let i = 0; i < TYPED; i++, edits++) await typeReading(page, i, round);
  for (const keys of ['Control+z', 'Control+z', 'Control+Shift+z', 'Control+z']) {
    await page.keyboard.press(keys);
    edits++;
  }
  edits += await chooseOnBench(page, round);
  await walk(page);
  await goTo(page, '#site/readings');
  return edits;
}

/** Waits until nothing is worked out, drawn or written any more. */
export async function atEase(page: Page): Promise<void> {
  await expect(rested(page)).toBeVisible();
  await kept(page);
  await page.waitForTimeout(1500);
}
