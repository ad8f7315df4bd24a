import type { Page } from '@playwright/test';
import { goTo, openApp } from '../app';
import { countThings, type Live, liveThings } from './liveThings';

export interface Sample extends Live {
  /** edits so far */
  edits: number;
}

export interface SoakOptions {
  /** edits before the first sample: as many as undo remembers, so that it holds no more from then on */
  warmUp: number;
  edits: number;
  samples: number;
  /** for each sample */
  told?: (sample: Sample) => void;
}

const PLACES = ['#bench/back', '#client/look', '#van/materials', '#site/truth', '#site/readings'];

/**
 * Edits a job on and on: readings are typed over one after another, each a step of undo that is kept and worked out;
 * between samples every place is gone through, so that its drawing is made and given up.
 */
export async function soak(
  page: Page,
  { warmUp, edits, samples, told = () => undefined }: SoakOptions,
): Promise<Sample[]> {
  await countThings(page);
  await openApp(page);
  const browser = await page.context().newCDPSession(page);
  const taken: Sample[] = [];
  let done = 0;
  const block = async (count: number) => {
    await page.evaluate(edit, { count, from: done });
    done += count;
    for (const place of PLACES) {
      await goTo(page, place);
      await page.waitForTimeout(700);
    }
    await page
      .getByText(/The sheets cover the alcove|before anything is cut/)
      .first()
      .waitFor();
    await page.waitForTimeout(1500);
  };
  await block(warmUp);
  for (let i = 0; i <= samples; i++) {
    if (i > 0) await block(Math.round(edits / samples));
    const sample = { edits: done, ...(await liveThings(page, browser)) };
    taken.push(sample);
    told(sample);
  }
  return taken;
}

/** Types over values of readings, in turn, as a person does: into the field, and out of it. */
async function edit({ count, from }: { count: number; from: number }): Promise<void> {
  const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!;
  const fields = () =>
    [...document.querySelectorAll<HTMLInputElement>('[data-reading^="corner-"] input')].filter(
      ({ ariaLabel, labels }) => /: value$/.test(ariaLabel ?? labels?.[0]?.textContent ?? ''),
    );
  const all = fields().length;
  if (all === 0) throw new Error('no field to type into');
  for (let i = from; i < from + count; i++) {
    const field = fields()[i % all]!;
    field.focus();
    const sixteenths = Math.round(16 * Number.parseFloat(field.value)) + (i % 2 ? 1 : -1);
    set.call(field, `${Math.floor(sixteenths / 16)} ${((sixteenths % 16) + 16) % 16}/16`.replace(' 0/16', ''));
    field.dispatchEvent(new Event('input', { bubbles: true }));
    field.blur();
    await new Promise((next) => setTimeout(next, 5));
  }
}

/** Growth of each figure per edit, by least squares. */
export function growth(samples: readonly Sample[]): Live {
  const mean = (of: (sample: Sample) => number) => samples.reduce((sum, each) => sum + of(each), 0) / samples.length;
  const middle = mean(({ edits }) => edits);
  const spread = samples.reduce((sum, { edits }) => sum + (edits - middle) ** 2, 0);
  const slope = (what: keyof Live) => {
    const average = mean((sample) => sample[what]);
    return samples.reduce((sum, each) => sum + (each.edits - middle) * (each[what] - average), 0) / spread;
  };
  return {
    heap: slope('heap'),
    nodes: slope('nodes'),
    listeners: slope('listeners'),
    gpu: slope('gpu'),
    blobs: slope('blobs'),
  };
}
