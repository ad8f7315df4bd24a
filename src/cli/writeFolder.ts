import { lstat, mkdir, mkdtemp, rename, rm, rmdir, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';

/**
 * Writes files into a folder, all or none: first into a temporary folder beside them, then moved into place; whatever
 * stood there under the same name is put back if a move fails. Other files in the folder stay as they are.
 * @param files bytes by path inside the folder, `/` between parts
 * @throws the file system's error, with the folder as it was before
 */
export async function writeFolder(folder: string, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  const target = resolve(folder);
  const existed = await isFolder(target);
  const made = existed ? undefined : await mkdir(dirname(target), { recursive: true });
  try {
    await writeBeside(target, existed, files);
  } catch (error) {
    if (made) await removeEmpty(dirname(target), made);
    throw error;
  }
}

async function writeBeside(target: string, existed: boolean, files: ReadonlyMap<string, Uint8Array>): Promise<void> {
  const temporary = await mkdtemp(
    existed ? join(target, '.unfinished-') : join(dirname(target), `.${basename(target)}-unfinished-`),
  );
  try {
    const fresh = join(temporary, 'new');
    for (const [path, bytes] of files) {
      await mkdir(dirname(join(fresh, path)), { recursive: true });
      await writeFile(join(fresh, path), bytes);
    }
    if (existed) await moveInto(target, fresh, join(temporary, 'old'), [...files.keys()]);
    else await rename(fresh, target);
  } finally {
    await rm(temporary, { recursive: true, force: true });
  }
}

async function moveInto(target: string, fresh: string, old: string, paths: string[]): Promise<void> {
  const undo: (() => Promise<void>)[] = [];
  try {
    for (const path of paths) {
      const place = join(target, path);
      const made = await mkdir(dirname(place), { recursive: true });
      if (made) undo.push(() => rmdir(made));
      if (await exists(place)) {
        await mkdir(dirname(join(old, path)), { recursive: true });
        await rename(place, join(old, path));
        undo.push(() => rename(join(old, path), place));
      }
      await rename(join(fresh, path), place);
      undo.push(() => rm(place));
    }
  } catch (error) {
    for (const step of undo.reverse()) await step();
    throw error;
  }
}

async function isFolder(path: string): Promise<boolean> {
  try {
    if ((await lstat(path)).isSymbolicLink()) return true;
    if ((await lstat(path)).isDirectory()) return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return false;
    throw error;
  }
  throw Object.assign(new Error(`${path} is a file`), { code: 'ENOTDIR' });
}

const exists = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    () => false,
  );

/** Takes back folders made on the way to `deepest`, from there up to `first`. */
async function removeEmpty(deepest: string, first: string): Promise<void> {
  for (let folder = deepest; folder.startsWith(first); folder = dirname(folder)) {
    await rmdir(folder).catch(() => undefined);
    if (folder === first) return;
  }
}
