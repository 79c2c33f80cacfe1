import { PGlite } from '@electric-sql/pglite';
import { readMigrationFiles } from 'drizzle-orm/migrator';
import postgres from 'postgres';
import { MIGRATIONS_FOLDER } from './migrations-folder.ts';

/** A database as it is found: nothing is changed in it. */
export interface DatabaseState {
  /** Of Postgres: 170004 is 17.4. */
  readonly version: number;
  /** Steps of our schema that are done, and that this release has. */
  readonly applied: number;
  readonly known: number;
}

/** Runs one statement and returns its first row's only column. */
type Ask = (statement: string) => Promise<unknown>;

/** Looks at a server without migrating it. Rejects within five seconds when it cannot be reached. */
export async function probeServer(url: string): Promise<DatabaseState> {
  const client = postgres(url, { max: 1, connect_timeout: 5, onnotice: () => {} });
  try {
    return await stateOf(async (statement) => {
      const [row] = await client.unsafe(statement);
      return row?.value;
    });
  } finally {
    await client.end({ timeout: 1 });
  }
}

/** Looks at an embedded database that exists, without migrating it. The caller holds the folder. */
export async function probeEmbedded(folder: string): Promise<DatabaseState> {
  const pglite = await PGlite.create(folder);
  try {
    return await stateOf(async (statement) => {
      const { rows } = await pglite.query<{ value: unknown }>(statement);
      return rows[0]?.value;
    });
  } finally {
    await pglite.close();
  }
}

async function stateOf(ask: Ask): Promise<DatabaseState> {
  const table = 'drizzle.__drizzle_migrations';
  const version = Number(await ask(`select current_setting('server_version_num') as value`));
  const isMade = (await ask(`select to_regclass('${table}') is not null as value`)) === true;
  const applied = isMade ? Number(await ask(`select count(*)::int as value from ${table}`)) : 0;
  const known = readMigrationFiles({ migrationsFolder: MIGRATIONS_FOLDER }).length;
  return { version, applied, known };
}
