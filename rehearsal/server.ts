import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import { createApp } from './app.ts';
import { createCallLog } from './call-log.ts';
import { createFaults } from './faults.ts';
import { botTag } from './file-ids.ts';
import { createFileStore } from './files.ts';
import type { Rehearsal, RehearsalOptions } from './options.ts';
import { createSaver, loadState, type Saver } from './persistence.ts';
import { requireLoopback, requireRehearsalToken } from './safety.ts';
import type { Service } from './service.ts';
import { firstUpdateId, type State } from './state.ts';
import { createUpdateQueue } from './updates.ts';

export type {
  Gate,
  GateCall,
  Rehearsal,
  RehearsalControl,
  RehearsalOptions,
  Stop,
} from './options.ts';

interface Revision {
  current(): number;
  next(): void;
}

function createRevision(): Revision {
  let value = 0;
  return {
    current: () => value,
    next: () => {
      value += 1;
    },
  };
}

function createService(options: RehearsalOptions, state: State, changed: () => void): Service {
  const { control, token, dataFile } = options;
  const now = (): Date => control.now();
  return {
    state,
    files: createFileStore(
      state,
      dataFile === undefined ? undefined : `${dataFile}.files`,
      changed,
    ),
    updates: createUpdateQueue({ state, now: () => now().getTime(), changed }),
    bot: { id: 0, is_bot: true, first_name: options.botName, username: options.botUsername },
    botTag: botTag(token),
    now,
    changed,
  };
}

async function listen(server: Server, host: string, port: number): Promise<string> {
  server.listen(port, host);
  await once(server, 'listening');
  const address = server.address();
  if (address === null || typeof address === 'string')
    throw new Error('the rehearsal has no network address');
  return `http://${host.includes(':') ? `[${host}]` : host}:${address.port}`;
}

async function shutDown(server: Server, service: Service, saver: Saver): Promise<void> {
  service.updates.close();
  const closed = once(server, 'close');
  server.close();
  server.closeAllConnections();
  await closed;
  await saver.close();
}

/**
 * Starts the stand-in of the chat service with its page.
 * Throws when the token is not a rehearsal token, the host is reachable from other computers
 * without `allowRemote`, the port is taken, or the data file is of another kind.
 */
export async function startRehearsal(options: RehearsalOptions): Promise<Rehearsal> {
  const { host = '127.0.0.1', machineClock = Date.now } = options;
  requireRehearsalToken(options.token);
  requireLoopback(host, options.allowRemote ?? false);
  const state = await loadState(options.dataFile);
  const first = firstUpdateId(machineClock());
  state.nextUpdateId = Math.max(state.nextUpdateId, first);
  state.nextQueryNumber = Math.max(state.nextQueryNumber, first);
  const saver = createSaver(options.dataFile, state);
  const revision = createRevision();
  const closing = new AbortController();
  const service = createService(options, state, () => {
    revision.next();
    saver.changed();
  });
  const app = createApp({
    service,
    control: options.control,
    faults: createFaults(),
    log: createCallLog(),
    gate: options.gate,
    timeZone: options.timeZone,
    machineClock,
    token: options.token,
    closing: closing.signal,
    revision: revision.current,
  });
  const server = createServer(getRequestListener(app.fetch, { overrideGlobalObjects: false }));
  // Idle connections stay open: bot and service share one busy process here, and a bot that reuses a connection at the moment
  // we close it would not know whether its message arrived.
  server.keepAliveTimeout = 0;
  const url = await listen(server, host, options.port);
  let closed: Promise<void> | undefined;
  return {
    url,
    apiRoot: url,
    token: options.token,
    pendingUpdates: () => service.updates.pending(),
    close: () => {
      closing.abort();
      closed ??= shutDown(server, service, saver);
      return closed;
    },
  };
}
