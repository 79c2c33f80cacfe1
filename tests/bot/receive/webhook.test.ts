import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { takeIn } from '../../../bot/receive/take-in.ts';
import { createWebhook, MOST_BYTES } from '../../../bot/receive/webhook.ts';
import { isSecret, SECRET_HEADER, webhookKey } from '../../../bot/receive/webhook-key.ts';
import { type Listening, listen } from '../../../bot/roots/listen.ts';
import { createLog } from '../../../bot/roots/log.ts';
import { type Meter, noMeter } from '../../../db/index.ts';
import { readTable } from '../../support/raw-rows.ts';
import { sharedStore } from '../../support/shared-store.ts';
import { server } from '../../support/stores.ts';
import { strike, unstrike } from '../../support/strike.ts';
import { MORNING } from '../../support/term.ts';

const TOKENS = { north: '9001:made-up-north', south: '9002:made-up-south' };
const KEYS = { north: webhookKey(TOKENS.north), south: webhookKey(TOKENS.south) };
const HOST = '127.0.0.1';

const opened = sharedStore(server);
const logged: string[] = [];
const log = createLog('info', { write: (line) => void logged.push(line) });
const statuses: number[] = [];
const counts = { stored: 0, leftOut: 0 };
const meter: Meter = {
  ...noMeter,
  called: (status) => void statuses.push(status),
  received: ({ stored, leftOut }) => {
    counts.stored += stored;
    counts.leftOut += leftOut;
  },
};
/** Nothing waits unless a test says so. */
let isLate = false;
const pace = {
  now: () => MORNING,
  sleep: (_ms: number, signal?: AbortSignal) =>
    new Promise<void>((resolve) => {
      if (isLate) resolve();
      signal?.addEventListener('abort', () => resolve());
    }),
};
let door: Listening;
let held: Promise<void> | undefined;
let reached = () => {};

beforeAll(async () => {
  const doorOf = (botId: number, key: typeof KEYS.north) => ({
    key,
    take: async (update: Parameters<typeof takeIn>[1][number]) => {
      reached();
      await held;
      await takeIn({ store: opened(), clock: { now: () => MORNING }, botId, meter }, [update]);
    },
  });
  const doors = [doorOf(9001, KEYS.north), doorOf(9002, KEYS.south)];
  door = await listen({ host: HOST, port: 0 }, [createWebhook({ doors, pace, log, meter })]);
});
afterAll(() => door.close());

let lastUpdate = 100;

function update() {
  lastUpdate += 1;
  const from = { id: 7, is_bot: false, first_name: 'Wren' };
  return { update_id: lastUpdate, message: { message_id: 1, date: 1, from, text: 'hello' } };
}

interface Call {
  readonly method?: string;
  readonly path?: string;
  readonly headers?: Record<string, string>;
  readonly body?: BodyInit;
}

/** Calls as the service does, with what a test says otherwise. */
async function call({ method = 'POST', path = KEYS.north.path, headers, body }: Call = {}) {
  const usual = { 'content-type': 'application/json', [SECRET_HEADER]: KEYS.north.secret };
  const content = method === 'POST' ? { body: body ?? JSON.stringify(update()) } : {};
  return fetch(`http://${HOST}:${door.port}${path}`, {
    method,
    headers: headers ?? usual,
    ...content,
    ...(body instanceof ReadableStream ? { duplex: 'half' } : {}),
  } as RequestInit);
}

async function stored(botId: number): Promise<number[]> {
  const rows = await readTable(opened(), 'inbox');
  return rows.filter((row) => row.bot_id === botId).map((row) => Number(row.update_id));
}

describe('the path and the secret of a webhook', () => {
  it('are each bot’s own, the same in every process, and do not hold the token', () => {
    expect(webhookKey(TOKENS.north)).toEqual(KEYS.north);
    const words = Object.values(KEYS).flatMap(({ path, secret }) => [path, secret]);
    expect(new Set(words).size).toBe(4);
    for (const word of words) expect(word).not.toContain('made-up');
    expect(webhookKey('9001:made-up').path.length).toBe(52);
  });

  it('are not guessed by a part of them, nor by nothing', () => {
    const { secret } = KEYS.north;
    expect(isSecret(secret, secret)).toBe(true);
    const wrong = [undefined, '', secret.slice(1), `${secret}x`, KEYS.south.secret, 'guess'];
    expect(wrong.filter((word) => isSecret(word, secret))).toEqual([]);
  });
});

describe('a webhook', () => {
  it('answers 200 once the update is stored, and has it once however often it comes', async () => {
    const body = JSON.stringify(update());
    const before = counts.stored;
    for (const _ of [1, 2]) {
      const answer = await call({ body });
      expect({ status: answer.status, text: await answer.text() }).toEqual({
        status: 200,
        text: '',
      });
      expect(await stored(9001)).toEqual([lastUpdate]);
    }
    expect(counts.stored - before).toBe(1);
    const [row] = await readTable(opened(), 'inbox');
    expect(row).toMatchObject({ actor_id: 7, status: 'pending' });
    expect(new Date(String(row?.received_at))).toEqual(MORNING);
  });

  it('keeps each bot’s updates apart, and takes no secret for another’s path', async () => {
    const headers = { 'content-type': 'application/json', [SECRET_HEADER]: KEYS.south.secret };
    expect((await call({ path: KEYS.south.path, headers })).status).toBe(200);
    expect(await stored(9002)).toEqual([lastUpdate]);
    expect((await call({ path: KEYS.north.path, headers })).status).toBe(401);
  });

  const json = { 'content-type': 'application/json' };
  const known = { ...json, [SECRET_HEADER]: KEYS.north.secret };
  const long = 'x'.repeat(MOST_BYTES);
  it.each<[string, number, Call]>([
    ['another path', 404, { path: '/updates/guess' }],
    ['no path', 404, { path: '/' }],
    ['GET', 405, { method: 'GET', headers: known }],
    ['PUT, whatever the secret', 405, { method: 'PUT', headers: json }],
    ['no secret', 401, { headers: json }],
    ['a wrong secret', 401, { headers: { ...json, [SECRET_HEADER]: 'guess' } }],
    ['a form', 415, { headers: { ...known, 'content-type': 'multipart/form-data' } }],
    ['a wrong secret and too long a body', 401, { headers: json, body: long }],
    ['words', 400, { body: 'hello' }],
    ['JSON that is no update', 400, { body: '{"message":{}}' }],
    ['a number below nought', 400, { body: '{"update_id":-1}' }],
    ['a list', 400, { body: '[{"update_id":1}]' }],
  ])('tells a stranger no more than a status: %s is %i', async (_name, status, wrong) => {
    const before = await stored(9001);
    const answer = await call(wrong);
    expect({ status: answer.status, text: await answer.text() }).toEqual({ status, text: '' });
    expect(await stored(9001)).toEqual(before);
    if (status === 405) expect(answer.headers.get('allow')).toBe('POST');
  });

  it('takes a body up to its limit, and refuses a longer one, also when nobody said how long', async () => {
    const fill = (bytes: number) => {
      const bare = { ...update(), fill: '' };
      return JSON.stringify({ ...bare, fill: 'x'.repeat(bytes - JSON.stringify(bare).length) });
    };
    const fits = fill(MOST_BYTES);
    expect(fits).toHaveLength(MOST_BYTES);
    expect((await call({ body: fits })).status).toBe(200);
    const tooLong = fill(MOST_BYTES + 1);
    expect((await call({ body: tooLong })).status).toBe(413);
    expect((await call({ body: new Blob([tooLong]).stream() })).status).toBe(413);
    expect(await stored(9001)).not.toContain(lastUpdate);
  });
});

describe('a webhook in trouble', () => {
  it('answers 503 while the update cannot be stored, so that it comes again', async () => {
    await strike(opened(), 'inbox', 1);
    const body = JSON.stringify(update());
    logged.length = 0;
    expect((await call({ body })).status).toBe(503);
    expect(await stored(9001)).not.toContain(lastUpdate);
    const line: unknown = JSON.parse(logged[0] ?? '');
    expect(line).toMatchObject({
      msg: 'update_not_stored',
      request: expect.stringMatching(/^http [\da-f-]{36}$/),
    });
    expect(logged.join('')).not.toContain('Wren');
    expect((await call({ body })).status).toBe(200);
    expect(await stored(9001)).toContain(lastUpdate);
    await unstrike(opened());
  });

  it('answers 503 when storing takes too long, and the update may be stored all the same', async () => {
    let release = () => {};
    held = new Promise((resolve) => {
      release = resolve;
    });
    isLate = true;
    expect((await call()).status).toBe(503);
    isLate = false;
    release();
    held = undefined;
    // The service brings it again; it is there once.
    lastUpdate -= 1;
    expect((await call()).status).toBe(200);
    expect((await stored(9001)).filter((id) => id === lastUpdate)).toHaveLength(1);
  });
});

describe('a webhook at its end', () => {
  it('has counted its answers', () => {
    expect(new Set(statuses)).toEqual(new Set([200, 400, 401, 405, 413, 415, 503]));
  });

  it('ends by answering what is under way, and is not there any more', async () => {
    let release = () => {};
    held = new Promise((resolve) => {
      release = resolve;
    });
    const isReached = new Promise<void>((resolve) => {
      reached = resolve;
    });
    const underWay = call();
    await isReached;
    const closed = door.close();
    release();
    const answer = await underWay;
    await closed;
    expect(answer.status).toBe(200);
    expect(await stored(9001)).toContain(lastUpdate);
    await expect(call()).rejects.toThrow('fetch failed');
  });
});
