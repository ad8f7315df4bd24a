import { expect, it } from 'vitest';
import { memoryKeep, openSession } from '../../../../src/job';
import { draftOf } from '../../../../src/job/draft';
import { testJob } from '../testJob';

const day = 86_400_000;
const start = Date.UTC(2026, 4, 1);

it('removes for good what has waited, with its photos, and nothing else', async () => {
  const keep = memoryKeep();
  for (const id of ['stays', 'goes', 'later']) {
    await keep.put({ id, draft: draftOf(testJob(), id), changedAt: start, revision: 0 });
    await keep.putPhoto({
      job: id,
      id: 'p',
      bytes: new Uint8Array(3),
      type: 'image/jpeg',
      width: 4,
      height: 3,
      takenAt: start,
    });
  }
  const { shelf } = await openSession({ solve: () => new Promise(() => undefined), keep, first: testJob() });
  await shelf.remove('goes');
  for (let i = 0; i <= 29; i++) {
    await shelf.sweep(start + i * day);
    if (i === 10) await shelf.remove('later');
  }
  expect((await keep.jobs()).map(({ id }) => id)).toEqual(expect.arrayContaining(['stays', 'goes', 'later']));
  await shelf.sweep(start + 30 * day);
  expect(await keep.job('goes')).toBeUndefined();
  expect(await keep.photos('goes')).toEqual([]);
  expect(await keep.job('later')).toBeDefined();
  expect(await keep.photos('stays')).toHaveLength(1);
  expect(await shelf.bringBack('later')).toEqual({ ok: true });
  for (let i = 31; i < 80; i++) await shelf.sweep(start + i * day);
  expect(await keep.job('later')).toBeDefined();
});
