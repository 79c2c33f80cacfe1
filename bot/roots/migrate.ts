import { join } from 'node:path';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { openStore } from './open-store.ts';

/** Brings the database up to this release: our tables and the job engine's, in one step. Every start does the same by itself. */
async function main(): Promise<void> {
  const config = readConfig(process.env);
  const folder = { ...config, dataDir: join(config.dataDir, config.mode) };
  const store = await openStore(folder, createLog(config.logLevel));
  await store.close();
  process.stdout.write('The database is up to date.\n');
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
});
