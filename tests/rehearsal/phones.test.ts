import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { FileToSend } from '../../rehearsal/client.ts';
import { mp4 } from './support/mp4.ts';
import { ogg } from './support/ogg.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, refusal, type Stage, TOBI } from './support/stage.ts';

const LINK = 'https://t.me/harbour_lane_bot?start=';

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
});
afterEach(() => stage.rehearsal.close());

describe('accounts', () => {
  it('adding one twice keeps one', async () => {
    await stage.client.addAccount({ id: MAYA, name: 'Maya', note: 'teacher' });
    const accounts = await stage.client.accounts();
    expect(accounts.map(({ id, note }) => [id, note])).toEqual([
      [MAYA, 'teacher'],
      [TOBI, "Otto's helper"],
    ]);
  });

  it('count what the bot sent', async () => {
    await openBoth(stage);
    await stage.bot.api.sendMessage(MAYA, 'one');
    expect((await stage.client.accounts()).map(({ received }) => received)).toEqual([1, 0]);
  });
});

describe('a link', () => {
  it('opens the chat with its payload', async () => {
    await stage.client.openLink(MAYA, `${LINK}Wren-7_x`);
    const [update] = await stage.bot.api.getUpdates();
    expect(update?.message).toMatchObject({
      text: '/start Wren-7_x',
      entities: [{ type: 'bot_command', offset: 0, length: 6 }],
      chat: { id: MAYA, type: 'private' },
      from: { id: MAYA, is_bot: false, language_code: 'en' },
    });
  });

  it('may be the bare payload, and carries 64 characters at most', async () => {
    await stage.client.openLink(MAYA, 'a'.repeat(64));
    await expect(stage.client.openLink(MAYA, `${LINK}${'a'.repeat(65)}`)).rejects.toThrow(
      '1 to 64',
    );
  });

  it('to another bot or another place is refused', async () => {
    await expect(stage.client.openLink(MAYA, 'https://t.me/other_bot?start=a')).rejects.toThrow(
      'Not a link to this bot',
    );
    await expect(stage.client.openLink(MAYA, 'https://example.org/?start=a')).rejects.toThrow(
      'Not a link to this bot',
    );
  });
});

describe('writing', () => {
  it('before the chat is opened is refused', async () => {
    await expect(stage.client.say(MAYA, 'hello')).rejects.toThrow('has not opened the chat yet');
  });

  it('is refused while the bot is blocked, until a link is opened', async () => {
    await openBoth(stage);
    await stage.client.block(MAYA);
    await expect(stage.client.say(MAYA, 'hello')).rejects.toThrow('blocked the bot');
    await stage.client.openLink(MAYA, 'again');
    await expect(stage.client.say(MAYA, 'hello')).resolves.toMatchObject({ text: 'hello' });
  });

  it('an unknown phone is refused', async () => {
    await expect(stage.client.say(5, '/start')).rejects.toThrow('There is no phone with the id 5');
  });
});

describe('blocking', () => {
  it('tells the bot, once', async () => {
    await openBoth(stage);
    await stage.client.block(MAYA);
    await stage.client.block(MAYA);
    await stage.client.unblock(MAYA);
    const changes = (await stage.bot.api.getUpdates()).map(({ my_chat_member }) => my_chat_member);
    expect(
      changes.map((change) => [change?.old_chat_member.status, change?.new_chat_member.status]),
    ).toEqual([
      ['member', 'kicked'],
      ['kicked', 'member'],
    ]);
  });
});

describe('files from a person', () => {
  it('reach the bot and can be downloaded', async () => {
    await openBoth(stage);
    const bytes = Buffer.from('week,pages\n1,14\n');
    await stage.client.sendFile(MAYA, {
      kind: 'document',
      name: 'plan.csv',
      caption: 'Plan',
      bytes,
    });
    const [update] = await stage.bot.api.getUpdates();
    expect(update?.message).toMatchObject({
      caption: 'Plan',
      document: { file_name: 'plan.csv', mime_type: 'text/csv' },
    });
    const file = await stage.bot.api.getFile(update?.message?.document?.file_id ?? '');
    const { apiRoot, token } = stage.rehearsal;
    const download = await fetch(`${apiRoot}/file/bot${token}/${file.file_path}`);
    expect(Buffer.from(await download.arrayBuffer())).toEqual(bytes);
  });

  it('are photos, videos, documents and voice notes, and the bot may send each on by its id', async () => {
    await openBoth(stage);
    const send = (file: FileToSend) => stage.client.sendFile(MAYA, file);
    const shown = [
      await send({ kind: 'voice', bytes: ogg({ seconds: 7 }), caption: 'Good evening' }),
      await send({ kind: 'voice', bytes: ogg({ seconds: 7 }), seconds: 6 }),
      await send({ kind: 'video', bytes: mp4({ seconds: 12 }), name: 'hello.mp4' }),
      await send({ kind: 'photo', bytes: png(40, 30) }),
      await send({ kind: 'document', bytes: Buffer.from('PK'), name: 'class list.xlsx' }),
    ];
    expect(shown).toMatchObject([
      { from: 'person', text: 'Good evening', voice: { mimeType: 'audio/ogg', duration: 7 } },
      { voice: { duration: 6 } },
      { video: { width: 480, height: 480, duration: 12, fileName: 'hello.mp4' } },
      { photo: { width: 40, height: 30 } },
      { document: { fileName: 'class list.xlsx', size: 2 } },
    ]);
    const [voice, , video, photo, document] = (await stage.bot.api.getUpdates()).map(
      ({ message }) => message,
    );
    expect(voice?.voice).toMatchObject({ duration: 7, mime_type: 'audio/ogg', file_size: 95 });
    expect(document?.document?.mime_type).toBe(
      'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    );
    const { api } = stage.bot;
    await api.sendVoice(TOBI, voice?.voice?.file_id ?? '');
    await api.sendVideo(TOBI, video?.video?.file_id ?? '');
    await api.sendPhoto(TOBI, photo?.photo?.at(-1)?.file_id ?? '');
    await api.sendDocument(TOBI, document?.document?.file_id ?? '');
    expect((await stage.client.chat(TOBI)).slice(-4)).toMatchObject([
      { voice: { duration: 7 } },
      { video: { duration: 12 } },
      { photo: { width: 40 } },
      { document: { fileName: 'class list.xlsx' } },
    ]);
  });

  it('are refused when empty, of an unknown kind, over 50 MB, and before the chat is open', async () => {
    const send = (file: object) =>
      stage.client.sendFile(MAYA, { kind: 'document', bytes: Buffer.from('a'), ...file });
    await expect(send({})).rejects.toThrow('has not opened the chat yet');
    await openBoth(stage);
    await expect(send({ bytes: new Uint8Array() })).rejects.toThrow('An empty file');
    await expect(send({ kind: 'pigeon' })).rejects.toThrow('kind');
    await expect(send({ seconds: -1 })).rejects.toThrow('seconds');
    await expect(send({ bytes: new Uint8Array(52_428_801) })).rejects.toThrow('up to 50 MB');
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
  });

  it('over 20 MB can be sent on, but not fetched', async () => {
    await openBoth(stage);
    await stage.client.sendFile(MAYA, { kind: 'document', bytes: new Uint8Array(20_971_521) });
    const [update] = await stage.bot.api.getUpdates();
    const id = update?.message?.document?.file_id ?? '';
    expect(await refusal(stage.bot.api.getFile(id))).toBe('400 Bad Request: file is too big');
    await expect(stage.bot.api.sendDocument(TOBI, id)).resolves.toBeTruthy();
  });
});

describe('the clock', () => {
  it('moves forward through the app and never back', async () => {
    const [stop] = await stage.client.stops();
    expect(stop).toEqual({
      id: 'nudge',
      label: 'nudge time 19:00',
      at: new Date('2026-09-07T18:00:00Z'),
    });
    await stage.client.moveTo(stop?.at ?? new Date(0));
    expect(await stage.client.clock()).toEqual(stop?.at);
    await expect(stage.client.moveTo(new Date('2026-09-07T17:59:59Z'))).rejects.toThrow(
      'only goes forward',
    );
  });
});

describe('commands', () => {
  it('are those of the narrowest scope', async () => {
    await stage.bot.api.setMyCommands([{ command: 'help', description: 'How this works' }]);
    await stage.bot.api.setMyCommands([{ command: 'digest', description: 'This week' }], {
      scope: { type: 'chat', chat_id: MAYA },
    });
    expect((await stage.client.commands(MAYA)).map(({ command }) => command)).toEqual(['digest']);
    expect((await stage.client.commands(TOBI)).map(({ command }) => command)).toEqual(['help']);
  });
});
