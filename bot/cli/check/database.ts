import { access, constants, mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { type DatabaseState, probeEmbedded, probeServer } from '../../../db/index.ts';
import { FolderInUse, lockFolder } from '../../roots/folder-lock.ts';
import { withoutPassword } from '../../roots/open-store.ts';
import { hasDatabase } from '../store.ts';
import { type Check, fine, mend } from './check.ts';

/** What the job engine needs, as the server counts its versions. */
const OLDEST = 130_000;

/** The database: reachable, new enough, of this release. It is not migrated. */
export const databaseCheck: Check = {
  what: 'database',
  look: ({ place: { databaseUrl, dataDir } }) =>
    databaseUrl ? lookAtServer(databaseUrl) : lookAtFolder(dataDir),
};

async function lookAtServer(url: string) {
  const where = withoutPassword(url);
  try {
    return judged(await probeServer(url), `server at ${where}`);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'no detail';
    return mend(`Cannot use ${where} (${code}). Start the server, or mend DATABASE_URL.`);
  }
}

async function lookAtFolder(folder: string) {
  try {
    await mkdir(folder, { recursive: true });
    await access(folder, constants.W_OK);
  } catch {
    return mend(`Cannot write to ${folder}. Mend its rights, or set DATA_DIR to another folder.`);
  }
  if (!(await hasDatabase(folder))) return fine(`none yet; the first start makes it in ${folder}`);
  try {
    const release = await lockFolder(folder, process.pid);
    try {
      return judged(await probeEmbedded(join(folder, 'database')), `embedded in ${folder}`);
    } finally {
      await release();
    }
  } catch (error) {
    if (error instanceof FolderInUse) return fine(`embedded in ${folder}, in use by a running bot`);
    return mend(
      `The database in ${folder} cannot be opened. Restore a backup into an empty DATA_DIR.`,
    );
  }
}

function judged({ version, applied, known }: DatabaseState, where: string) {
  const release = `Postgres ${Math.floor(version / 10_000)}.${version % 10_000}`;
  if (version < OLDEST) return mend(`${release} at the ${where} is too old: install 13 or newer.`);
  if (applied > known) {
    return mend(`The ${where} was used by a newer release. Install that one, or a newer one.`);
  }
  const state = applied === known ? 'up to date' : 'the next start brings it up to this release';
  return fine(`${where}, ${release}, ${state}`);
}
