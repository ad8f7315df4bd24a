import { deflateSync, strToU8 } from 'fflate';
import { type Job, jobSchema } from '../../core';
import { toBase64url } from './base64url';
import { DICTIONARY } from './dictionary';
import { CHECK_LENGTH, checkOf, PREFIX, VERSION } from './format';
import { leanJob } from './lean';

export interface ShareOptions {
  /** with the price list */
  prices: boolean;
  /** with the client's name, and who makes the offer */
  client: boolean;
  /** with the notes beside readings */
  notes: boolean;
}

/** The job as it goes into a link: what is not to be shared is taken out before anything is written. */
export function sharedJob(job: Job, { prices, client, notes }: ShareOptions): Job {
  const bare = jobSchema.parse({ format: job.format, version: job.version, readings: [], sheets: job.sheets });
  return {
    ...job,
    prices: prices ? job.prices : bare.prices,
    quote: client ? job.quote : { ...job.quote, client: '', from: '', number: '' },
    readings: notes
      ? job.readings
      : job.readings.map((reading) => {
          const { note: _, ...rest } = reading;
          return rest as typeof reading;
        }),
  };
}

/** The part of an address after `#` that carries the job. */
export function writeLink(job: Job, options: ShareOptions): string {
  const json = JSON.stringify(leanJob(sharedJob(job, options)));
  const body = deflateSync(strToU8(json), { level: 9, mem: 12, dictionary: DICTIONARY });
  const bytes = new Uint8Array(CHECK_LENGTH + body.length);
  bytes.set(checkOf(VERSION, body));
  bytes.set(body, CHECK_LENGTH);
  return `${PREFIX}${VERSION}.${toBase64url(bytes)}`;
}
