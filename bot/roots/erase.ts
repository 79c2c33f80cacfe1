import { join } from 'node:path';
import { eraseChild } from '../../db/index.ts';
import { erasedByOperator } from '../texts/rights.ts';
import { machineClock } from './clocks.ts';
import { readConfig } from './config.ts';
import { createLog } from './log.ts';
import { openStore } from './open-store.ts';

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i;

/** Erases one child at once and for good, by its id. With the embedded database, stop the bot first. */
async function main(): Promise<void> {
  const childId = process.argv[2] ?? '';
  if (!UUID.test(childId)) {
    throw new Error('Give the child’s id, 36 characters: npm run erase -- <child id>');
  }
  const config = readConfig(process.env);
  const folder = { ...config, dataDir: join(config.dataDir, config.mode) };
  const store = await openStore(folder, createLog(config.logLevel));
  try {
    const done = await eraseChild(store, { childId, now: machineClock.now() });
    process.stdout.write(`${erasedByOperator(done, childId)}\n`);
  } finally {
    await store.close();
  }
}

main().catch((error) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(2);
});
