import type { Scan } from '../../../core';
import { condenseInWorker, type Session } from '../../../job';
import { type Sorted, useScan } from './scan-store';

/** Condenses a sorted scan to cells and puts it into the job; its points are kept in the browser where there is room. */
export async function takeIntoJob(session: Session, sorted: Sorted, keepPoints: boolean): Promise<void> {
  const { back, work, tell, putAway } = useScan.getState();
  const { positions, labels, source } = sorted;
  const { stage: before, job } = useScan.getState();
  const condensing = condenseInWorker(positions, labels, tell);
  work('Taking the walls into the job', () => {
    condensing.cancel();
    back(before);
  });
  try {
    const cells = await condensing.done;
    if (Object.keys(cells.surfaces).length === 0) {
      back(before, 'No wall has enough points to be taken into the job. Mend the parts, or scan again.');
      return;
    }
    const { draft } = session.draft.getState();
    if (draft.id !== job) {
      back(before, 'Another job was opened meanwhile, so that the scan was not taken in. Take it into the job again.');
      return;
    }
    const id = sorted.id ?? freeId(draft.job.scans);
    const place = draft.job.scans.find((scan) => scan.id === id);
    const scan: Scan = { scaleSd: 2, tiltSd: 5, biasSd: 0.5, ...place, ...cells, id, kind: 'scan', source };
    const edit = session.draft.getState();
    if (place) edit.choose(['scans', id], scan);
    else edit.addTo(['scans'], scan);
    // Only then does the list of scans look which points are kept.
    const told = await whereKept(session, draft.id, id, sorted, keepPoints);
    putAway();
    session.tell(told);
  } catch {
    back(before, 'The scan could not be taken into the job, most likely for want of memory. The job is as it was.');
  }
}

async function whereKept(
  { scans }: Session,
  job: string,
  id: string,
  { positions, labels }: Sorted,
  keepPoints: boolean,
): Promise<string> {
  const taken = 'The scan is in the job.';
  if (!keepPoints) {
    await scans.remove(job, id).catch(() => undefined);
    return `${taken} Its points are not kept.`;
  }
  const kept = await scans.keep(job, id, { positions, labels });
  return kept.ok
    ? `${taken} Its points are kept in this browser, to be mended later.`
    : `${taken} ${kept.why} The cells are in the job all the same; keep the file to mend them.`;
}

function freeId(scans: readonly { id: string }[]): string {
  const taken = new Set(scans.map(({ id }) => id));
  let n = 1;
  while (taken.has(`scan${n}`)) n++;
  return `scan${n}`;
}
