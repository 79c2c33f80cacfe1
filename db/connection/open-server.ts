import { drizzle, type PostgresJsDatabase } from 'drizzle-orm/postgres-js';
import { migrate } from 'drizzle-orm/postgres-js/migrator';
import { PgBoss } from 'pg-boss';
import postgres from 'postgres';
import * as schema from '../schema/index.ts';
import type { OpenStore } from './db.ts';
import { createDeliveryQueue, type DeliveryQueue } from './delivery-queue.ts';
import { MIGRATIONS_FOLDER } from './migrations-folder.ts';
import { createServerPeers } from './server-peers.ts';

/** Any number that no other program on the database uses as its lock. */
const MIGRATION_LOCK = 760_309_512;
/** Connections of ours and of the engine; two more are kept open for what processes tell each other and agree on. */
const CONNECTIONS = 8;
const ENGINE_CONNECTIONS = 4;

/**
 * Opens a Postgres server by its connection string and applies migrations, ours and the job engine's.
 *
 * Rejects within `connect_timeout` seconds when the server cannot be reached; the caller says so in one line.
 */
export async function openServer(
  url: string,
  onEngineError: (error: Error) => void,
): Promise<OpenStore> {
  const client = postgres(url, { max: CONNECTIONS, connect_timeout: 5, onnotice: () => {} });
  try {
    const db = drizzle(client, { schema });
    const boss = new PgBoss({
      connectionString: url,
      max: ENGINE_CONNECTIONS,
      useListenNotify: true,
    });
    boss.on('error', onEngineError);
    const queue = await startAlone(client, db, boss);
    const { close, ...peers } = createServerPeers(url, client);
    return {
      db,
      queue,
      peers,
      close: async () => {
        await boss.stop({ graceful: true, timeout: 10_000 });
        await close();
        await client.end({ timeout: 5 });
      },
    };
  } catch (error) {
    await client.end({ timeout: 1 });
    throw error;
  }
}

/**
 * Applies all migrations and starts the engine while nobody else does: several processes may start on an empty database at
 * the same time, and the engine's tables are part of the same step.
 */
async function startAlone(
  client: postgres.Sql,
  db: PostgresJsDatabase<typeof schema>,
  boss: PgBoss,
): Promise<DeliveryQueue> {
  const own = await client.reserve();
  try {
    await own`select pg_advisory_lock(${MIGRATION_LOCK})`;
    await migrate(db, { migrationsFolder: MIGRATIONS_FOLDER });
    await boss.start();
    const queue = await createDeliveryQueue(boss);
    await own`select pg_advisory_unlock(${MIGRATION_LOCK})`;
    return queue;
  } finally {
    own.release();
  }
}
