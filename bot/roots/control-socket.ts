import { createReadStream } from 'node:fs';
import { chmod, mkdtemp, readdir, rename, rm, stat } from 'node:fs/promises';
import { createServer, type ServerResponse } from 'node:http';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import {
  type Clock,
  type Log,
  listErasures,
  problemOf,
  type Store,
  writeBackup,
} from '../../db/index.ts';

/** What other programs on this computer may ask of the bot while it has the embedded database to itself. */
export const ASKS = ['backup', 'erasures'] as const;

/** See {@link ASKS}. */
export type Ask = (typeof ASKS)[number];

/** Where a running bot listens, in its data folder. */
export const controlIn = (folder: string) => join(folder, 'control.sock');

/** What the socket's answers are made of. */
export interface ControlDeps {
  readonly folder: string;
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
}

/**
 * Listens on a socket in the data folder, which only the bot's own user can open: HTTP, but no port and no network. Call it
 * with the folder locked. A file system that knows no sockets costs backups while the bot runs, nothing else.
 */
export async function openControl(deps: ControlDeps): Promise<{ close(): Promise<void> }> {
  const { folder, log } = deps;
  const place = controlIn(folder);
  await clear(folder);
  const pending = new Set<Promise<void>>();
  const server = createServer((request, response) => {
    const ask = ASKS.find((each) => request.url === `/${each}` && request.method === 'POST');
    const answering = answer(deps, ask, response).catch((error) => {
      log.warn({ problem: problemOf(error) }, 'control_failed');
      if (response.headersSent) response.destroy();
      else response.writeHead(500).end();
    });
    pending.add(answering);
    answering.finally(() => pending.delete(answering));
  });
  // Made where nobody else can walk in, and moved when it is closed to others: at no moment could another user connect.
  const hidden = await mkdtemp(join(folder, 'control-'));
  const close = async () => {
    server.closeAllConnections();
    await new Promise((done) => server.close(done));
    // The store is closed next: nobody may still be reading from it.
    await Promise.all(pending);
    await rm(place, { force: true });
  };
  try {
    await listen(server, join(hidden, 's'));
    await chmod(join(hidden, 's'), 0o600);
    await rename(join(hidden, 's'), place);
    return { close };
  } catch (error) {
    log.warn({ problem: problemOf(error) }, 'no_control_socket');
    return { close: async () => void server.close() };
  } finally {
    await rm(hidden, { recursive: true, force: true });
  }
}

/** What a process that was killed has left: its socket, and half a backup that nobody may find. */
async function clear(folder: string): Promise<void> {
  const left = (await readdir(folder)).filter((name) =>
    /^(control\.sock|control-.{6}|backup-.{6})$/.test(name),
  );
  for (const name of left) await rm(join(folder, name), { recursive: true, force: true });
}

function listen(server: ReturnType<typeof createServer>, path: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(path, resolve);
  });
}

async function answer(
  { folder, store, clock }: ControlDeps,
  ask: Ask | undefined,
  response: ServerResponse,
): Promise<void> {
  if (!ask) return void response.writeHead(404).end();
  if (ask === 'erasures') return void response.end(JSON.stringify(await listErasures(store)));
  const own = await mkdtemp(join(folder, 'backup-'));
  try {
    const file = join(own, 'backup.gz');
    await writeBackup(store, { file, madeAt: clock.now() });
    response.writeHead(200, { 'content-length': (await stat(file)).size });
    await pipeline(createReadStream(file), response);
  } finally {
    await rm(own, { recursive: true, force: true });
  }
}
