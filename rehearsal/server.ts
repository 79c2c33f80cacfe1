import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import { setTimeout } from 'node:timers/promises';
import { getRequestListener } from '@hono/node-server';
import { createApp } from './app.ts';
import { createCallLog } from './call-log.ts';
import { createService } from './create-service.ts';
import { createFaults } from './faults.ts';
import type { Rehearsal, RehearsalOptions } from './options.ts';
import { createSaver, loadState, type Saver } from './persistence.ts';
import { createRateLimits } from './rate-limits.ts';
import { requireLoopback, requireNoRealToken, requireRehearsalToken } from './safety.ts';
import type { Service } from './service.ts';
import { firstUpdateId } from './state.ts';

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

async function listen(server: Server, host: string, port: number): Promise<string> {
  server.listen(port, host);
  await once(server, 'listening');
  const address = server.address();
  if (address === null || typeof address === 'string')
    throw new Error('the rehearsal has no network address');
  return `http://${host.includes(':') ? `[${host}]` : host}:${address.port}`;
}

async function shutDown(server: Server, service: Service, saver: Saver): Promise<void> {
  service.webhook.close();
  service.updates.close();
  const closed = once(server, 'close');
  server.close();
  server.closeAllConnections();
  await closed;
  await saver.close();
}

/** Does not keep a process alive that has nothing else to do. */
async function reallySleep(ms: number): Promise<void> {
  await setTimeout(ms, undefined, { ref: false });
}

/**
 * Starts the stand-in of the chat service with its page.
 * Throws when the token is not a rehearsal token, `settings` hold a real one, the host is reachable from other computers
 * without `allowRemote`, the port is taken, or the data file is of another kind.
 */
export async function startRehearsal(options: RehearsalOptions): Promise<Rehearsal> {
  const { host = '127.0.0.1', machineClock = Date.now, machineSleep = reallySleep } = options;
  requireRehearsalToken(options.token);
  requireNoRealToken(options.settings ?? {});
  requireLoopback(host, options.allowRemote ?? false);
  const state = await loadState(options.dataFile);
  const first = firstUpdateId(machineClock());
  state.nextUpdateId = Math.max(state.nextUpdateId, first);
  state.nextQueryNumber = Math.max(state.nextQueryNumber, first);
  const saver = createSaver(options.dataFile, state);
  const revision = createRevision();
  const closing = new AbortController();
  const faults = createFaults();
  const service = createService({ ...options, machineSleep }, state, faults, () => {
    revision.next();
    saver.changed();
  });
  const pace = { now: machineClock, sleep: machineSleep };
  const app = createApp({
    service,
    control: options.control,
    faults,
    limits: createRateLimits(pace, options.limited ?? false),
    // The page shows the log too, and a call that was refused changes nothing else.
    log: createCallLog((call) => {
      revision.next();
      options.logged?.(call);
    }),
    gate: options.gate,
    timeZone: options.timeZone,
    machineClock,
    machineSleep,
    token: options.token,
    closing: closing.signal,
    revision: revision.current,
  });
  const server = createServer(getRequestListener(app.fetch, { overrideGlobalObjects: false }));
  // Idle connections stay open: bot and service share one busy process here, and a bot that reuses a connection at the moment
  // we close it would not know whether its message arrived.
  server.keepAliveTimeout = 0;
  const url = await listen(server, host, options.port);
  service.webhook.look();
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
