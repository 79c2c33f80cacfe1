import { execFile } from 'node:child_process';
import { access, rename, rm, rmdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { PGlite } from '@electric-sql/pglite';

const MAKE = fileURLToPath(new URL('./make-embedded.mjs', import.meta.url));
/**
 * What the database itself keeps of its pages. 128 MB is usual for a server; a school's data is a few megabytes, and the
 * operating system keeps the files at hand anyway.
 */
const SHARED_BUFFERS = '16MB';

/**
 * Starts Postgres inside this process: upon a folder, which is made when it is not there, or in memory.
 *
 * A new database is made by a process of its own, since making it takes more than 600 MB that a process does not give back,
 * and under another name, so that a start that is cut off leaves no half of one.
 */
export async function createEmbedded(folder: string | undefined): Promise<PGlite> {
  if (folder !== undefined && !(await isDatabase(folder))) await make(folder);
  return PGlite.create({
    dataDir: folder ?? 'memory://',
    startParams: [...PGlite.defaultStartParams, '-c', `shared_buffers=${SHARED_BUFFERS}`],
  });
}

function isDatabase(folder: string): Promise<boolean> {
  return access(join(folder, 'PG_VERSION')).then(
    () => true,
    () => false,
  );
}

async function make(folder: string): Promise<void> {
  const making = `${folder}.making`;
  await rm(making, { recursive: true, force: true });
  await promisify(execFile)(process.execPath, [MAKE, making]);
  // Makes room if there is an empty folder; one with something in it stays, and the renaming says so.
  await rmdir(folder).catch(() => {});
  await rename(making, folder);
}
