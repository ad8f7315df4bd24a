import { describe, expect, it } from 'vitest';
import { MOST_CHARACTERS } from '../../../src/output/share/format';
import { readLink } from '../../../src/output/share/readLink';
import { writeLink } from '../../../src/output/share/writeLink';
import { linkLengthWords } from '../../../src/views/client/link-length';
import { jobWith, plausibleAlcove } from '../../simulate';
import { cellScan } from '../../simulate/scanner';

const options = { prices: false, client: false, notes: false };
const alcove = plausibleAlcove(3);
const link = (size: number): string => writeLink(jobWith([], { scans: [cellScan(alcove, { size })] }), options);

describe('the length of a link', () => {
  it('needs no word without a scan', () => {
    expect(linkLengthWords(writeLink(jobWith([]), options).length, MOST_CHARACTERS, false)).toBeNull();
  });

  it('of a job with a scan is told, and such a link still opens', () => {
    const long = link(50);
    expect(readLink(long).ok).toBe(true);
    expect(linkLengthWords(long.length, MOST_CHARACTERS, true)).toMatchObject({ weight: 'warn', usable: true });
  });

  it('beyond what is opened is refused where it would be sent, with another way', () => {
    const endless = link(12);
    expect(readLink(endless).ok).toBe(false);
    const told = linkLengthWords(endless.length, MOST_CHARACTERS, true)!;
    expect(told).toMatchObject({ weight: 'bad', usable: false });
    expect(told.words).toContain('job file');
    expect(told.words).toContain('cells of the scan');
  });
});
