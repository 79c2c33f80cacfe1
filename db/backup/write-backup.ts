import { createHash } from 'node:crypto';
import { createReadStream, createWriteStream } from 'node:fs';
import { link, readFile, rm, writeFile } from 'node:fs/promises';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { createGzip, gzipSync } from 'node:zlib';
import { sql } from 'drizzle-orm';
import { z } from 'zod';
import type { Db, Store } from '../connection/db.ts';
import { BackupError } from './backup-error.ts';
import { BACKUP_FORMAT, type BackupHeader } from './header.ts';
import { rawRows } from './raw-rows.ts';
import { schemaVersionOf } from './schema-version.ts';
import { tablesInOrder } from './tables-in-order.ts';

/** Hears how many rows are done, of how many. */
export type OnProgress = (done: number, all: number) => void;

/** Where a backup goes. `madeAt` is the caller's now. The file must not be there yet. */
export interface BackupWanted {
  readonly file: string;
  readonly madeAt: Date;
  readonly onProgress?: OnProgress | undefined;
}

/** Rows read at a time: what is in memory at once. */
const ROWS_AT_ONCE = 500;
/** The bot's user alone reads it: it is everything that is known of everybody. */
const PRIVATE = 0o600;

const counted = z.object({ name: z.string(), rows: z.coerce.number() });
const line = z.object({ line: z.string() });

/**
 * Writes all rows of ours to a file, as they are at one moment; others may go on reading and writing on a server, on the
 * embedded database they wait until it is done. The file appears whole or not at all.
 *
 * @throws {BackupError} when there is a file of that name.
 */
export async function writeBackup(
  store: Pick<Store, 'db'>,
  { file, madeAt, onProgress = () => {} }: BackupWanted,
): Promise<BackupHeader> {
  const [body, whole] = [`${file}.rows.part`, `${file}.part`];
  try {
    const header = await store.db.transaction<BackupHeader>(
      async (tx) => {
        await tx.execute(sql`set local timezone = 'UTC'`);
        const tables = await countTables(tx);
        const sha256 = await writeRows(tx, body, tables, onProgress);
        const schema = await schemaVersionOf(tx);
        const about = { release: await release(), schema, madeAt: madeAt.toISOString() };
        return { format: 'suppersums-backup', version: BACKUP_FORMAT, ...about, tables, sha256 };
      },
      { isolationLevel: 'repeatable read', accessMode: 'read only' },
    );
    // A gzip file may be several one after the other (RFC 1952, section 2.2): what is known last can stand first.
    await writeFile(whole, gzipSync(`${JSON.stringify(header)}\n`), { mode: PRIVATE });
    await pipeline(createReadStream(body), createWriteStream(whole, { flags: 'a', flush: true }));
    await publish(whole, file);
    return header;
  } finally {
    await rm(body, { force: true });
    await rm(whole, { force: true });
  }
}

async function publish(whole: string, file: string): Promise<void> {
  try {
    await link(whole, file);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    throw new BackupError(`There is a file ${file} already. Give the backup another name.`);
  }
}

async function countTables(db: Db): Promise<BackupHeader['tables']> {
  const names = tablesInOrder();
  const each = names.map(
    (name, place) =>
      sql`select ${place}::int as place, ${name}::text as name, count(*) as rows from ${sql.identifier(name)}`,
  );
  return rawRows(db, sql`${sql.join(each, sql` union all `)} order by place`, counted);
}

/** Returns the hash of what was written, before it is compressed. */
async function writeRows(
  db: Db,
  file: string,
  tables: BackupHeader['tables'],
  onProgress: OnProgress,
): Promise<string> {
  const hash = createHash('sha256');
  const all = tables.reduce((sum, { rows }) => sum + rows, 0);
  let done = 0;
  const chunks = async function* () {
    onProgress(0, all);
    for (const { name } of tables) {
      for await (const lines of linesOf(db, name)) {
        const chunk = lines.map((text) => `${text}\n`).join('');
        hash.update(chunk);
        yield chunk;
        done += lines.length;
        onProgress(done, all);
      }
    }
  };
  await pipeline(
    Readable.from(chunks()),
    createGzip(),
    createWriteStream(file, { mode: PRIVATE, flags: 'w' }),
  );
  return hash.digest('hex');
}

/** The rows of a table, a few at a time: a whole school's marks do not have to fit into memory. */
async function* linesOf(db: Db, table: string): AsyncGenerator<string[]> {
  const rows = sql`select to_jsonb(t)::text as line from ${sql.identifier(table)} t`;
  await db.execute(sql`declare backup_rows no scroll cursor for ${rows}`);
  for (;;) {
    const found = await rawRows(
      db,
      sql`fetch ${sql.raw(String(ROWS_AT_ONCE))} from backup_rows`,
      line,
    );
    if (found.length > 0) yield found.map((row) => row.line);
    if (found.length < ROWS_AT_ONCE) break;
  }
  await db.execute(sql`close backup_rows`);
}

const packed = z.object({ version: z.string() });

async function release(): Promise<string> {
  const file = new URL('../../package.json', import.meta.url);
  return packed.parse(JSON.parse(await readFile(file, 'utf8'))).version;
}
