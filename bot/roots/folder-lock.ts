import { link, mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** Somebody else uses the folder. */
export class FolderInUse extends Error {}

/**
 * Takes a data folder for this process: two processes in one embedded database would destroy it. A lock left by a process
 * that no longer lives is taken over. Returns how to let go.
 */
export async function lockFolder(folder: string, pid: number): Promise<() => Promise<void>> {
  await mkdir(folder, { recursive: true });
  const file = join(folder, 'lock');
  const own = `${file}.${pid}`;
  await writeFile(own, String(pid));
  for (let tried = 0; tried < 2; tried += 1) {
    try {
      // Linked, not written in place: nobody ever sees a lock without its owner.
      await link(own, file);
      await rm(own, { force: true });
      return () => rm(file, { force: true });
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
      const owner = Number(await readFile(file, 'utf8').catch(() => ''));
      if (owner > 0 && owner !== pid && isAlive(owner)) {
        await rm(own, { force: true });
        throw new FolderInUse(
          `${folder} is in use by process ${owner}. Stop that one first, or set DATA_DIR to another folder.`,
        );
      }
      await rm(file, { force: true });
    }
  }
  throw new FolderInUse(`${folder} is being taken by another process just now. Try again.`);
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Not allowed to signal it means that it lives.
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}
