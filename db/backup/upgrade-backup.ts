import { cp, mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { drizzle } from 'drizzle-orm/pglite';
import { migrate } from 'drizzle-orm/pglite/migrator';
import { z } from 'zod';
import * as schema from '../schema/index.ts';
import { type BackupHeader, countRows } from './header.ts';
import { loadRows } from './load-rows.ts';
import { writeBackup } from './write-backup.ts';

/**
 * Brings a checked backup of an earlier release up to this one's schema, by way of a database in memory: the backup's own
 * migrations, its rows, then the migrations since, as a database that was never away would have had them. Writes the result
 * into `folder` and returns its name. It is as old as the backup.
 */
export async function upgradeBackup(
  file: string,
  header: BackupHeader,
  { folder, migrationsFolder }: { folder: string; migrationsFolder: string },
): Promise<string> {
  const before = join(folder, 'migrations');
  await copyFirst(header.schema.migrations, migrationsFolder, before);
  const pglite = await PGlite.create('memory://');
  try {
    const db = drizzle(pglite, { schema });
    await migrate(db, { migrationsFolder: before });
    await db.transaction((tx) => loadRows(tx, { file, all: countRows(header) }));
    await migrate(db, { migrationsFolder });
    const upgraded = join(folder, 'upgraded.gz');
    await writeBackup({ db }, { file: upgraded, madeAt: new Date(header.madeAt) });
    return upgraded;
  } finally {
    await pglite.close();
  }
}

const journal = z.looseObject({ entries: z.array(z.looseObject({ tag: z.string() })) });

/** A folder with the first migrations only: those the backup's release had. */
async function copyFirst(count: number, from: string, to: string): Promise<void> {
  const list = join('meta', '_journal.json');
  const all = journal.parse(JSON.parse(await readFile(join(from, list), 'utf8')));
  const entries = all.entries.slice(0, count);
  await mkdir(join(to, 'meta'), { recursive: true });
  await writeFile(join(to, list), JSON.stringify({ ...all, entries }));
  for (const { tag } of entries) await cp(join(from, `${tag}.sql`), join(to, `${tag}.sql`));
}
