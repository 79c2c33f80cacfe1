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
    const { isAlone, letGo } = aloneBy(client);
    return {
      db,
      queue,
      isAlone,
      close: async () => {
        await boss.stop({ graceful: true, timeout: 10_000 });
        // A connection that is still held back would keep the end waiting for its whole timeout.
        letGo();
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

/** The first number of the pair that a bot's lock has; the bot's id is cut to fit into the second. */
const BOT_LOCK = 760_309_513;

/** Holds a lock of the session for as long as this process lives: the server lets go of it when the connection ends. */
function aloneBy(client: postgres.Sql): {
  readonly isAlone: OpenStore['isAlone'];
  readonly letGo: () => void;
} {
  const held = new Map<number, postgres.ReservedSql>();
  return {
    isAlone: async (botId) => {
      if (held.has(botId)) return true;
      const own = await client.reserve();
      const [row] =
        await own`select pg_try_advisory_lock(${BOT_LOCK}, ${botId % 2_147_483_647}) as free`;
      if (row?.free === true) held.set(botId, own);
      // The connection is kept: giving it back would not end the lock, but another user might close it.
      else own.release();
      return held.has(botId);
    },
    letGo: () => {
      for (const own of held.values()) own.release();
      held.clear();
    },
  };
}
