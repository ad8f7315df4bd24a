// Writes the demo jobs of scenes.ts to scenes/, and the demo scan with its job to scenes/scans/: npx tsx tests/simulate/makeScenes.ts
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseJob } from '../../src/core/job-file';
import { demoScanJob, demoScanPly } from './demoScan';
import { scenes } from './scenes';

const folder = fileURLToPath(new URL('../../scenes/', import.meta.url));
mkdirSync(folder, { recursive: true });
mkdirSync(`${folder}scans`, { recursive: true });
writeFileSync(`${folder}scans/tub-alcove.ply`, demoScanPly());
for (const { file, job } of [...scenes, { file: 'scans/tub-alcove.json', job: demoScanJob() }]) {
  const parsed = parseJob(job);
  if (!parsed.ok)
    throw new Error(`${file}: ${parsed.faults.map(({ path, message }) => `${path} ${message}`).join('; ')}`);
  writeFileSync(folder + file, `${JSON.stringify(job, null, 2)}\n`);
}
