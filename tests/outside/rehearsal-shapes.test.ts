import { InputFile } from 'grammy';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { mp4 } from '../rehearsal/support/mp4.ts';
import { ogg } from '../rehearsal/support/ogg.ts';
import { png } from '../rehearsal/support/png.ts';
import { createStage, MAYA, openBoth, START, type Stage } from '../rehearsal/support/stage.ts';
import { until } from '../rehearsal/support/until.ts';
import { complaints, IS_HERE, SPEC_FILE } from './rehearsal-published.ts';

if (!IS_HERE) {
  describe('the published description of the Bot API', () => {
    it.skip(`is not at ${SPEC_FILE}; put the file there to check against it`, () => {});
  });
}

let stage: Stage;
beforeAll(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterAll(() => stage.rehearsal.close());

describe.runIf(IS_HERE)('answers have the published shape', () => {
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
    const voice = await api.sendVoice(MAYA, new InputFile(ogg(), 'a.ogg'), { caption: 'Hello' });
    const reply = await api.sendMessage(MAYA, 'Yes', {
      reply_parameters: { message_id: voice.message_id },
    });
    const caption = await api.editMessageCaption(MAYA, voice.message_id, { caption: 'Hello you' });
    const bare = await api.editMessageReplyMarkup(MAYA, reply.message_id, { reply_markup: START });
    const messages = [text, photo, document, video, edited, replaced, voice, reply, caption, bare];
    expect(complaints(voice.voice, 'Voice', 'voice')).toEqual([]);
    const copied = await api.copyMessage(MAYA, MAYA, voice.message_id);
    expect(complaints(copied, 'MessageId', 'copy')).toEqual([]);
    expect(complaints(video.video, 'Video', 'video')).toEqual([]);
    expect(messages.flatMap((message) => complaints(message, 'Message', 'message'))).toEqual([]);
  });

  it('of a webhook that fails, and true where true is published', async () => {
    const { api } = stage.bot;
    await stage.client.say(MAYA, 'to nobody');
    const url = 'http://127.0.0.1:9/closed';
    const made = [
      await api.setWebhook(url, { secret_token: 's', allowed_updates: [] }),
      await api.setMyCommands([{ command: 'help', description: 'Help' }]),
      await api.sendChatAction(MAYA, 'typing'),
    ];
    const info = await until(
      () => api.getWebhookInfo(),
      ({ last_error_message }) => last_error_message !== undefined,
    );
    made.push(await api.deleteWebhook({ drop_pending_updates: true }));
    expect(made).toEqual([true, true, true, true]);
    expect(info.last_error_message).toBe('Connection refused');
    expect(complaints(info, 'WebhookInfo', 'info')).toEqual([]);
  });

  it('of files', async () => {
    const sent = await stage.bot.api.sendDocument(MAYA, new InputFile(Buffer.from('a'), 'a.csv'));
    expect(
      complaints(await stage.bot.api.getFile(sent.document.file_id), 'File', 'getFile'),
    ).toEqual([]);
  });
});

describe.runIf(IS_HERE)('updates have the published shape', () => {
  it('of every kind', async () => {
    const sent = await stage.bot.api.sendMessage(MAYA, 'x', { reply_markup: START });
    await stage.client.tap(MAYA, sent.message_id, 'v1:start');
    await stage.client.say(MAYA, 'hello');
    for (const kind of ['voice', 'video', 'photo', 'document'] as const) {
      await stage.client.sendFile(MAYA, { kind, name: 'a', bytes: Buffer.from('a') });
    }
    await stage.client.block(MAYA);
    const updates = await stage.bot.api.getUpdates();
    await stage.client.unblock(MAYA);
    expect(updates.map((update) => Object.keys(update)[1])).toEqual([
      'callback_query',
      'message',
      'message',
      'message',
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
