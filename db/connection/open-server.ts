import { drizzle, type PostgresJsDatabase } from 'drizzle-orm/postgres-js';
import { migrate } from 'drizzle-orm/postgres-js/migrator';
import { PgBoss } from 'pg-boss';
import postgres from 'postgres';
import * as schema from '../schema/index.ts';
import type { OpenStore } from './db.ts';
import { createDeliveryQueue } from './delivery-queue.ts';
import { MIGRATIONS_FOLDER } from './migrations-folder.ts';

/** Any number that no other program on the database uses as its lock. */
const MIGRATION_LOCK = 760_309_512;

/**
 * Opens a Postgres server by its connection string and applies migrations.
 *
 * Rejects within `connect_timeout` seconds when the server cannot be reached; the caller says so in one line.
 */
export async function openServer(
  url: string,
  onEngineError: (error: Error) => void,
): Promise<OpenStore> {
  const client = postgres(url, { max: 8, connect_timeout: 5, onnotice: () => {} });
  try {
    const db = drizzle(client, { schema });
    await migrateAlone(client, db);
    const boss = new PgBoss({ connectionString: url, max: 4, useListenNotify: true });
    boss.on('error', onEngineError);
    await boss.start();
    const queue = await createDeliveryQueue(boss);
    return {
      db,
      queue,
      close: async () => {
        await boss.stop({ graceful: true, timeout: 10_000 });
        await client.end({ timeout: 5 });
      },
    };
  } catch (error) {
    await client.end({ timeout: 1 });
    throw error;
  }
}

/** Applies migrations while nobody else does: several processes may start on an empty database at the same time. */
async function migrateAlone(
  client: postgres.Sql,
  db: PostgresJsDatabase<typeof schema>,
): Promise<void> {
  const own = await client.reserve();
  try {
    await own`select pg_advisory_lock(${MIGRATION_LOCK})`;
    await migrate(db, { migrationsFolder: MIGRATIONS_FOLDER });
    await own`select pg_advisory_unlock(${MIGRATION_LOCK})`;
  } finally {
    own.release();
  }
}
