import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runJob } from '../../../src/cli/runJob';
import { jobFiles } from '../../../src/output';
import { jobInput } from '../output/fixture';

let place: string;
beforeAll(async () => {
  place = await mkdtemp(join(tmpdir(), 'run-'));
  await writeFile(join(place, 'job.json'), JSON.stringify(jobInput));
});
afterAll(() => rm(place, { recursive: true }));

describe('runJob', () => {
  it('says how the virtual dry fit came out', async () => {
    const { status, out } = await runJob([join(place, 'job.json'), '--out', join(place, 'out')]);
    expect(status).toBe(0);
    expect(out.join('\n')).toMatch(/^Virtual dry fit: \d+ templates read back from their files/m);
  }, 60_000);

  it('exits 3, names piece and edge and writes nothing where a template does not fit', async () => {
    const outcome = await runJob([join(place, 'job.json'), '--out', join(place, 'none')], async (...given) => {
      const made = await jobFiles(...given);
      const worst = { piece: 'panels.left', edge: 'back', kind: 'overlap', by: 0.5 } as const;
      return { ...made, dryFit: { ...made.dryFit, fits: false, worst } };
    });
    expect(outcome.status).toBe(3);
    expect(outcome.err).toEqual([
      expect.stringMatching(/left side panel at its back edge reaches too far by 0\.50 mm.*Nothing was written\.$/),
    ]);
    expect(await readdir(place)).not.toContain('none');
  }, 60_000);
});
