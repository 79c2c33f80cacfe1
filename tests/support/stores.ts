import { randomUUID } from 'node:crypto';
import postgres from 'postgres';
import { inject } from 'vitest';
import { type OpenStore, openEmbedded, openServer } from '../../db/index.ts';
import { TEMPLATE } from './global-postgres.ts';
import { runSql, TABLES } from './raw-rows.ts';
import { unstrike } from './strike.ts';

/** A back end to run the same test on. */
export interface Backend {
  readonly name: string;
  open(): Promise<OpenStore>;
}

const ignoreEngineNoise = () => {};

/** A database with nothing in it, in this process's memory. */
export const embedded = kept('the embedded database', () =>
  openEmbedded(undefined, ignoreEngineNoise),
);

/** A database with nothing in it, on the real server. */
export const server = kept('a Postgres server', async () =>
  openServer(await createDatabase(), ignoreEngineNoise),
);

/** Both back ends, for `describe.each`. */
export const backends: readonly Backend[] = [embedded, server];

/**
 * For suites that are dear and whose statements the other suites and every rehearsal run on the embedded database anyway: the
 * server alone, or both when BACKENDS=both says so, as CI does.
 */
export const dearBackends: readonly Backend[] =
  // biome-ignore lint/style/noProcessEnv: the run's own switch, like FUZZ
  process.env.BACKENDS === 'both' ? backends : [server];

/**
 * Opens stores that are kept when a test closes them, and emptied for the next test of the process: to make a database costs
 * more than most tests. They end with the process. One whose job engine works by itself is closed: its senders end with it
 * only, and would take the next test's messages.
 */
function kept(name: string, make: () => Promise<OpenStore>): Backend {
  const idle: OpenStore[] = [];
  return {
    name,
    open: async () => {
      const store = (await emptied(idle.pop())) ?? (await make());
      let works = false;
      const work: OpenStore['queue']['work'] = (botId, handler, lanes) => {
        works = true;
        return store.queue.work(botId, handler, lanes);
      };
      return {
        ...store,
        queue: { ...store.queue, work },
        close: async () => (works ? store.close() : void idle.push(store)),
      };
    },
  };
}

/** Nothing comes back when a test has left the store in a shape that cannot be emptied. */
async function emptied(store: OpenStore | undefined): Promise<OpenStore | undefined> {
  if (!store) return undefined;
  try {
    await unstrike(store);
    const tables = [...TABLES.map((table) => `"${table}"`), 'pgboss.job'];
    await runSql(store, `truncate ${tables.join(', ')} restart identity`);
    return store;
  } catch {
    await store.close();
    return undefined;
  }
}

/** Copies the migrated template to a new database and returns its address. */
export async function createDatabase(): Promise<string> {
  return createFrom(TEMPLATE);
}

/** Creates a database that nobody has migrated yet and returns its address. */
export async function createEmptyDatabase(): Promise<string> {
  return createFrom('template0');
}

async function createFrom(template: string): Promise<string> {
  const base = inject('postgresUrl');
  const name = `test_${randomUUID().replaceAll('-', '')}`;
  const admin = postgres(`${base}/postgres`, { max: 1, onnotice: () => {} });
  await admin.unsafe(`create database ${name} template ${template}`);
  await admin.end();
  return `${base}/${name}`;
}
