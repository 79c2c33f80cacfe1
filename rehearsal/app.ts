import type { HttpBindings } from '@hono/node-server';
import { type Context, Hono } from 'hono';
import { ApiError, errorEnvelope } from './bot-api/envelope.ts';
import { type BotApiParts, createBotApi } from './bot-api/handler.ts';
import { createPageFiles } from './page-files.ts';
import { PhoneError } from './phone-api/phone-error.ts';
import { createPhoneApi, type PhoneApiParts } from './phone-api/routes.ts';
import { sameOriginOnly } from './same-origin.ts';

interface Env {
  readonly Bindings: HttpBindings;
}

export interface AppParts extends BotApiParts, PhoneApiParts {
  readonly token: string;
  /** Aborted when the rehearsal closes. */
  readonly closing: AbortSignal;
}

function hangUpSignal(c: Context<Env>): AbortSignal {
  const controller = new AbortController();
  c.env.outgoing.once('close', () => controller.abort());
  return controller.signal;
}

function untilAborted(signals: readonly AbortSignal[]): Promise<void> {
  const signal = AbortSignal.any([...signals]);
  if (signal.aborted) return Promise.resolve();
  return new Promise((resolve) => {
    signal.addEventListener('abort', () => resolve(), { once: true });
  });
}

function cut(c: Context<Env>): Response {
  c.env.incoming.socket.destroy();
  // Tells the adapter that nothing is left to write.
  return new Response(null, { headers: { 'x-hono-already-sent': 'true' } });
}

/** What has no number, a colon and a secret is told apart from the token of another bot (ClientManager.cpp). */
function wrongToken(given: string, token: string): ApiError | undefined {
  if (given === `bot${token}`) return undefined;
  const looksRight = /^bot\d+:[\w:-]+$/.test(given) && given.length <= 'bot'.length + 80;
  return new ApiError(401, looksRight ? 'Unauthorized' : 'Unauthorized: invalid token specified');
}

function botRoutes(parts: AppParts): Hono<Env> {
  const app = new Hono<Env>();
  const botApi = createBotApi(parts);
  app.all('/:bot{bot[^/]+}/:method', async (c) => {
    const refused = wrongToken(c.req.param('bot'), parts.token);
    if (refused !== undefined) return errorEnvelope(refused);
    const signal = hangUpSignal(c);
    const outcome = await botApi(c.req.param('method'), c.req.raw, signal);
    if (outcome.kind === 'answer') return outcome.response;
    if (outcome.kind === 'hang') await untilAborted([signal, parts.closing]);
    return cut(c);
  });
  app.get('/file/:bot{bot[^/]+}/:path{.+}', async (c) => {
    const refused = wrongToken(c.req.param('bot'), parts.token);
    if (refused !== undefined) return errorEnvelope(refused);
    const record = parts.service.files.findByPath(c.req.param('path'));
    if (record === undefined) return errorEnvelope(new ApiError(404, 'Not Found'));
    const bytes = await parts.service.files.read(record);
    return c.body(new Uint8Array(bytes), 200, { 'content-type': 'application/octet-stream' });
  });
  return app;
}

/** The whole HTTP surface: the Bot API, the people's side and the page. */
export function createApp(parts: AppParts): Hono<Env> {
  const app = new Hono<Env>();
  app.use(async (c, next) => {
    await next();
    c.res.headers.set('x-content-type-options', 'nosniff');
    c.res.headers.set('x-rehearsal', 'true');
  });
  app.use(sameOriginOnly(parts.service.allowRemote));
  app.route('/', botRoutes(parts));
  app.route('/rehearsal', createPhoneApi(parts));
  app.route('/', createPageFiles());
  app.notFound(() => errorEnvelope(new ApiError(404, 'Not Found')));
  app.onError((error, c) => {
    if (error instanceof PhoneError) return c.json({ error: error.message }, error.status);
    if (error instanceof ApiError) return c.json({ error: error.message }, 404);
    return c.json(
      {
        ok: false,
        error_code: 500,
        description: `Internal Server Error: ${error.message}`,
        error: error.message,
      },
      500,
    );
  });
  return app;
}
