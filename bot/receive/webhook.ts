import { randomUUID } from 'node:crypto';
import type { Update } from 'grammy/types';
import { type Context, Hono } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { z } from 'zod';
import { inRequest, type Log, type Meter, type Pace, problemOf } from '../../db/index.ts';
import { isSecret, SECRET_HEADER, type WebhookKey } from './webhook-key.ts';

/** An update is a message of at most 4,096 characters with what it answers; this is many times that. Our choice. */
export const MOST_BYTES = 1024 * 1024;
/** The service waits a minute (tdlib/telegram-bot-api, WebhookActor.cpp). Far below that it hears that it has to come again. */
const LONGEST_STORING_MS = 10_000;

/** Where one bot's updates come in. `take` resolves once they are stored. */
export interface WebhookDoor {
  readonly key: WebhookKey;
  take(update: Update): Promise<void>;
}

/** What a webhook needs. */
export interface WebhookDeps {
  readonly doors: readonly WebhookDoor[];
  readonly pace: Pace;
  readonly log: Log;
  readonly meter?: Meter | undefined;
}

/** What has to be right about a body before it is stored; the rest is looked at when it is handled. */
const update = z.looseObject({ update_id: z.int().nonnegative() });

type Answer = 200 | 400 | 401 | 405 | 413 | 415 | 503;

/**
 * The door through which the chat service brings updates. It answers 200 once an update is stored and never before, so that none
 * is lost, and 503 while it cannot be stored, so that it comes again. Everybody else hears no more than a status: 405 for any
 * other method, 401 without the secret, 415 for what is not JSON, 413 for a body of more than {@link MOST_BYTES}, 400 for one
 * that is no update. No answer carries a call.
 */
export function createWebhook(deps: WebhookDeps): Hono {
  const app = new Hono();
  const end = (status: Answer, headers: Record<string, string> = {}) => {
    deps.meter?.called(status);
    return new Response(null, { status, headers });
  };
  for (const door of deps.doors) {
    app.all(
      door.key.path,
      async (context, next) => {
        const refused = refusal(context, door);
        if (refused === 405) return end(405, { allow: 'POST' });
        return refused ? end(refused) : next();
      },
      // What is too long is not read to its end: the connection is of no more use.
      bodyLimit({ maxSize: MOST_BYTES, onError: () => end(413, { connection: 'close' }) }),
      async (context) =>
        inRequest({ id: `http ${randomUUID()}` }, async () =>
          end(await takeIn(deps, door, context)),
        ),
    );
  }
  return app;
}

/** Why a call is not listened to; null when it is. In this order: who does not know the secret learns nothing else. */
function refusal({ req }: Context, { key }: WebhookDoor): 401 | 405 | 415 | null {
  if (req.method !== 'POST') return 405;
  if (!isSecret(req.header(SECRET_HEADER), key.secret)) return 401;
  return /^application\/json\b/i.test(req.header('content-type') ?? '') ? null : 415;
}

async function takeIn(deps: WebhookDeps, door: WebhookDoor, { req }: Context): Promise<Answer> {
  const { pace, log } = deps;
  const read = update.safeParse(await req.json().catch(() => undefined));
  if (!read.success) {
    log.warn({}, 'webhook_body_refused');
    return 400;
  }
  const waiting = new AbortController();
  try {
    const stored = await Promise.race([
      // Stored as it came from the service; what it holds is checked when it is handled.
      door.take(read.data as Update).then(() => true),
      pace.sleep(LONGEST_STORING_MS, waiting.signal).then(() => false),
    ]);
    if (stored) return 200;
    log.warn({ problem: 'too_late' }, 'update_not_stored');
  } catch (error) {
    log.warn({ problem: problemOf(error) }, 'update_not_stored');
  } finally {
    waiting.abort();
  }
  return 503;
}
