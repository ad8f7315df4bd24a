import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { draftOf } from '../../../../src/job/draft';
import { jobText } from '../../../../src/job/job-text';
import { packJobs, readJobs } from '../../../../src/job/jobs-file';
import type { ShelvedJob } from '../../../../src/job/shelf';
import { testJob } from '../testJob';

const picture = new Uint8Array([0xff, 0xd8, 0xff, 1, 2, 3]);
const photo = (id: string) => ({
  job: '',
  id,
  bytes: picture,
  type: 'image/jpeg',
  width: 4,
  height: 3,
  takenAt: 7,
});
const shelved = (name: string, more: Partial<ShelvedJob> = {}): ShelvedJob => ({
  draft: draftOf({ ...testJob(), name }, ''),
  changedAt: 5,
  photos: [],
  ...more,
});
const unfinished = () => {
  const job = shelved('Half way', { photos: [photo('p1')] });
  job.draft.job.readings.push({ id: 'r9', kind: 'plumb', wall: 'left', gaps: [{}] });
  job.draft.job.readings[0]!.photos = ['p1'];
  job.draft.typed = { '["readings","r1","value"]': '29 3/', '["fit","top"]': 'up to there' };
  return job;
};
const bytesOf = (jobs: ShelvedJob[]): Uint8Array<ArrayBuffer> => {
  const packed = packJobs(jobs);
  if (!packed.ok) throw new Error(packed.message);
  return typeof packed.content === 'string' ? new Uint8Array(strToU8(packed.content)) : packed.content;
};
const zip = (parts: Record<string, string | Uint8Array>) =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([k, v]) => [k, typeof v === 'string' ? strToU8(v) : v])));
const contents = (jobs: unknown[], more = {}) =>
  JSON.stringify({ format: 'nookwright-jobs', version: 1, jobs, ...more });
const entry = { file: 'jobs/a.json', changedAt: 1, photos: [] };

describe('round trip', () => {
  it('gives every job back with its photos and its unread text', () => {
    const jobs = [shelved('One'), unfinished()];
    const read = readJobs('x.zip', bytesOf(jobs));
    if (!read.ok) throw new Error(read.message);
    expect(read.jobs.map(({ job }) => job)).toEqual(jobs);
    expect(read.jobs[1]).toMatchObject({ name: 'Half way', readings: 4, photos: 1, faults: [] });
  });

  it('gives a job back that has a stud without its place', () => {
    const job = shelved('Behind the wall');
    job.draft.job.studs.push({ id: 's1', wall: 'left', width: 38 });
    const read = readJobs('x.zip', bytesOf([job]));
    if (!read.ok) throw new Error(read.message);
    expect(read.jobs).toMatchObject([{ faults: [], unfinished: 1, job }]);
  });

  it('writes a single finished job without photos as the plain job file', () => {
    const packed = packJobs([shelved('One')]);
    expect(packed).toEqual({
      ok: true,
      name: 'one.json',
      type: 'application/json',
      content: jobText({ ...testJob(), name: 'One' }),
    });
    const read = readJobs('one.json', bytesOf([shelved('One')]), 5);
    expect(read.ok && read.jobs[0]?.job?.draft.job.name).toBe('One');
  });

  it('writes a single job that is not finished so that nothing of it is lost', () => {
    const packed = packJobs([unfinished()]);
    expect(packed.ok && packed.name).toBe('half-way.zip');
  });
});

describe('a file that was not written by the app', () => {
  const message = (bytes: Uint8Array<ArrayBuffer>) => {
    const read = readJobs('x.zip', bytes);
    return read.ok ? 'read' : read.message;
  };

  it.each([
    ['points out of itself', zip({ '../a.json': '{}' }), /points out of the file/],
    ['starts at a root', zip({ '/etc/a': '{}' }), /points out of the file/],
    ['has no table of contents', zip({ 'a.txt': 'x' }), /no table of contents/],
    ['is of another kind', zip({ 'contents.json': '{"format":"other"}' }), /not a file of jobs/],
    ['is of a newer version', zip({ 'contents.json': contents([], { version: 2 }) }), /newer version/],
    ['unpacks to far more than it is', zip({ 'contents.json': new Uint8Array(5 * 1024 * 1024) }), /is the most/],
    [
      'names a part outside its folder',
      zip({ 'contents.json': contents([{ ...entry, file: 'jobs/../b.json' }]) }),
      /faults/,
    ],
    ['is cut short', bytesOf([unfinished()]).slice(0, 600), /cut short/],
    ['is cut short at its start', bytesOf([unfinished()]).slice(0, 4), /cut short/],
  ])('is refused when it %s', (_, bytes, words) => {
    expect(message(bytes as Uint8Array<ArrayBuffer>)).toMatch(words);
  });

  it('is refused when it has more parts than jobs and photos could be', () => {
    const parts = Object.fromEntries(Array.from({ length: 6600 }, (_, i) => [`jobs/${i}.json`, '']));
    expect(message(zip(parts))).toMatch(/more than 6500 parts/);
  });

  it('names each fault with its place, and lets the sound jobs in', () => {
    const bad = { ...testJob(), colour: 'blue' };
    const read = readJobs(
      'x.zip',
      zip({
        'contents.json': contents([
          entry,
          {
            file: 'jobs/b.json',
            changedAt: 1,
            photos: [
              { id: 'p', file: 'photos/b/1.jpg', type: 'image/jpeg', width: 1, height: 1, takenAt: 0 },
              { id: 'q', file: 'photos/b/2.jpg', type: 'image/jpeg', width: 1, height: 1, takenAt: 0 },
            ],
          },
        ]),
        'jobs/a.json': JSON.stringify(bad),
        'jobs/b.json': jobText(testJob()),
        'photos/b/1.jpg': '<svg/>',
      }),
    );
    if (!read.ok) throw new Error(read.message);
    expect(read.jobs.map(({ job }) => job !== null)).toEqual([false, true]);
    expect(read.jobs[0]?.faults[0]?.path).toBe('jobs/a.json: colour');
    expect(read.jobs[1]?.faults.map(({ path }) => path)).toEqual(['photos/b/1.jpg', 'photos/b/2.jpg']);
  });

  it('does not let a draft in that has values of the wrong kind', () => {
    const draft = (change: object, typed: object = {}) =>
      readJobs(
        'x.zip',
        zip({
          'contents.json': contents([{ ...entry, draft: 'unfinished/a.json' }]),
          'jobs/a.json': jobText(testJob()),
          'unfinished/a.json': JSON.stringify({ job: { ...testJob(), ...change }, typed }),
        }),
      );
    const faults = (read: ReturnType<typeof draft>) => (read.ok ? read.jobs[0]?.faults.map(({ path }) => path) : null);
    const [first] = testJob().readings;
    expect(faults(draft({ readings: [{ ...first, value: {} }] }))).toEqual(['unfinished/a.json: readings[0].value']);
    expect(faults(draft({ readings: [{ id: 'r1', kind: 'guess' }] }))).toEqual(['unfinished/a.json: readings[0].kind']);
    expect(faults(draft({ readings: [first, first] }))).toEqual(['unfinished/a.json: readings[1].id']);
    expect(faults(draft({}, { nonsense: '1' }))).toEqual(['unfinished/a.json: typed.nonsense']);
    expect(faults(draft({ readings: [{ id: 'r1', kind: 'span', height: 1e9 }] }))).toEqual([]);
  });
});
