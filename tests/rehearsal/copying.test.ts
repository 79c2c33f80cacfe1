import { InputFile } from 'grammy';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isVoice } from '../../rehearsal/voice-file.ts';
import { mp4 } from './support/mp4.ts';
import { ogg } from './support/ogg.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, refusal, START, type Stage, TOBI } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterAll(() => stage.rehearsal.close());

async function last(id: number) {
  return (await stage.client.chat(id)).at(-1);
}

describe('sendVoice', () => {
  it('shows the recording with its length, which the call may give', async () => {
    const { api } = stage.bot;
    const file = () => new InputFile(ogg({ seconds: 9 }), 'greeting.ogg');
    const sent = await api.sendVoice(MAYA, file(), { caption: 'Hello', reply_markup: START });
    expect(sent).toMatchObject({
      caption: 'Hello',
      voice: { duration: 9, mime_type: 'audio/ogg' },
    });
    expect(await last(MAYA)).toMatchObject({ text: 'Hello', voice: { duration: 9 } });
    expect((await api.sendVoice(MAYA, file(), { duration: 4 })).voice.duration).toBe(4);
  });

  it('keeps what is no recording as a document', async () => {
    const sent = await stage.bot.api.sendVoice(MAYA, new InputFile(Buffer.from('words'), 'a.txt'));
    expect(sent).toMatchObject({ document: { file_name: 'a.txt' } });
    expect(sent).not.toHaveProperty('voice');
  });

  it('is refused without a recording, and its id fits nothing else', async () => {
    const { api } = stage.bot;
    const empty = new InputFile(new Uint8Array());
    expect(await refusal(api.sendVoice(MAYA, empty))).toContain('file must be non-empty');
    const { voice } = await api.sendVoice(MAYA, new InputFile(ogg()));
    expect(await refusal(api.sendDocument(MAYA, voice.file_id))).toBe(
      "400 Bad Request: can't use file of type VoiceNote as Document",
    );
    const photo = await api.sendPhoto(MAYA, new InputFile(png(9, 9)));
    expect(await refusal(api.sendVoice(MAYA, photo.photo.at(-1)?.file_id ?? ''))).toBe(
      "400 Bad Request: can't use file of type Photo as VoiceNote",
    );
  });

  it('makes a message whose media cannot be replaced', async () => {
    const { message_id: id, voice } = await stage.bot.api.sendVoice(MAYA, new InputFile(ogg()));
    const media = { type: 'document', media: voice.file_id } as const;
    expect(await refusal(stage.bot.api.editMessageMedia(MAYA, id, media))).toBe(
      "400 Bad Request: message media can't be edited",
    );
  });

  it('takes Ogg, MP3 and M4A', () => {
    const m4a = Buffer.from('\0\0\0\x20ftypM4A ', 'latin1');
    const files = [ogg(), Buffer.from('ID3'), Buffer.from([0xff, 0xfb]), m4a];
    expect(files.map(isVoice)).toEqual([true, true, true, true]);
    expect([mp4(), png(9, 9), new Uint8Array()].map(isVoice)).toEqual([false, false, false]);
  });
});

describe('copyMessage', () => {
  it('sends what a person sent on to another, without buttons', async () => {
    const { api } = stage.bot;
    const note = await stage.client.sendFile(MAYA, { kind: 'voice', bytes: ogg(), caption: 'Hi' });
    const { message_id: id } = await api.copyMessage(TOBI, MAYA, note.id);
    expect(await last(TOBI)).toMatchObject({ id, from: 'bot', text: 'Hi', voice: { duration: 7 } });
    const card = await api.sendMessage(MAYA, 'Evening', { reply_markup: START });
    await api.copyMessage(TOBI, MAYA, card.message_id);
    expect(await last(TOBI)).toMatchObject({ text: 'Evening', buttons: [] });
  });

  it('takes another caption and new buttons', async () => {
    const { api } = stage.bot;
    const note = await stage.client.sendFile(MAYA, { kind: 'voice', bytes: ogg(), caption: 'Hi' });
    await api.copyMessage(TOBI, MAYA, note.id, { caption: 'From Maya', reply_markup: START });
    expect(await last(TOBI)).toMatchObject({ text: 'From Maya', buttons: [[{ text: 'Start' }]] });
    expect(await refusal(api.copyMessage(TOBI, MAYA, note.id, { caption: 'x'.repeat(1025) }))).toBe(
      '400 Bad Request: message caption is too long',
    );
  });

  it('finds neither unknown messages nor unknown chats', async () => {
    const copy = (from: number, id: number): Promise<string> =>
      refusal(stage.bot.api.copyMessage(TOBI, from, id));
    expect(await copy(MAYA, 99_999)).toBe('400 Bad Request: message to copy not found');
    expect(await copy(5, 1)).toBe('400 Bad Request: chat not found');
  });
});

describe('a reply', () => {
  it('carries the message it replies to, while that is there', async () => {
    const { api } = stage.bot;
    const said = await stage.client.say(MAYA, 'When?');
    const reply_parameters = { message_id: said.id };
    const sent = await api.sendMessage(MAYA, 'At six', { reply_parameters });
    expect(sent.reply_to_message).toMatchObject({ message_id: said.id, text: 'When?' });
    expect(await last(MAYA)).toMatchObject({ text: 'At six', replyTo: said.id });
    const second = { message_id: sent.message_id };
    const again = await api.sendMessage(MAYA, 'Sharp', { reply_parameters: second });
    expect(again.reply_to_message).not.toHaveProperty('reply_to_message');
    await stage.client.deleteMessage(MAYA, sent.message_id);
    const edited = await api.editMessageText(MAYA, again.message_id, 'Sharp!');
    expect(edited).not.toHaveProperty('reply_to_message');
  });

  it('to an unknown message is refused, unless that is allowed', async () => {
    const { api } = stage.bot;
    const reply_parameters = { message_id: 99_999 };
    expect(await refusal(api.sendMessage(MAYA, 'x', { reply_parameters }))).toBe(
      '400 Bad Request: message to be replied not found',
    );
    const free = { ...reply_parameters, allow_sending_without_reply: true };
    const sent = await api.sendMessage(MAYA, 'x', { reply_parameters: free });
    expect(sent).not.toHaveProperty('reply_to_message');
  });
});
