import { InputFile } from 'grammy';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, refusal, START, type Stage, TOBI } from './support/stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterEach(() => stage.rehearsal.close());

describe('sendMessage', () => {
  it('shows the text with its buttons on the phone', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, 'Tuesday, about 6 minutes', {
      reply_markup: START,
    });
    const shown = (await stage.client.chat(MAYA)).at(-1);
    expect(shown).toMatchObject({
      id: sent.message_id,
      from: 'bot',
      text: 'Tuesday, about 6 minutes',
      edits: 0,
    });
    expect(shown?.buttons).toEqual([[{ text: 'Start', data: 'v1:start' }]]);
  });

  it('dates the message by the virtual clock', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, 'Hello');
    expect(sent.date).toBe(stage.clock.now().getTime() / 1000);
  });

  it('keeps given entities and trims white space around them', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, '  Wren  ', {
      entities: [{ type: 'bold', offset: 2, length: 4 }],
    });
    expect(sent.text).toBe('Wren');
    expect(sent.entities).toEqual([{ type: 'bold', offset: 0, length: 4 }]);
  });

  it('reads HTML', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, '<b>6</b> &lt; 7', { parse_mode: 'HTML' });
    expect(sent).toMatchObject({
      text: '6 < 7',
      entities: [{ type: 'bold', offset: 0, length: 1 }],
    });
  });

  it('reads MarkdownV2, and says that it does not read the old kind', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, '*6*', { parse_mode: 'MarkdownV2' });
    expect(sent).toMatchObject({ text: '6', entities: [{ type: 'bold', offset: 0, length: 1 }] });
    expect(await refusal(stage.bot.api.sendMessage(MAYA, '*x*', { parse_mode: 'Markdown' }))).toBe(
      '400 Bad Request: the rehearsal reads HTML, MarkdownV2 and entities, not old Markdown',
    );
  });
});

describe('sendMessage is refused', () => {
  it('when nobody there has pressed start', async () => {
    await stage.client.addAccount({ id: 999, name: 'Pia' });
    expect(await refusal(stage.bot.api.sendMessage(999, 'Hello'))).toBe(
      '400 Bad Request: chat not found',
    );
    expect(await refusal(stage.bot.api.sendMessage('@harbourlane', 'Hello'))).toBe(
      '400 Bad Request: chat not found',
    );
    expect(await stage.client.chat(999)).toEqual([]);
  });

  it('when the person blocked the bot, until unblocked', async () => {
    await stage.client.block(MAYA);
    expect(await refusal(stage.bot.api.sendMessage(MAYA, 'Hello'))).toBe(
      '403 Forbidden: bot was blocked by the user',
    );
    await stage.client.unblock(MAYA);
    await expect(stage.bot.api.sendMessage(MAYA, 'Hello')).resolves.toMatchObject({
      text: 'Hello',
    });
  });

  it('when the account is deactivated', async () => {
    await stage.client.deactivate(TOBI);
    expect(await refusal(stage.bot.api.sendMessage(TOBI, 'Hello'))).toBe(
      '403 Forbidden: user is deactivated',
    );
  });

  it('over 4096 code points and not at 4096', async () => {
    await expect(stage.bot.api.sendMessage(MAYA, '🐦'.repeat(4096))).resolves.toBeDefined();
    expect(await refusal(stage.bot.api.sendMessage(MAYA, 'x'.repeat(4097)))).toBe(
      '400 Bad Request: message is too long',
    );
  });

  it('without text, also with white space only', async () => {
    expect(await refusal(stage.bot.api.sendMessage(MAYA, ''))).toBe(
      '400 Bad Request: message text is empty',
    );
    expect(await refusal(stage.bot.api.sendMessage(MAYA, ' \n '))).toBe(
      '400 Bad Request: message text is empty',
    );
  });
});

describe('reply markup', () => {
  const withButton = (button: Record<string, unknown>): Promise<string> =>
    refusal(
      stage.bot.api.raw.sendMessage({
        chat_id: MAYA,
        text: 'x',
        reply_markup: JSON.parse(JSON.stringify({ inline_keyboard: [[button]] })),
      }),
    );

  it('carries 64 bytes a button and not 65', async () => {
    const data = `${'я'.repeat(31)}ab`;
    const reply_markup = { inline_keyboard: [[{ text: 'Go', callback_data: data }]] };
    await expect(stage.bot.api.sendMessage(MAYA, 'x', { reply_markup })).resolves.toBeDefined();
    expect(await withButton({ text: 'Go', callback_data: `${data}c` })).toBe(
      '400 Bad Request: BUTTON_DATA_INVALID',
    );
  });

  it('has no buttons without an action', async () => {
    expect(await withButton({ text: 'Go' })).toBe(
      "400 Bad Request: can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
    );
  });

  it('is an object', async () => {
    const raw = stage.bot.api.raw.sendMessage({
      chat_id: MAYA,
      text: 'x',
      reply_markup: JSON.parse('"no"'),
    });
    expect(await refusal(raw)).toBe('400 Bad Request: object expected as reply markup');
  });

  it('holds at most 100 buttons', async () => {
    const row = Array.from({ length: 101 }, (_, i) => [{ text: 'x', callback_data: String(i) }]);
    const call = stage.bot.api.sendMessage(MAYA, 'x', { reply_markup: { inline_keyboard: row } });
    expect(await refusal(call)).toBe('400 Bad Request: reply markup is too long');
  });

  it('keeps link buttons', async () => {
    const reply_markup = { inline_keyboard: [[{ text: 'Read', url: 'https://example.org/help' }]] };
    await stage.bot.api.sendMessage(MAYA, 'x', { reply_markup });
    expect((await stage.client.chat(MAYA)).at(-1)?.buttons).toEqual([
      [{ text: 'Read', url: 'https://example.org/help' }],
    ]);
  });
});

describe('sendPhoto', () => {
  it('lists the largest size last, measured from the picture', async () => {
    const sent = await stage.bot.api.sendPhoto(MAYA, new InputFile(png(640, 400)), {
      caption: 'Clock card',
    });
    expect(sent.photo.map(({ width, height }) => [width, height])).toEqual([
      [320, 200],
      [640, 400],
    ]);
    expect((await stage.client.chat(MAYA)).at(-1)).toMatchObject({
      text: 'Clock card',
      photo: { width: 640, height: 400 },
    });
  });

  it('sends again by file id without another upload', async () => {
    const sent = await stage.bot.api.sendPhoto(MAYA, new InputFile(png(64, 64)));
    const id = sent.photo.at(-1)?.file_id ?? '';
    const again = await stage.bot.api.sendPhoto(TOBI, id);
    expect(again.photo.at(-1)?.file_unique_id).toBe(sent.photo.at(-1)?.file_unique_id);
  });

  it('refuses what is no picture, an empty file and a sliver', async () => {
    const send = (bytes: Uint8Array): Promise<string> =>
      refusal(stage.bot.api.sendPhoto(MAYA, new InputFile(bytes)));
    expect(await send(Buffer.from('words'))).toBe('400 Bad Request: IMAGE_PROCESS_FAILED');
    expect(await send(new Uint8Array())).toBe('400 Bad Request: file must be non-empty');
    expect(await send(png(2100, 100))).toBe('400 Bad Request: PHOTO_INVALID_DIMENSIONS');
    expect(await send(png(0, 0))).toBe('400 Bad Request: PHOTO_INVALID_DIMENSIONS');
  });

  it('refuses a caption over 1024 code points', async () => {
    const send = stage.bot.api.sendPhoto(MAYA, new InputFile(png(9, 9)), {
      caption: 'x'.repeat(1025),
    });
    expect(await refusal(send)).toBe('400 Bad Request: message caption is too long');
  });

  it('refuses ids that are malformed, of another class or of another bot', async () => {
    const sent = await stage.bot.api.sendPhoto(MAYA, new InputFile(png(9, 9)));
    const photo = sent.photo.at(-1)?.file_id ?? '';
    expect(await refusal(stage.bot.api.sendDocument(MAYA, photo))).toBe(
      "400 Bad Request: can't use file of type Photo as Document",
    );
    expect(await refusal(stage.bot.api.sendPhoto(MAYA, 'no/id'))).toBe(
      '400 Bad Request: wrong remote file identifier specified: Wrong character in the string',
    );
    expect(await refusal(stage.bot.api.sendPhoto(MAYA, 'AAAA'))).toBe(
      "400 Bad Request: wrong remote file identifier specified: can't unserialize it",
    );
    const other = await createStage({ token: '0:rehearsal-other' });
    await openBoth(other);
    const foreign = refusal(other.bot.api.sendPhoto(MAYA, photo)).finally(() =>
      other.rehearsal.close(),
    );
    expect(await foreign).toBe('400 Bad Request: wrong file identifier/HTTP URL specified');
  });

  it('fetches nothing from the web', async () => {
    expect(await refusal(stage.bot.api.sendPhoto(MAYA, 'https://example.org/a.png'))).toBe(
      '400 Bad Request: failed to get HTTP URL content',
    );
  });
});

describe('sendDocument', () => {
  it('keeps name, kind and bytes, also with spaces in the name', async () => {
    const bytes = Buffer.from('child,best\nWren,9\n');
    const sent = await stage.bot.api.sendDocument(
      MAYA,
      new InputFile(bytes, 'week one, Kingfisher.csv'),
    );
    expect(sent.document).toMatchObject({
      file_name: 'week one, Kingfisher.csv',
      mime_type: 'text/csv',
      file_size: bytes.length,
    });
    const shown = (await stage.client.chat(MAYA)).at(-1)?.document;
    expect(Buffer.from(await stage.client.file(shown?.fileId ?? ''))).toEqual(bytes);
  });
});

describe('sendChatAction', () => {
  it('takes the named actions only', async () => {
    await expect(stage.bot.api.sendChatAction(MAYA, 'typing')).resolves.toBe(true);
    const wrong = stage.bot.api.raw.sendChatAction({
      chat_id: MAYA,
      action: JSON.parse('"dancing"'),
    });
    expect(await refusal(wrong)).toBe('400 Bad Request: wrong parameter action in request');
  });
});
