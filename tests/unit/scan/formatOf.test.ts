import { expect, it } from 'vitest';
import { fileOf, messageOf } from './scanFile';

it.each([
  ['room.e57', /^E57 files are not read here\. Save the scan as PLY/],
  ['room.las', /^LAS files are not read here/],
  ['room.zip', /^ZIP files are not read here/],
])('names the formats to save %s in', async (name, expected) => {
  expect(await messageOf(fileOf(name, 'something'))).toMatch(expected);
});

it('says that a file is empty', async () => {
  expect(await messageOf(fileOf('a.ply'))).toBe('a.ply is empty. Copy it again from the scanner.');
});
