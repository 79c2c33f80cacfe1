import { sql } from 'drizzle-orm';
import { z } from 'zod';
import type { Db } from '../connection/db.ts';
import { problemOf } from '../problem-of.ts';
import { BackupError } from './backup-error.ts';
import { rawRows } from './raw-rows.ts';
import { rowsIn } from './read-backup.ts';
import type { OnProgress } from './write-backup.ts';

/** A statement holds so many rows, or so many characters, whichever is less. */
const ROWS_AT_ONCE = 500;
const CHARACTERS_AT_ONCE = 1_000_000;

const named = z.object({ name: z.string() });
const full = z.object({ name: z.string(), full: z.boolean() });

/**
 * Puts the rows of a checked backup into the tables, which have the backup's own schema, with every constraint kept. Inside
 * the caller's transaction: a row that does not fit leaves nothing behind.
 *
 * @throws {BackupError} when a table has rows already, or rows do not fit.
 */
export async function loadRows(
  db: Db,
  { file, all, onProgress = () => {} }: { file: string; all: number; onProgress?: OnProgress },
): Promise<void> {
  const tables = await lockEmpty(db);
  let batch: string[] = [];
  let [ofTable, characters, done] = ['', 0, 0];
  const put = async () => {
    if (batch.length > 0) await insert(db, ofTable, batch);
    done += batch.length;
    onProgress(done, all);
    [batch, characters] = [[], 0];
  };
  for await (const { table, json } of rowsIn(file)) {
    const isFull = batch.length >= ROWS_AT_ONCE || characters >= CHARACTERS_AT_ONCE;
    if (table !== ofTable || isFull) await put();
    if (!tables.has(table)) {
      throw new BackupError(`${file} has rows of “${table}”, which this database has not.`);
    }
    ofTable = table;
    characters += json.length;
    batch.push(json);
  }
  await put();
}

/** Nobody else writes until the transaction ends: a bot started at this moment waits, and finds everything there. */
async function lockEmpty(db: Db): Promise<ReadonlySet<string>> {
  const tables = await rawRows(
    db,
    sql`select tablename::text as name from pg_tables where schemaname = 'public' order by 1`,
    named,
  );
  const names = tables.map(({ name }) => sql.identifier(name));
  await db.execute(sql`lock table ${sql.join(names, sql`, `)} in share row exclusive mode`);
  const looks = tables.map(
    ({ name }) =>
      sql`select ${name}::text as name, exists (select 1 from ${sql.identifier(name)}) as full`,
  );
  const looked = await rawRows(db, sql.join(looks, sql` union all `), full);
  const filled = looked.filter((table) => table.full).map(({ name }) => name);
  if (filled.length > 0) {
    throw new BackupError(
      `The database is not empty (${filled.sort().join(', ')}). A backup is restored into a new one: choose another DATA_DIR or DATABASE_URL that no bot has used.`,
    );
  }
  return new Set(tables.map(({ name }) => name));
}

async function insert(db: Db, table: string, rows: readonly string[]): Promise<void> {
  const name = sql.identifier(table);
  const list = `[${rows.join(',')}]`;
  try {
    await db.execute(
      sql`insert into ${name} select * from jsonb_populate_recordset(null::${name}, ${list}::text::jsonb)`,
    );
  } catch (error) {
    throw new BackupError(
      `Rows of “${table}” in the backup do not fit this database (${causeOf(error)}). Nothing was restored.`,
    );
  }
}

/** The database's own code for what is wrong: its message may quote a row. */
function causeOf(error: unknown): string {
  const cause = error instanceof Error && error.cause ? error.cause : error;
  const code = cause instanceof Error && 'code' in cause ? ` ${String(cause.code)}` : '';
  return `${problemOf(cause)}${code}`;
}
