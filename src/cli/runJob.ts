import { readFile } from 'node:fs/promises';
import { formatLength, type Job, type Problem, parseJobText, solve } from '../core';
import { dryFitFault, dryFitWords, jobFiles } from '../output';
import { parseArguments } from './arguments';
import { fontsFromDisk } from './fonts';
import { withStock } from './withStock';
import { writeFolder } from './writeFolder';

/**
 * What the headless run prints, and the process's exit status: 0 done, 1 files could not be written, 2 bad call or bad
 * file, 3 a template does not fit the alcove it was made for.
 */
export interface Outcome {
  status: 0 | 1 | 2 | 3;
  out: string[];
  err: string[];
}

/**
 * The headless run: a job file in, every file of the job out. Bad input is told, never thrown.
 * @param make what makes the files
 */
export async function runJob(words: string[], make: typeof jobFiles = jobFiles): Promise<Outcome> {
  const call = parseArguments(words);
  if (!call.ok) return { status: 2, out: [], err: [call.message] };
  const { job: path, out: folder, paper, up } = call.arguments;
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (error) {
    return { status: 2, out: [], err: [`(file): cannot be read: ${reason(error, path)}`] };
  }
  const parsed = parseJobText(text);
  if (!parsed.ok)
    return {
      status: 2,
      out: [],
      err: parsed.faults.map((fault) => `${oneLine(fault.path)}: ${oneLine(fault.message)}`),
    };
  const { job } = parsed;
  const result = await withStock(solve(job), job);
  const { files, dryFit } = await make(job, result, await fontsFromDisk(), {
    ...(paper && { paper }),
    ...(up && { view: up }),
  });
  const misfit = dryFitFault(dryFit, job, result);
  if (misfit !== null) return { status: 3, out: [], err: [`${oneLine(misfit)} Nothing was written.`] };
  try {
    await writeFolder(folder, files);
  } catch (error) {
    return {
      status: 1,
      out: [],
      err: [`Nothing was written: ${reason(error, folder)}. Choose another folder with --out.`],
    };
  }
  return {
    status: 0,
    err: [],
    out: [
      ...result.problems.map((problem) => problemLine(problem, job)),
      oneLine(dryFitWords(dryFit, job, result)),
      `${files.size} files written to ${oneLine(folder)}`,
    ],
  };
}

function problemLine({ where, what, howMuch }: Problem, job: Job): string {
  const amount = howMuch === null ? '' : ` (${formatLength(howMuch, { unit: job.display })})`;
  return `problem: ${oneLine(where)}: ${oneLine(what)}${amount}`;
}

const reasons: Record<string, string> = {
  ENOENT: 'it does not exist',
  EACCES: 'you have no permission',
  EPERM: 'you have no permission',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'part of the path is a file, not a folder',
  EISDIR: 'it is a folder',
  EEXIST: 'a file of that name is in the way',
  ENOTEMPTY: 'a folder is in the way',
  ENAMETOOLONG: 'the name is too long',
};

function reason(error: unknown, path: string): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return `${oneLine(path)}: ${(code && reasons[code]) ?? message}`;
}

/** Line breaks and other control characters that would break one line per fault become blanks. */
const oneLine = (text: string): string => text.replace(/[\p{Cc}\u2028\u2029]+/gu, ' ');
