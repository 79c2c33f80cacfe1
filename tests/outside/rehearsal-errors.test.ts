import { InputFile } from 'grammy';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { png } from '../rehearsal/support/png.ts';
import {
  createStage,
  MAYA,
  openBoth,
  refusal,
  type Stage,
  TOBI,
} from '../rehearsal/support/stage.ts';

/**
 * Source: Bot API server source, as of May 2026 (tdlib/telegram-bot-api at 01a3679, and tdlib/td under it): the descriptions
 * in Client.cpp, ClientManager.cpp, HttpConnection.cpp, MessagesManager.cpp, MessageContent.cpp, MessageEntity.cpp,
 * FileManager.cpp and FileLoaderUtils.cpp, word for word. The two codes in capitals are as bot authors reported them.
 */
const BLOCKED = 4103;
const CLOSED = 4104;
const STRANGER = 4105;

let stage: Stage;
let textId: number;
let photoId: number;
let photo: string;
beforeAll(async () => {
  stage = await createStage();
  const { client, bot } = stage;
  await openBoth(stage);
  for (const id of [BLOCKED, CLOSED, STRANGER]) await client.addAccount({ id, name: 'Robin' });
  for (const id of [BLOCKED, CLOSED]) await client.say(id, '/start');
  await client.block(BLOCKED);
  await client.deactivate(CLOSED);
  textId = (await bot.api.sendMessage(MAYA, 'Evening')).message_id;
  const sent = await bot.api.sendPhoto(MAYA, new InputFile(png(9, 9)));
  photoId = sent.message_id;
  photo = sent.photo.at(-1)?.file_id ?? '';
});
afterAll(() => stage.rehearsal.close());

const send = (id: number, text = 'x', parse_mode?: string) =>
  stage.bot.api.raw.sendMessage(JSON.parse(JSON.stringify({ chat_id: id, text, parse_mode })));
const button = (fields: object) =>
  stage.bot.api.raw.sendMessage(
    JSON.parse(
      JSON.stringify({
        chat_id: MAYA,
        text: 'x',
        reply_markup: { inline_keyboard: [[{ text: 'Go', ...fields }]] },
      }),
    ),
  );
const picture = (bytes: Uint8Array) => stage.bot.api.sendPhoto(MAYA, new InputFile(bytes, 'a.png'));

const PEOPLE: readonly [string, () => Promise<unknown>][] = [
  ['403 Forbidden: bot was blocked by the user', () => send(BLOCKED)],
  ['403 Forbidden: user is deactivated', () => send(CLOSED)],
  ['400 Bad Request: chat not found', () => send(STRANGER)],
];

const MESSAGES: readonly [string, () => Promise<unknown>][] = [
  [
    '400 Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
    () => stage.bot.api.editMessageText(MAYA, textId, 'Evening'),
  ],
  [
    '400 Bad Request: query is too old and response timeout expired or query ID is invalid',
    () => stage.bot.api.answerCallbackQuery('7'),
  ],
  [
    '400 Bad Request: message to edit not found',
    () => stage.bot.api.editMessageText(MAYA, 999, 'x'),
  ],
  ['400 Bad Request: message to delete not found', () => stage.bot.api.deleteMessage(MAYA, 999)],
  [
    '400 Bad Request: message to be replied not found',
    () => stage.bot.api.sendMessage(MAYA, 'x', { reply_parameters: { message_id: 999 } }),
  ],
  [
    "400 Bad Request: message can't be edited",
    async () => stage.bot.api.editMessageText(TOBI, (await stage.client.say(TOBI, 'x')).id, 'y'),
  ],
  [
    '400 Bad Request: there is no text in the message to edit',
    () => stage.bot.api.editMessageText(MAYA, photoId, 'x'),
  ],
  [
    '400 Bad Request: there is no caption in the message to edit',
    () => stage.bot.api.editMessageCaption(MAYA, textId, { caption: 'x' }),
  ],
];

const TEXTS: readonly [string, () => Promise<unknown>][] = [
  ['400 Bad Request: message text is empty', () => send(MAYA, ' ')],
  ['400 Bad Request: message is too long', () => send(MAYA, 'x'.repeat(4097))],
  ['400 Bad Request: text is too long', () => send(MAYA, 'x'.repeat(32_769))],
  [
    '400 Bad Request: message caption is too long',
    () => stage.bot.api.sendPhoto(MAYA, photo, { caption: 'x'.repeat(1025) }),
  ],
  [
    `400 Bad Request: can't parse entities: Unsupported start tag "x" at byte offset 2`,
    () => send(MAYA, 'é<x>', 'HTML'),
  ],
  [
    `400 Bad Request: can't parse entities: Unmatched end tag at byte offset 4, expected "</b>", found "</i>"`,
    () => send(MAYA, '<b>x</i>', 'HTML'),
  ],
  [
    `400 Bad Request: can't parse entities: Character '.' is reserved and must be escaped with the preceding '\\'`,
    () => send(MAYA, 'x.', 'MarkdownV2'),
  ],
  ['400 Bad Request: BUTTON_DATA_INVALID', () => button({ callback_data: 'x'.repeat(65) })],
  [
    "400 Bad Request: can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
    () => button({}),
  ],
  [
    '400 Bad Request: reply markup is too long',
    () => button({ url: `https://example.org/${'x'.repeat(11_000)}` }),
  ],
];

const FILES: readonly [string, () => Promise<unknown>][] = [
  [
    '400 Bad Request: wrong remote file identifier specified: Wrong string length',
    () => stage.bot.api.sendPhoto(MAYA, 'abcde'),
  ],
  [
    '400 Bad Request: wrong remote file identifier specified: Wrong character in the string',
    () => stage.bot.api.sendPhoto(MAYA, 'a.b'),
  ],
  [
    "400 Bad Request: wrong remote file identifier specified: can't unserialize it",
    () => stage.bot.api.sendPhoto(MAYA, 'abcd'),
  ],
  [
    "400 Bad Request: can't use file of type Photo as Document",
    () => stage.bot.api.sendDocument(MAYA, photo),
  ],
  ['400 Bad Request: file must be non-empty', () => picture(new Uint8Array())],
  ['400 Bad Request: PHOTO_INVALID_DIMENSIONS', () => picture(png(9000, 1001))],
  [
    '400 Bad Request: file of size 10485761 bytes is too big for a photo; the maximum size is 10485760 bytes',
    () => picture(new Uint8Array(10_485_761)),
  ],
];

describe('the stand-in answers in the words of the service', () => {
  it.each([...PEOPLE, ...MESSAGES, ...TEXTS, ...FILES])('%s', async (words, call) => {
    expect(await refusal(call())).toBe(words);
  });

  it('when 48 hours have passed', async () => {
    stage.clock.pass(172_801_000);
    expect(await refusal(stage.bot.api.deleteMessage(MAYA, textId))).toBe(
      "400 Bad Request: message can't be deleted for everyone",
    );
  });

  it('when the path or the token is wrong, with the status as the code', async () => {
    const { apiRoot, token } = stage.rehearsal;
    const ask = async (path: string): Promise<string> => {
      const answer = await fetch(`${apiRoot}/${path}`);
      const { error_code: code, description } = await answer.json();
      return `${answer.status} ${code} ${description}`;
    };
    expect([
      await ask(`bot${token}/sendPhoto?chat_id=${MAYA}`),
      await ask(`bot${token}/flyAway`),
      await ask('elsewhere'),
      await ask('bot123456:not-this-one/getMe'),
      await ask('botnonsense/getMe'),
    ]).toEqual([
      '400 400 Bad Request: there is no photo in the request',
      '404 404 Not Found: method not found',
      '404 404 Not Found',
      '401 401 Unauthorized',
      '401 401 Unauthorized: invalid token specified',
    ]);
  });
});
