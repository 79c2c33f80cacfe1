import { access, mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import {
  BackupError,
  type BackupHeader,
  checkBackup,
  countRows,
  type Log,
  listErasures,
  type OnProgress,
  type OpenStore,
  type Restored,
  type RestoreWanted,
  restoreBackup,
  writeBackup,
  writeErasures,
} from '../../db/index.ts';
import { askForBackup, askForErasures } from './ask-running.ts';
import { noteDemoLoaded } from './demo-marker.ts';
import { openStore } from './open-store.ts';

/** Where a database is: a server's, or the embedded one in a data folder (`data/live`). */
export interface StorePlace {
  readonly databaseUrl: string | undefined;
  readonly dataDir: string;
}

/** What is in a backup, and how big its file is. */
export interface BackupReport extends BackupHeader {
  readonly rows: number;
  readonly bytes: number;
}

/** What a restore or a move did. */
export interface RestoreReport extends Omit<Restored, 'backup'> {
  readonly backup: BackupReport;
}

/**
 * Writes a backup, also while the bot runs: on a server beside it, of the embedded database by asking the bot.
 *
 * @throws {BackupError} with one line for the operator; also `FolderInUse` and `DatabaseUnavailable`.
 */
export async function backUp(
  place: StorePlace,
  wanted: { file: string; now: Date; onProgress?: OnProgress },
  log: Log,
): Promise<BackupReport> {
  const { file, now: madeAt, onProgress } = wanted;
  if (place.databaseUrl || !(await askForBackup(place.dataDir, file))) {
    await withStore(place, log, (store) => writeBackup(store, { file, madeAt, onProgress }));
  }
  return inspectBackup(file);
}

/** Reads a backup to its end and says what is in it. @throws {BackupError} when it is not whole, or no backup. */
export async function inspectBackup(file: string): Promise<BackupReport> {
  const header = await checkBackup(file);
  return { ...header, rows: countRows(header), bytes: (await stat(file)).size };
}

/** Puts a backup into an empty place, while no bot runs there. @throws {BackupError} and nothing is changed. */
export async function restore(
  place: StorePlace,
  wanted: Omit<RestoreWanted, 'migrationsFolder'>,
  log: Log,
): Promise<RestoreReport> {
  const backup = await inspectBackup(wanted.file);
  const store = await openStore(place, log);
  try {
    const restored = await restoreBackup(store, wanted);
    // A rehearsal throws away what it takes for half a demo class.
    if (!place.databaseUrl && basename(place.dataDir) === 'rehearsal') {
      await noteDemoLoaded(place.dataDir);
    }
    return { ...restored, backup };
  } finally {
    await store.close();
  }
}

/**
 * Moves everything to another, empty place, while no bot runs on either: from the embedded database to a server, or back. What
 * was there stays where it was, untouched.
 */
export async function move(
  place: StorePlace,
  wanted: { to: StorePlace; now: Date; onProgress?: OnProgress },
  log: Log,
): Promise<RestoreReport> {
  const { to, now, onProgress } = wanted;
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-move-'));
  try {
    const file = join(folder, 'move.gz');
    await withStore(place, log, async (store) => {
      await refuseRunning(store);
      await writeBackup(store, { file, madeAt: now });
    });
    // Nobody sends in between, so nothing is late and nothing is doubtful.
    return await restore(to, { file, now, ranUntil: now, onProgress }, log);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** Writes what was erased to a small file, in place of the last one; also while the bot runs. Returns how many. */
export async function saveErasures(
  place: StorePlace,
  { file }: { file: string },
  log: Log,
): Promise<number> {
  const asked = place.databaseUrl ? null : await askForErasures(place.dataDir);
  return writeErasures(file, asked ?? (await withStore(place, log, listErasures)));
}

async function withStore<T>(
  place: StorePlace,
  log: Log,
  work: (store: OpenStore) => Promise<T>,
): Promise<T> {
  if (!place.databaseUrl) await mustHaveDatabase(place.dataDir);
  const store = await openStore(place, log);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** Opening would make an empty one. */
async function mustHaveDatabase(folder: string): Promise<void> {
  try {
    await access(join(folder, 'database'));
  } catch {
    throw new BackupError(
      `There is no database in ${folder}. Set DATA_DIR to the bot’s folder, or DATABASE_URL to its server.`,
    );
  }
}

async function refuseRunning({ peers }: OpenStore): Promise<void> {
  if (await peers.leads('plan')) return;
  throw new BackupError(
    'A bot runs on this database: what it does meanwhile would stay behind. Stop it first.',
  );
}
