import { type Keep, StorageFault } from '../keep';
import { type Shrunk, shrink } from './shrink';

export interface Photo {
  /** what a reading's `photos` names it by */
  id: string;
  width: number;
  height: number;
  /** ms since 1970 */
  takenAt: number;
}

export type AddedPhoto = { ok: true; photo: Photo } | { ok: false; message: string };

/**
 * The photos of jobs. One that no reading names any more stays until its job is removed for good, so that undo
 * always finds it.
 */
export interface Photos {
  /** Keeps a picture, upright and made smaller. */
  add(job: string, picture: Blob): Promise<AddedPhoto>;
  /** The picture; null where it is gone or cannot be read. */
  read(job: string, id: string): Promise<Blob | null>;
  list(job: string): Promise<Photo[]>;
  remove(job: string, id: string): Promise<void>;
}

export function photosIn(keep: Keep, makeSmaller: (picture: Blob) => Promise<Shrunk> = shrink): Photos {
  return {
    add: async (job, picture) => {
      let shrunk: Shrunk;
      try {
        shrunk = await makeSmaller(picture);
      } catch {
        return { ok: false, message: 'This picture cannot be read here. Take it as JPEG or PNG.' };
      }
      const { bytes, type, width, height } = shrunk;
      const photo = { id: crypto.randomUUID(), width, height, takenAt: Date.now() };
      try {
        await keep.putPhoto({ job, bytes, type, ...photo });
      } catch (error) {
        const full = StorageFault.of(error).trouble === 'full';
        return {
          ok: false,
          message: full
            ? 'There is no room left on this device for the photo. The readings are not touched.'
            : 'The browser did not keep the photo. The readings are not touched.',
        };
      }
      return { ok: true, photo };
    },
    read: async (job, id) => {
      try {
        const kept = await keep.photo(job, id);
        return kept ? new Blob([kept.bytes], { type: kept.type }) : null;
      } catch {
        return null;
      }
    },
    list: async (job) =>
      (await keep.photos(job))
        .map(({ id, width, height, takenAt }) => ({ id, width, height, takenAt }))
        .sort((a, b) => a.takenAt - b.takenAt),
    remove: (job, id) => keep.removePhoto(job, id),
  };
}
