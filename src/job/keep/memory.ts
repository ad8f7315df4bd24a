import type { Keep, KeptJob, KeptPhoto, KeptScan } from './keep';

/** Keeps jobs as long as the page stays open: for browsers that give no storage. */
export function memoryKeep(): Keep {
  const jobs = new Map<string, KeptJob>();
  const photos = new Map<string, KeptPhoto>();
  const scans = new Map<string, KeptScan>();
  const remembered = new Map<string, string>();
  const keyOf = (job: string, id: string) => JSON.stringify([job, id]);
  let current: string | null = null;
  return {
    current: async () => (current === null ? undefined : jobs.get(current)),
    job: async (id) => jobs.get(id),
    jobs: async () => [...jobs.values()],
    put: async (job) => {
      if ((jobs.get(job.id)?.revision ?? 0) !== job.revision) return null;
      const revision = job.revision + 1;
      jobs.set(job.id, { ...job, revision });
      return revision;
    },
    makeCurrent: async (id) => {
      current = id;
    },
    bringIn: async (more, morePhotos) => {
      for (const job of more) jobs.set(job.id, job);
      for (const photo of morePhotos) photos.set(keyOf(photo.job, photo.id), photo);
    },
    markDeleted: async (id, deletedAt) => {
      const job = jobs.get(id);
      if (!job) return;
      const { deletedAt: _, ...rest } = job;
      jobs.set(id, { ...rest, revision: job.revision + 1, ...(deletedAt !== undefined && { deletedAt }) });
    },
    removeForGood: async (id) => {
      jobs.delete(id);
      for (const [key, { job }] of photos) if (job === id) photos.delete(key);
      for (const [key, { job }] of scans) if (job === id) scans.delete(key);
    },
    putPhoto: async (photo) => void photos.set(keyOf(photo.job, photo.id), photo),
    photo: async (job, id) => photos.get(keyOf(job, id)),
    photos: async (job) => [...photos.values()].filter((photo) => photo.job === job),
    removePhoto: async (job, id) => void photos.delete(keyOf(job, id)),
    putScan: async (scan) => void scans.set(keyOf(scan.job, scan.id), scan),
    scan: async (job, id) => scans.get(keyOf(job, id)),
    scanIds: async (job) => [...scans.values()].filter((scan) => scan.job === job).map(({ id }) => id),
    removeScan: async (job, id) => void scans.delete(keyOf(job, id)),
    remember: async (what, text) => void remembered.set(what, text),
    recall: async (what) => remembered.get(what),
  };
}
