import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Store } from '../connection/db.ts';
import { MIGRATIONS_FOLDER } from '../connection/migrations-folder.ts';
import { inTransaction } from '../connection/transaction.ts';
import { bot, ledger } from '../schema/index.ts';
import { eraseAgain } from './erase-again.ts';
import { readErasures } from './erasures.ts';
import { type BackupHeader, countRows } from './header.ts';
import { loadRows } from './load-rows.ts';
import { checkBackup } from './read-backup.ts';
import { fitOf } from './schema-version.ts';
import { settleGap } from './settle-gap.ts';
import { upgradeBackup } from './upgrade-backup.ts';
import type { OnProgress } from './write-backup.ts';

/** What to restore. `now` is the caller's clock. */
export interface RestoreWanted {
  readonly file: string;
  readonly now: Date;
  /** Until when the bot that was backed up may have gone on sending; until now, unless it is known. */
  readonly ranUntil?: Date | undefined;
  /** A list of what was erased since, or a newer backup. */
  readonly erasures?: string | undefined;
  readonly onProgress?: OnProgress | undefined;
  /** The migrations that the store has had; those of this release, unless said otherwise. */
  readonly migrationsFolder?: string | undefined;
}

/** What a restore did. */
export interface Restored {
  readonly backup: BackupHeader;
  /** Whether the backup was an earlier release's. */
  readonly upgraded: boolean;
  /** Children that came back with the backup and were erased again. */
  readonly erased: number;
  /** Messages that may have arrived or not, and are not sent again. */
  readonly unknown: number;
}

/**
 * Puts a backup into an empty store, in one transaction. What came due until `ranUntil` is not sent again.
 *
 * @throws {BackupError} when the store is not empty, or the file is not whole, newer, or no backup; nothing is changed then.
 */
export async function restoreBackup(store: Store, wanted: RestoreWanted): Promise<Restored> {
  const { file, now, ranUntil = now, onProgress = () => {} } = wanted;
  const migrationsFolder = wanted.migrationsFolder ?? MIGRATIONS_FOLDER;
  const backup = await checkBackup(file);
  const upgraded = fitOf(backup, migrationsFolder) === 'older';
  const erasures = wanted.erasures === undefined ? [] : await readErasures(wanted.erasures);
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-restore-'));
  try {
    const own = upgraded ? await upgradeBackup(file, backup, { folder, migrationsFolder }) : file;
    const all = countRows(upgraded ? await checkBackup(own) : backup);
    const done = await inTransaction(store, async (inner) => {
      await loadRows(inner.db, { file: own, all, onProgress });
      const unknown = await settleGap(inner, { madeAt: new Date(backup.madeAt), ranUntil, now });
      return { unknown, erased: await eraseAgain(inner, erasures) };
    });
    await openQueues(store);
    return { backup, upgraded, ...done };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The engine's tables are new: a process that only plans could not wake senders of a bot that it does not connect itself. */
async function openQueues(store: Store): Promise<void> {
  const known = await store.db.select({ botId: bot.id }).from(bot);
  const owing = await store.db.selectDistinct({ botId: ledger.botId }).from(ledger);
  const bots = new Set([...known, ...owing].map(({ botId }) => botId));
  for (const botId of bots) await store.queue.open(botId);
}
