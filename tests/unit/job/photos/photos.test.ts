import 'fake-indexeddb/auto';
import { expect, it } from 'vitest';
import { browserKeep, memoryKeep, photosIn } from '../../../../src/job';
import { fitted } from '../../../../src/job/photos/shrink';

const asItIs = async (picture: Blob) => ({
  bytes: new Uint8Array(await picture.arrayBuffer()),
  type: picture.type,
  width: 40,
  height: 30,
});
const picture = (text: string) => new Blob([text], { type: 'image/jpeg' });

it('keeps, lists, reads and removes the photos of each job', async () => {
  const photos = photosIn(await browserKeep('photos'), asItIs);
  const first = await photos.add('a', picture('one'));
  const second = await photos.add('a', picture('two'));
  await photos.add('b', picture('three'));
  if (!first.ok || !second.ok) throw new Error('not added');
  expect(first.photo).toMatchObject({ width: 40, height: 30 });
  expect((await photos.list('a')).map(({ id }) => id).sort()).toEqual([first.photo.id, second.photo.id].sort());
  const read = await photos.read('a', second.photo.id);
  expect(read?.type).toBe('image/jpeg');
  expect(await read?.text()).toBe('two');
  expect(await photos.read('b', second.photo.id)).toBeNull();
  await photos.remove('a', first.photo.id);
  expect(await photos.list('a')).toHaveLength(1);
  expect(await photos.list('b')).toHaveLength(1);
});

it('says why a photo was not kept', async () => {
  const unreadable = photosIn(memoryKeep(), () => Promise.reject(new Error('?')));
  expect(await unreadable.add('a', picture('x'))).toEqual({
    ok: false,
    message: expect.stringMatching(/cannot be read/),
  });
  const full = {
    ...memoryKeep(),
    putPhoto: () => Promise.reject(new DOMException('full', 'QuotaExceededError')),
  };
  expect(await photosIn(full, asItIs).add('a', picture('x'))).toEqual({
    ok: false,
    message: expect.stringMatching(/no room/),
  });
});

it('makes pictures fit and never larger', () => {
  expect(fitted(4032, 3024)).toEqual({ width: 1600, height: 1200 });
  expect(fitted(3024, 4032)).toEqual({ width: 1200, height: 1600 });
  expect(fitted(800, 600)).toEqual({ width: 800, height: 600 });
  expect(fitted(9000, 2)).toEqual({ width: 1600, height: 1 });
});
