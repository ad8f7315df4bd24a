import scanAddress from '../../scenes/scans/tub-alcove.ply?url';
import { type Job, parseJob } from '../core';

/**
 * A scan of an invented alcove, and the job of that alcove with a few readings by hand.
 * @returns rejects where the browser does not have it at hand
 */
export async function demoScan(): Promise<{ job: Job; file: File }> {
  const [response, { default: written }] = await Promise.all([
    fetch(scanAddress),
    import('../../scenes/scans/tub-alcove.json'),
  ]);
  if (!response.ok) throw new Error(`the demo scan: ${response.status}`);
  const parsed = parseJob(written);
  if (!parsed.ok) throw new Error(`the demo scan's job: ${parsed.faults[0]?.path} ${parsed.faults[0]?.message}`);
  return { job: parsed.job, file: new File([await response.blob()], 'tub-alcove.ply') };
}
