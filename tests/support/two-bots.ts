import { once } from 'node:events';
import { createServer, type IncomingMessage, request, type Server } from 'node:http';
import { createApp } from '../../bot/roots/create-app.ts';
import type { OpenStore } from '../../db/index.ts';
import { RehearsalClient } from '../../rehearsal/client.ts';
import { type Rehearsal, startRehearsal } from '../../rehearsal/server.ts';
import { server } from './stores.ts';
import { impatientPace, type World } from './world.ts';

/** Two bots with numbers of their own, as real ones have; the stand-in's own number is always 0. */
export const NORTH = 9001;
export const SOUTH = 9002;

/** One app that runs two bots, each with its own chat service; the worlds share the app, the store and the clock. */
export interface TwoBots {
  readonly store: OpenStore;
  readonly north: World;
  readonly south: World;
  goTo(instant: string): Promise<void>;
  close(): Promise<void>;
}

/** Opens both at an instant. */
export async function openTwoBots(start: string): Promise<TwoBots> {
  let instant = new Date(start);
  const now = () => instant;
  const moveTo = async (target: Date) => {
    instant = target;
  };
  const services = new Map<number, Rehearsal>();
  for (const botId of [NORTH, SOUTH]) {
    const names = { botUsername: `bot_${botId}`, botName: 'Suppersums' };
    const control = { now, moveTo, stops: async () => [] };
    services.set(
      botId,
      await startRehearsal({ port: 0, token: `0:rehearsal-${botId}`, ...names, control }),
    );
  }
  const { root, front } = await openFront(services);
  const store = await server.open();
  const pace = impatientPace();
  const app = await createApp({
    ...{ store, clock: { now }, pace, apiRoot: root },
    log: { info: () => {}, warn: () => {}, error: () => {} },
    tokens: [NORTH, SOUTH].map((botId) => `${botId}:made-up`),
  });
  const goTo = async (target: string) => {
    const before = instant;
    instant = new Date(target);
    await pace.sleep(Math.max(0, instant.getTime() - before.getTime()));
    await app.engine.tick();
    await app.settle();
  };
  const close = async () => {
    front.close();
    front.closeAllConnections();
    for (const service of services.values()) await service.close();
    await store.close();
  };
  const worldOf = (botId: number): World => {
    const rehearsal = services.get(botId);
    if (!rehearsal) throw new Error(`bot ${botId} is none of these`);
    const linkOf = (payload: string) => `https://t.me/bot_${botId}?start=${payload}`;
    return {
      ...{ store, app: { ...app, linkOf }, rehearsal, logged: [], now, goTo, close },
      ...{
        client: new RehearsalClient(rehearsal.url),
        settle: app.settle,
        restart: async () => app,
      },
    };
  };
  return { store, north: worldOf(NORTH), south: worldOf(SOUTH), goTo, close };
}

/** One address before both services, as the real one is: the token in a call's path says which bot it is. */
async function openFront(
  services: ReadonlyMap<number, Rehearsal>,
): Promise<{ root: string; front: Server }> {
  const front = createServer((call, answer) => {
    const [, id = '', rest = ''] = /^\/bot(\d+):made-up(\/.*)$/.exec(call.url ?? '') ?? [];
    const service = services.get(Number(id));
    if (!service) {
      answer.writeHead(401).end('{"ok":false,"error_code":401,"description":"Unauthorized"}');
      return;
    }
    const url = `${service.apiRoot}/bot${service.token}${rest}`;
    const options = { method: call.method ?? 'POST', headers: call.headers };
    const onward = request(url, options, async (reply) => {
      answer.writeHead(reply.statusCode ?? 502, { 'content-type': 'application/json' });
      const text = await textOf(reply);
      answer.end(rest === '/getMe' ? text.replace('"id":0', `"id":${id}`) : text);
    });
    onward.on('error', () => answer.destroy());
    call.pipe(onward);
  });
  front.listen(0, '127.0.0.1');
  await once(front, 'listening');
  const address = front.address();
  if (typeof address !== 'object' || !address) throw new Error('the front has no address');
  return { root: `http://127.0.0.1:${address.port}`, front };
}

async function textOf(reply: IncomingMessage): Promise<string> {
  let text = '';
  for await (const chunk of reply.setEncoding('utf8')) text += String(chunk);
  return text;
}
