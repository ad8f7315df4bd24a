import { type Job, parseJobText } from '../../core';
import { fromBase64url } from './base64url';
import { DICTIONARY } from './dictionary';
import { CHECK_LENGTH, checkOf, MOST_CHARACTERS, MOST_JSON_BYTES, PREFIX, VERSION } from './format';
import { inflated } from './unpack';

export type ReadLink = { ok: true; job: Job } | { ok: false; message: string };

/** True for the part of an address after `#` that is meant to carry a job. */
export const isLink = (hash: string): boolean => hash.replace(/^#/, '').startsWith(PREFIX);

const refused = (message: string): ReadLink => ({ ok: false, message });
const SEND_AGAIN = 'Ask whoever sent it for the whole link, or for the job file.';

/** Reads the job that a link carries, through the same checks as a job file. Never throws. */
export function readLink(hash: string): ReadLink {
  const text = hash.replace(/^#/, '');
  if (!text.startsWith(PREFIX)) return refused('This address carries no job.');
  if (text.length > MOST_CHARACTERS) return refused(`This link is far longer than any job needs. ${SEND_AGAIN}`);
  const parts = /^(\d{1,6})\.(.*)$/s.exec(text.slice(PREFIX.length));
  if (parts === null) return refused(`This link does not say which version of links it is. ${SEND_AGAIN}`);
  if (Number(parts[1]) > VERSION) {
    return refused(
      'This link was made by a newer version of Nookwright. Load this page again while online, then open the link.',
    );
  }
  if (parts[1] !== String(VERSION)) return refused(`There is no version ${parts[1]} of links. ${SEND_AGAIN}`);
  const bytes = fromBase64url(parts[2]!);
  if (bytes === null) {
    return refused(`This link holds characters that no link is made of, or was cut short. ${SEND_AGAIN}`);
  }
  if (bytes.length <= CHECK_LENGTH) return refused(`This link was cut short. ${SEND_AGAIN}`);
  const body = bytes.subarray(CHECK_LENGTH);
  if (checkOf(VERSION, body).some((byte, i) => byte !== bytes[i])) {
    return refused(`This link was cut short or changed on its way. ${SEND_AGAIN}`);
  }
  const json = inflated(body, DICTIONARY, MOST_JSON_BYTES);
  if (json === null)
    return refused(`What this link holds cannot be unpacked, or is far larger than any job. ${SEND_AGAIN}`);
  const parsed = parseJobText(new TextDecoder().decode(json));
  if (parsed.ok) return parsed;
  const [first] = parsed.faults;
  return refused(`What this link holds is not a job that can be read: ${first?.path} ${first?.message}. ${SEND_AGAIN}`);
}
