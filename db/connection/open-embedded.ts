import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { drizzle } from 'drizzle-orm/pglite';
import { migrate } from 'drizzle-orm/pglite/migrator';
import { fromPglite, PgBoss } from 'pg-boss';
import * as schema from '../schema/index.ts';
import { createEmbedded } from './create-embedded.ts';
import type { OpenStore } from './db.ts';
import { createDeliveryQueue } from './delivery-queue.ts';
import { MIGRATIONS_FOLDER } from './migrations-folder.ts';
import { channelOf } from './peers.ts';

/**
 * Opens the embedded database (Postgres compiled into this process) and applies migrations.
 *
 * `folder` holds the data; without it everything lives in memory and is gone on close. One process at a time may open
 * a folder. `onEngineError` hears about trouble in the job engine's background work.
 */
export async function openEmbedded(
  folder: string | undefined,
  onEngineError: (error: Error) => void,
): Promise<OpenStore> {
  if (folder) await mkdir(dirname(folder), { recursive: true });
  const pglite = await createEmbedded(folder);
  const db = drizzle(pglite, { schema });
  await migrate(db, { migrationsFolder: MIGRATIONS_FOLDER });
  const boss = new PgBoss({ backend: 'pglite', db: fromPglite(pglite), useListenNotify: true });
  boss.on('error', onEngineError);
  await boss.start();
  const queue = await createDeliveryQueue(boss);
  return {
    db,
    queue,
    // One process at a time opens the folder.
    peers: {
      listen: async (topic, onNews) => {
        await pglite.listen(channelOf(topic), onNews);
        onNews('');
      },
      join: (_work, alone) => alone(),
      leads: async () => true,
    },
    close: async () => {
      await boss.stop({ graceful: true, timeout: 10_000 });
      await pglite.close();
    },
  };
}
