import { expect, it } from 'vitest';
import { readScan } from '../../../src/scan';
import { scanFiles } from '../../fuzz/scanSamples';

it.each(Object.keys(scanFiles))('reads the sample %s as it is', async (name) => {
  const read = await readScan(new File([scanFiles[name]!], name));
  expect(read).toMatchObject({ ok: true });
});
