import { sha256 } from '@noble/hashes/sha2.js';

/*
 * A shared job is the part of an address after `#`, which no browser sends to a server:
 *   link/1.<base64url of check and body>
 * body: the lean job as JSON, deflated (RFC 1951) with `DICTIONARY`; check: first 8 bytes of SHA-256 over `1.` and body.
 * The check finds slips and cut-off links, not forgers: whoever makes a link can make its check too.
 */

export const PREFIX = 'link/';
export const VERSION = 1;
export const CHECK_LENGTH = 8;

/** No job that the app can make comes near these. */
export const MOST_CHARACTERS = 200_000;
export const MOST_JSON_BYTES = 2_000_000;

export function checkOf(version: number, body: Uint8Array): Uint8Array {
  const head = new TextEncoder().encode(`${version}.`);
  const whole = new Uint8Array(head.length + body.length);
  whole.set(head);
  whole.set(body, head.length);
  return sha256(whole).slice(0, CHECK_LENGTH);
}
