import { join } from 'node:path';
import { rebuildAll } from '../../db/index.ts';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { openStore } from './open-store.ts';

/** Writes everything that is derived from marks anew. With the embedded database, stop the bot first. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  const folder = { ...config, dataDir: join(config.dataDir, config.mode) };
  const store = await openStore(folder, createLog(config.logLevel));
  try {
    const children = await rebuildAll(store);
    process.stdout.write(
      `Rebuilt the scores and the memory of ${children} children from their marks.\n`,
    );
  } finally {
    await store.close();
  }
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
});
