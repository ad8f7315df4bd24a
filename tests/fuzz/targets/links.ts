import { deflateSync, strToU8 } from 'fflate';
import { type ReadLink, readLink, writeLink } from '../../../src/output/share';
import { toBase64url } from '../../../src/output/share/base64url';
import { DICTIONARY } from '../../../src/output/share/dictionary';
import { CHECK_LENGTH, checkOf, PREFIX, VERSION } from '../../../src/output/share/format';
import { mutatedBytes, mutatedText, mutatedValue } from '../mutate';
import { jobs, jobValues } from '../samples';
import { must, target } from '../target';

const links = jobs.map((job) => writeLink(job, { prices: true, client: true, notes: true }));

function sentence(read: ReadLink): void {
  if (!read.ok) must(/^[A-Z].*\.$/s.test(read.message), `no sentence: ${read.message}`);
}

/** A link with a check that is right, whatever it carries. */
function forged(body: Uint8Array): string {
  const bytes = new Uint8Array(CHECK_LENGTH + body.length);
  bytes.set(checkOf(VERSION, body));
  bytes.set(body, CHECK_LENGTH);
  return `${PREFIX}${VERSION}.${toBase64url(bytes)}`;
}

const packed = (text: string) => deflateSync(strToU8(text), { dictionary: DICTIONARY });

export const linkTargets = [
  target({
    name: 'link-text',
    about: 'A link that was changed anywhere is refused with a sentence.',
    cases: mutatedText(links, ['-', '_', 'A', '=', '.', '%', '#', '2.', '/']),
    check: (text) => {
      const read = readLink(text);
      sentence(read);
      must(!read.ok || links.includes(text.replace(/^#/, '')), 'a changed link was taken');
    },
    inTests: 2000,
  }),
  target({
    name: 'link-forged',
    about: 'Links whose check is right but whose job was tampered with are taken whole or refused with a sentence.',
    cases: mutatedValue(jobValues),
    check: (value) => {
      const read = readLink(forged(packed(JSON.stringify(value) ?? '')));
      sentence(read);
    },
    inTests: 1500,
  }),
  target({
    name: 'link-packing',
    about: 'Links whose check is right but whose packed bytes are torn are refused with a sentence, and soon.',
    cases: mutatedBytes(jobValues.map((value) => packed(JSON.stringify(value)))),
    check: (bytes) => sentence(readLink(forged(bytes))),
    inTests: 1500,
  }),
];
