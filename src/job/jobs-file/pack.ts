import { strToU8, type Zippable, zipSync } from 'fflate';
import { jobFileName, jobFileStem, jobText } from '../job-text';
import type { ShelvedJob } from '../shelf';
import { usable } from '../usable';
import { limits, megabytes } from './limits';
import { contentsName, type Manifest, type PhotoType, photoTypes } from './manifest';

export type JobsPacked =
  | { ok: true; name: string; content: string | Uint8Array<ArrayBuffer>; type: string }
  | { ok: false; message: string };

/**
 * Jobs as one file. A single one that is finished and has no photo is a plain job file; anything else is a zip of job
 * files, drafts of what is not finished, photos and a table of contents.
 */
export function packJobs(jobs: readonly ShelvedJob[], today: Date = new Date()): JobsPacked {
  const [only] = jobs;
  if (!only) return { ok: false, message: 'There is no job to save.' };
  if (jobs.length === 1 && only.photos.length === 0 && isFinished(only)) {
    const understood = usable(only.draft);
    if (understood.ok)
      return {
        ok: true,
        name: jobFileName(only.draft.job),
        content: jobText(understood.job),
        type: 'application/json',
      };
  }
  const photos = jobs.flatMap((job) => job.photos);
  const weight = photos.reduce((sum, { bytes }) => sum + bytes.length, 0);
  if (jobs.length > limits.jobs || photos.length > limits.photos || weight > limits.file * 0.9)
    return {
      ok: false,
      message:
        `This is more than one file takes (${limits.jobs} jobs, ${limits.photos} photos, ` +
        `${megabytes(limits.file * 0.9)} of photos). Save the jobs one by one.`,
    };
  const files: Zippable = {};
  const text = (name: string, content: string) => {
    files[name] = [strToU8(content), { level: 6 }];
  };
  const contents: Manifest = { format: 'nookwright-jobs', version: 1, jobs: [] };
  jobs.forEach((job, i) => {
    const understood = usable(job.draft);
    // A draft without a job in it is never kept.
    if (!understood.ok) return;
    const stem = stemOf(job.draft.job.name, i);
    const file = `jobs/${stem}.json`;
    text(file, jobText(understood.job));
    const draft = isFinished(job) ? undefined : `unfinished/${stem}.json`;
    if (draft) text(draft, `${JSON.stringify({ job: job.draft.job, typed: job.draft.typed }, null, 2)}\n`);
    contents.jobs.push({
      file,
      ...(draft && { draft }),
      changedAt: job.changedAt,
      photos: job.photos.map(({ id, bytes, type, width, height, takenAt }, n) => {
        const kind = type as PhotoType;
        const name = `photos/${stem}/${n + 1}.${photoTypes[kind]}`;
        // Pictures are packed already.
        files[name] = [bytes, { level: 0 }];
        return { id, file: name, type: kind, width, height, takenAt };
      }),
    });
  });
  text(contentsName, `${JSON.stringify(contents, null, 2)}\n`);
  const name = jobs.length === 1 ? `${jobFileStem(only.draft.job)}.zip` : jobsFileName(today);
  return { ok: true, name, content: zipSync(files), type: 'application/zip' };
}

/** The name of a file of all jobs. */
export function jobsFileName(day: Date): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `nookwright-jobs-${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}.zip`;
}

function isFinished({ draft }: ShelvedJob): boolean {
  const understood = usable(draft);
  return understood.ok && understood.setAside.length === 0 && Object.keys(draft.typed).length === 0;
}

const stemOf = (name: string, index: number) =>
  `${String(index + 1).padStart(3, '0')}-${jobFileStem({ name }).slice(0, 60)}`;
