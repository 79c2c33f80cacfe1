import { join } from 'node:path';
import { type Log, type OpenStore, openEmbedded, openServer } from '../../db/index.ts';
import { lockFolder } from './folder-lock.ts';

/** The database cannot be used; the message is one line that says what to do. */
export class DatabaseUnavailable extends Error {}

/**
 * Opens the server named by DATABASE_URL, or the embedded database in the data folder. `tidy` may put the folder in order
 * before the embedded database is opened, while nobody else can be using it.
 */
export async function openStore(
  config: { databaseUrl: string | undefined; dataDir: string },
  log: Log,
  tidy: (folder: string) => Promise<void> = async () => {},
): Promise<OpenStore> {
  const onEngineError = (error: Error) => log.error({ problem: error.name }, 'engine_error');
  if (config.databaseUrl) return openServerOrSay(config.databaseUrl, onEngineError);
  const release = await lockFolder(config.dataDir, process.pid);
  try {
    await tidy(config.dataDir);
    const store = await openEmbedded(join(config.dataDir, 'database'), onEngineError);
    const close = async () => {
      await store.close();
      await release();
    };
    return { ...store, close };
  } catch (error) {
    await release();
    throw error;
  }
}

async function openServerOrSay(
  url: string,
  onEngineError: (error: Error) => void,
): Promise<OpenStore> {
  try {
    return await openServer(url, onEngineError);
  } catch (error) {
    const code =
      error instanceof Error && 'code' in error ? String(error.code) : 'no further detail';
    throw new DatabaseUnavailable(
      `Cannot use the database at ${withoutPassword(url)} (${code}). Start it or mend DATABASE_URL; without DATABASE_URL the embedded database is used.`,
    );
  }
}

/** Where the database is, without who logs in. */
export function withoutPassword(url: string): string {
  const { host, pathname } = new URL(url);
  return `${host}${pathname}`;
}
