import { access } from 'node:fs/promises';
import { join } from 'node:path';
import type { Log, OpenStore } from '../../db/index.ts';
import type { StorePlace } from '../roots/backups.ts';
import { type Config, readConfig } from '../roots/config.ts';
import { OperatorError } from '../roots/failure.ts';
import { createLog } from '../roots/log.ts';
import type { Cli } from './cli.ts';

/** The settings, and where the database of this bot or rehearsal is. */
export interface Site {
  readonly config: Config;
  readonly place: StorePlace;
  readonly log: Log;
}

/** Reads the settings. @throws {ConfigError} */
export function siteOf({ environment }: Cli): Site {
  const config = readConfig(environment);
  const { databaseUrl, dataDir, mode, logLevel } = config;
  const log = createLog(environment.LOG_LEVEL ? logLevel : 'warn');
  return { config, place: { databaseUrl, dataDir: join(dataDir, mode) }, log };
}

/**
 * Opens the database, works with it, and closes it. `fresh` allows that there is none yet; otherwise that is said, because an
 * empty one would be made where it was not meant.
 */
export async function withStore<T>(
  cli: Cli,
  work: (store: OpenStore, site: Site) => Promise<T>,
  { fresh = false } = {},
): Promise<T> {
  const site = siteOf(cli);
  if (!fresh && !site.place.databaseUrl) await mustHaveDatabase(site.place.dataDir);
  const store = await cli.open(site.place, site.log);
  try {
    return await work(store, site);
  } finally {
    await store.close();
  }
}

async function mustHaveDatabase(folder: string): Promise<void> {
  if (await hasDatabase(folder)) return;
  throw new OperatorError(
    `There is no database in ${folder}. Set DATA_DIR to the bot’s folder or DATABASE_URL to its server, and BOT_TOKEN as the bot has it: without it, it is the rehearsal’s.`,
  );
}

/** Whether an embedded database was made in a folder. */
export async function hasDatabase(folder: string): Promise<boolean> {
  try {
    await access(join(folder, 'database'));
    return true;
  } catch {
    return false;
  }
}
