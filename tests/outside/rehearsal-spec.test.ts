import { existsSync, readFileSync } from 'node:fs';
import { InputFile } from 'grammy';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { inputMedia, schemas } from '../../rehearsal/bot-api/schemas.ts';
import { mp4 } from '../rehearsal/support/mp4.ts';
import { png } from '../rehearsal/support/png.ts';
import { createStage, MAYA, openBoth, START, type Stage } from '../rehearsal/support/stage.ts';

// Source: api.json of PaulSonOfLars/telegram-bot-api-spec, commit 160fd99 (MIT), which is the text of
// https://core.telegram.org/bots/api for Bot API 10.1.
const SPEC_FILE = '../shared/facts/botapi-spec.json';
const IS_HERE = existsSync(SPEC_FILE);

const field = z.object({ name: z.string(), types: z.array(z.string()), required: z.boolean() });
const entry = z.object({
  fields: z.array(field).optional(),
  subtypes: z.array(z.string()).optional(),
});
const specSchema = z.object({
  methods: z.record(z.string(), entry),
  types: z.record(z.string(), entry),
});

const spec = IS_HERE
  ? specSchema.parse(JSON.parse(readFileSync(SPEC_FILE, 'utf8')))
  : { methods: {}, types: {} };

/** What is wrong with a value against a type of the published description; empty when nothing is. */
function complaints(value: unknown, type: string, path: string): string[] {
  if (type.startsWith('Array of ')) {
    if (!Array.isArray(value)) return [`${path} is no array`];
    return value.flatMap((item, i) =>
      complaints(item, type.slice('Array of '.length), `${path}[${i}]`),
    );
  }
  if (type === 'Integer') return Number.isInteger(value) ? [] : [`${path} is no integer`];
  if (type === 'String') return typeof value === 'string' ? [] : [`${path} is no string`];
  if (type === 'Boolean') return typeof value === 'boolean' ? [] : [`${path} is no boolean`];
  const described = spec.types[type];
  if (described === undefined) return [`${path}: no type ${type}`];
  if (described.subtypes !== undefined) {
    const tries = described.subtypes.map((subtype) => complaints(value, subtype, path));
    return tries.some((list) => list.length === 0) ? [] : (tries[0] ?? []);
  }
  if (typeof value !== 'object' || value === null) return [`${path} is no object`];
  return objectComplaints(value, described.fields ?? [], path);
}

function objectComplaints(
  value: object,
  fields: readonly z.output<typeof field>[],
  path: string,
): string[] {
  const known = new Map(fields.map((it) => [it.name, it]));
  const unknown = Object.keys(value)
    .filter((key) => !known.has(key))
    .map((key) => `${path}.${key} is unknown`);
  const missing = fields
    .filter(({ name, required }) => required && !(name in value))
    .map(({ name }) => `${path}.${name} is missing`);
  const wrong = Object.entries(value).flatMap(([key, inner]) => {
    const types = known.get(key)?.types ?? [];
    const tries = types.map((type) => complaints(inner, type, `${path}.${key}`));
    return tries.some((list) => list.length === 0) ? [] : (tries[0] ?? []);
  });
  return [...unknown, ...missing, ...wrong];
}

if (!IS_HERE) {
  describe('the published description of the Bot API', () => {
    it.skip(`is not at ${SPEC_FILE}; put the file there to check against it`, () => {});
  });
}

describe.runIf(IS_HERE)('parameters agree with the published description', () => {
  it.each(Object.entries(schemas))('%s', (name, schema) => {
    const published = new Map(
      (spec.methods[name]?.fields ?? []).map((it) => [it.name, it.required]),
    );
    const ours = Object.entries(schema.shape).map(([key, value]) => [
      key,
      !value.safeParse(undefined).success,
    ]);
    expect(spec.methods[name]).toBeDefined();
    expect(ours).toEqual(ours.map(([key]) => [key, published.get(String(key))]));
    const required = [...published].filter(([, isRequired]) => isRequired).map(([key]) => key);
    expect(Object.keys(schema.shape)).toEqual(expect.arrayContaining(required));
  });
});

describe.runIf(IS_HERE)('the parts of a new file in an edited message', () => {
  it('are those published for a video, the most there are', () => {
    const published = (spec.types.InputMediaVideo?.fields ?? []).map(({ name }) => name);
    expect(published).toEqual(expect.arrayContaining(Object.keys(inputMedia.shape)));
    const photo = (spec.types.InputMediaPhoto?.fields ?? []).map(({ name }) => name);
    expect(Object.keys(inputMedia.shape)).toEqual(expect.arrayContaining(photo));
  });
});

describe.runIf(IS_HERE)('answers have the published shape', () => {
  let stage: Stage;
  beforeAll(async () => {
    stage = await createStage();
    await openBoth(stage);
  });
  afterAll(() => stage.rehearsal.close());

  it('of the bot itself', async () => {
    expect(complaints(await stage.bot.api.getMe(), 'User', 'getMe')).toEqual([]);
    expect(
      complaints(await stage.bot.api.getWebhookInfo(), 'WebhookInfo', 'getWebhookInfo'),
    ).toEqual([]);
  });

  it('of sent and edited messages', async () => {
    const { api } = stage.bot;
    const text = await api.sendMessage(MAYA, '<b>Evening</b>', {
      parse_mode: 'HTML',
      reply_markup: START,
    });
    const photo = await api.sendPhoto(MAYA, new InputFile(png(400, 300)), {
      caption: '<i>Card</i>',
      parse_mode: 'HTML',
    });
    const document = await api.sendDocument(MAYA, new InputFile(Buffer.from('a'), 'a.csv'));
    const video = await api.sendVideo(MAYA, new InputFile(mp4(), 'a.mp4'), { caption: 'Part 1' });
    const edited = await api.editMessageText(MAYA, text.message_id, 'Other');
    const media = { type: 'video', media: video.video.file_id } as const;
    const replaced = await api.editMessageMedia(MAYA, photo.message_id, media);
    const messages = [text, photo, document, video, edited, replaced];
    expect(complaints(video.video, 'Video', 'video')).toEqual([]);
    expect(messages.flatMap((message) => complaints(message, 'Message', 'message'))).toEqual([]);
  });

  it('of files', async () => {
    const sent = await stage.bot.api.sendDocument(MAYA, new InputFile(Buffer.from('a'), 'a.csv'));
    expect(
      complaints(await stage.bot.api.getFile(sent.document.file_id), 'File', 'getFile'),
    ).toEqual([]);
  });

  it('of updates of every kind', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, 'x', { reply_markup: START });
    await stage.client.tap(MAYA, sent.message_id, 'v1:start');
    await stage.client.say(MAYA, 'hello');
    await stage.client.sendFile(MAYA, {
      kind: 'voice',
      name: 'a.ogg',
      bytes: Buffer.from('OggS'),
    });
    await stage.client.block(MAYA);
    const updates = await stage.bot.api.getUpdates();
    await stage.client.unblock(MAYA);
    expect(updates.map((update) => Object.keys(update)[1])).toEqual([
      'callback_query',
      'message',
      'message',
      'my_chat_member',
    ]);
    expect(updates.flatMap((update) => complaints(update, 'Update', 'update'))).toEqual([]);
  });

  it('and the check itself finds a missing, an unknown and a mistyped field', () => {
    const found = complaints({ file_id: 7, colour: 'red' }, 'File', 'file');
    expect(found).toEqual([
      'file.colour is unknown',
      'file.file_unique_id is missing',
      'file.file_id is no string',
    ]);
  });
});
