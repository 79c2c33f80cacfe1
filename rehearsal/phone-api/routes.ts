import { Hono } from 'hono';
import { z } from 'zod';
import { fileById } from '../bot-api/media.ts';
import type { CallLog } from '../call-log.ts';
import { type Faults, faultSchema } from '../faults.ts';
import { readJson } from '../json.ts';
import type { RehearsalControl } from '../options.ts';
import type { RateLimits } from '../rate-limits.ts';
import type { Service } from '../service.ts';
import { addAccount, deactivate, requireAccount, setBlocked } from './accounts.ts';
import { fileAnswer } from './file-answer.ts';
import { createClockMover } from './moving-clock.ts';
import { PhoneError } from './phone-error.ts';
import { sendFile } from './sending-files.ts';
import { forgeTap, rawCallback, tap } from './tapping.ts';
import {
  answersOf,
  chatOf,
  commandsOf,
  type Overview,
  toAccountView,
  toChatMessage,
} from './views.ts';
import { deleteMessage, openLink, say } from './writing.ts';

export interface PhoneApiParts {
  readonly service: Service;
  readonly control: RehearsalControl;
  readonly faults: Faults;
  readonly limits: RateLimits;
  readonly log: CallLog;
  /** IANA name of the zone the page tells the time in. */
  readonly timeZone: string | undefined;
  /** Grows with every change. */
  revision(): number;
}

const id = z.int().positive();
const newAccount = z.object({
  id,
  name: z.string().min(1).max(64),
  note: z.string().max(128).optional(),
  languageCode: z.string().min(2).max(35).optional(),
});
const tapped = z.object({ messageId: z.int(), data: z.string() });
const forged = tapped.extend({ fromAccountId: id, chatId: id });

async function body<S extends z.ZodType>(request: Request, schema: S): Promise<z.output<S>> {
  const read = schema.safeParse(readJson(await request.text()));
  if (!read.success) throw new PhoneError(400, z.prettifyError(read.error));
  return read.data;
}

function accountId(raw: string): number {
  const number = Number(raw);
  if (!Number.isSafeInteger(number)) throw new PhoneError(404, 'There is no such phone.');
  return number;
}

function accountRoutes({ service }: PhoneApiParts): Hono {
  const app = new Hono();
  app.get('/', (c) => c.json(service.state.accounts.map(toAccountView)));
  app.post('/', async (c) =>
    c.json(toAccountView(addAccount(service, await body(c.req.raw, newAccount)))),
  );
  app.get('/:id/chat', (c) =>
    c.json(chatOf(service, requireAccount(service, accountId(c.req.param('id'))).id)),
  );
  app.get('/:id/answers', (c) =>
    c.json(answersOf(service, requireAccount(service, accountId(c.req.param('id'))).id)),
  );
  app.get('/:id/commands', (c) =>
    c.json(commandsOf(service, requireAccount(service, accountId(c.req.param('id'))))),
  );
  app.post('/:id/block', (c) => {
    setBlocked(service, accountId(c.req.param('id')), true);
    return c.json({});
  });
  app.post('/:id/unblock', (c) => {
    setBlocked(service, accountId(c.req.param('id')), false);
    return c.json({});
  });
  app.post('/:id/deactivate', (c) => {
    deactivate(service, accountId(c.req.param('id')));
    return c.json({});
  });
  return app;
}

function writingRoutes({ service }: PhoneApiParts): Hono {
  const app = new Hono();
  app.post('/:id/open', async (c) => {
    const { link } = await body(c.req.raw, z.object({ link: z.string() }));
    return c.json(toChatMessage(service, openLink(service, accountId(c.req.param('id')), link)));
  });
  app.post('/:id/say', async (c) => {
    const { text } = await body(c.req.raw, z.object({ text: z.string() }));
    return c.json(toChatMessage(service, say(service, accountId(c.req.param('id')), text)));
  });
  app.post('/:id/files', async (c) => {
    const sent = await sendFile(service, accountId(c.req.param('id')), c.req.raw);
    return c.json(toChatMessage(service, sent));
  });
  app.post('/:id/tap', async (c) => {
    const { messageId, data } = await body(c.req.raw, tapped);
    return c.json({ queryId: tap(service, accountId(c.req.param('id')), messageId, data) });
  });
  app.post('/:id/raw-callback', async (c) => {
    const { messageId, data } = await body(c.req.raw, tapped);
    return c.json({ queryId: rawCallback(service, accountId(c.req.param('id')), messageId, data) });
  });
  app.delete('/:id/messages/:messageId', (c) => {
    deleteMessage(service, accountId(c.req.param('id')), Number(c.req.param('messageId')));
    return c.json({});
  });
  return app;
}

function stageRoutes(parts: PhoneApiParts): Hono {
  const { service, control, faults, limits, log } = parts;
  const moveClock = createClockMover(control);
  const app = new Hono();
  app.get('/overview', (c) => {
    const { username, first_name: name } = service.bot;
    const accounts = service.state.accounts.map(toAccountView);
    const overview: Overview = {
      revision: parts.revision(),
      now: control.now().toISOString(),
      ...(parts.timeZone === undefined ? {} : { timeZone: parts.timeZone }),
      bot: { username, name },
      accounts,
      faults: faults.all(),
      limited: limits.isOn(),
    };
    return c.json(overview);
  });
  app.get('/stops', async (c) => c.json(await control.stops()));
  app.post('/clock', async (c) => {
    const { to } = await body(c.req.raw, z.object({ to: z.iso.datetime() }));
    await moveClock(new Date(to));
    service.changed();
    service.webhook.look();
    return c.json({ now: control.now().toISOString() });
  });
  app.get('/log', (c) => c.json(log.all()));
  app.post('/faults', async (c) => {
    faults.set(await body(c.req.raw, faultSchema));
    return c.json({});
  });
  app.delete('/faults', (c) => {
    faults.clear();
    return c.json({});
  });
  app.post('/limits', async (c) => {
    const { on } = await body(c.req.raw, z.object({ on: z.boolean() }));
    limits.turn(on);
    return c.json({});
  });
  app.post('/forged-taps', async (c) =>
    c.json({ queryId: forgeTap(service, await body(c.req.raw, forged)) }),
  );
  app.post('/updates', async (c) => {
    const update = await body(c.req.raw, z.record(z.string(), z.unknown()));
    return c.json({ updateId: service.updates.inject(update) });
  });
  return app;
}

function fileRoutes({ service }: PhoneApiParts): Hono {
  const app = new Hono();
  app.get('/:fileId', async (c) => {
    const { record } = fileById(service, c.req.param('fileId'));
    return fileAnswer(c.req.raw, record, await service.files.read(record));
  });
  return app;
}

/** The people's side: what phones, tests and scripts call, as JSON. */
export function createPhoneApi(parts: PhoneApiParts): Hono {
  const app = new Hono();
  app.route('/accounts', accountRoutes(parts));
  app.route('/accounts', writingRoutes(parts));
  app.route('/files', fileRoutes(parts));
  app.route('/', stageRoutes(parts));
  return app;
}
