import { strFromU8 } from 'fflate';
import { type Fault, parseJobText } from '../../core';
import { type Draft, draftOf } from '../draft';
import type { KeptPhoto } from '../keep';
import { keptDraft } from '../kept-draft';
import type { ShelvedJob } from '../shelf';
import { usable } from '../usable';
import { draftFaults } from './draft-faults';
import { limits, megabytes } from './limits';
import { contentsName, type Manifest, manifest } from './manifest';
import { isZip, openZip } from './open-zip';

/** A job in a file, before it is brought in. */
export interface Incoming {
  name: string;
  place: string;
  readings: number;
  /** entries that are not finished or not understood */
  unfinished: number;
  photos: number;
  /** what is wrong, each with its place in the file */
  faults: Fault[];
  /** null where the job cannot be brought in */
  job: ShelvedJob | null;
}

export type JobsRead = { ok: true; jobs: Incoming[] } | { ok: false; message: string; faults: Fault[] };

/**
 * Reads a file as `readJobs` does; one that is too large is not even taken into memory. Rejects where it cannot be
 * read.
 */
export async function readJobsFile(file: File): Promise<JobsRead> {
  if (file.size > limits.file) return tooLarge(file.size);
  return readJobs(file.name, new Uint8Array(await file.arrayBuffer()));
}

const tooLarge = (size: number): JobsRead => ({
  ok: false,
  message: `The file has ${megabytes(size)}; ${megabytes(limits.file)} is the most that is read here.`,
  faults: [],
});

/** Reads a job file or a file of jobs. Nothing is kept yet. Never throws. */
export function readJobs(name: string, bytes: Uint8Array<ArrayBuffer>, now: number = Date.now()): JobsRead {
  const refused = (message: string, faults: Fault[] = []): JobsRead => ({ ok: false, message, faults });
  if (bytes.length > limits.file) return tooLarge(bytes.length);
  if (!isZip(bytes)) {
    if (bytes.length > limits.text) return refused('This is neither a job file nor a file of jobs.');
    const parsed = parseJobText(strFromU8(bytes));
    if (!parsed.ok) return refused('This job file has faults.', parsed.faults);
    return { ok: true, jobs: [incoming(draftOf(parsed.job, name), now, [], [])] };
  }
  const opened = openZip(bytes);
  if (!opened.ok) return refused(opened.message);
  const { parts } = opened;
  const contents = parts.get(contentsName);
  if (!contents) return refused('This zip file has no table of contents: it is not a file of jobs.');
  const value = json(contents);
  const { format, version } = (value ?? {}) as { format?: unknown; version?: unknown };
  if (format !== 'nookwright-jobs') return refused('This zip file is not a file of jobs.');
  if (typeof version === 'number' && version > 1)
    return refused('A newer version of the app wrote this file. Load the newest version, then bring it in.');
  const parsed = manifest.safeParse(value);
  if (!parsed.success)
    return refused(
      'The table of contents has faults.',
      parsed.error.issues.map(({ path, message }) => ({ path: `${contentsName}: ${path.join('.')}`, message })),
    );
  return { ok: true, jobs: parsed.data.jobs.map((entry) => jobIn(parts, entry)) };
}

function jobIn(parts: ReadonlyMap<string, Uint8Array<ArrayBuffer>>, entry: Manifest['jobs'][number]): Incoming {
  const nothing = (faults: Fault[]): Incoming => ({
    name: entry.file,
    place: '',
    readings: 0,
    unfinished: 0,
    photos: entry.photos.length,
    faults,
    job: null,
  });
  const file = entry.draft ?? entry.file;
  const bytes = parts.get(file);
  if (!bytes) return nothing([{ path: file, message: 'is missing' }]);
  const draft = entry.draft === undefined ? finished(bytes) : unfinished(bytes);
  if (!draft.ok) return nothing(draft.faults.map(({ path, message }) => ({ path: `${file}: ${path}`, message })));
  const faults: Fault[] = [];
  const ids = new Set<string>();
  const photos = entry.photos.flatMap(({ file: name, ...about }): KeptPhoto[] => {
    const picture = parts.get(name);
    const fault = !picture
      ? 'is missing'
      : !looksLike(picture, about.type)
        ? 'is not a picture of its kind'
        : ids.has(about.id)
          ? 'has the id of another photo'
          : null;
    if (fault !== null) faults.push({ path: name, message: `${fault}; the job comes in without it` });
    if (fault !== null || !picture) return [];
    ids.add(about.id);
    // A copy, so that a photo does not hold on to the whole file.
    return [{ ...about, job: '', bytes: picture.slice() }];
  });
  return incoming(draft.draft, entry.changedAt, photos, faults);
}

type Read = { ok: true; draft: Draft } | { ok: false; faults: Fault[] };

function finished(bytes: Uint8Array): Read {
  const parsed = parseJobText(strFromU8(bytes));
  return parsed.ok ? { ok: true, draft: draftOf(parsed.job, '') } : parsed;
}

function unfinished(bytes: Uint8Array): Read {
  const value = json(bytes);
  if (value === undefined) return { ok: false, faults: [{ path: '(file)', message: 'is not JSON' }] };
  const faults = draftFaults(value);
  if (faults.length > 0) return { ok: false, faults };
  const draft = keptDraft({ id: '', ...(value as object) });
  return draft
    ? { ok: true, draft }
    : { ok: false, faults: [{ path: '(file)', message: 'does not make a job in this version' }] };
}

function incoming(draft: Draft, changedAt: number, photos: KeptPhoto[], faults: Fault[]): Incoming {
  const { job } = draft;
  return {
    name: job.name,
    place: job.place ?? '',
    readings: job.readings.length,
    unfinished: usable(draft).setAside.length,
    photos: photos.length,
    faults,
    job: { draft, changedAt, photos },
  };
}

function json(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(strFromU8(bytes));
  } catch {
    return undefined;
  }
}

const signatures: Record<string, (string | null)[]> = {
  'image/jpeg': ['ff', 'd8', 'ff'],
  'image/png': ['89', '50', '4e', '47'],
  'image/webp': ['52', '49', '46', '46', null, null, null, null, '57', '45', '42', '50'],
};

const looksLike = (bytes: Uint8Array, type: string): boolean =>
  (signatures[type] ?? []).every((byte, i) => byte === null || bytes[i] === Number.parseInt(byte, 16));
