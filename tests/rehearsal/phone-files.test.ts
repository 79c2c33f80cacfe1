import { once } from 'node:events';
import { request } from 'node:http';
import { text } from 'node:stream/consumers';
import type { Update } from 'grammy/types';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FileToSend } from '../../rehearsal/client.ts';
import { mp4 } from './support/mp4.ts';
import { ogg } from './support/ogg.ts';
import { png } from './support/png.ts';
import { createStage, MAYA, openBoth, refusal, type Stage, TOBI } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterAll(() => stage.rehearsal.close());

/** What came since the last time this was asked. */
async function updates(): Promise<Update[]> {
  const { api } = stage.bot;
  const came = await api.getUpdates();
  await api.getUpdates({ offset: (came.at(-1)?.update_id ?? 0) + 1 });
  return came;
}

/** What a phone is told that says how long its file is and has not sent any of it. */
async function announce(length: number): Promise<string> {
  const path = `/rehearsal/accounts/${MAYA}/files?kind=document`;
  const headers = { 'content-length': String(length) };
  const sending = request(`${stage.rehearsal.url}${path}`, { method: 'POST', headers });
  sending.flushHeaders();
  const [answer] = await once(sending, 'response');
  const words = await text(answer);
  sending.destroy();
  return words;
}

describe('files from a person', () => {
  it('reach the bot and can be downloaded', async () => {
    const bytes = Buffer.from('week,pages\n1,14\n');
    await stage.client.sendFile(MAYA, {
      kind: 'document',
      name: 'plan.csv',
      caption: 'Plan',
      bytes,
    });
    const [update] = await updates();
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
    const [voice, , video, photo, document] = (await updates()).map(({ message }) => message);
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
});

describe('files that should not be sent', () => {
  it('are shown as what they were sent as, whatever type they claim', async () => {
    const types = [];
    for (const kind of ['photo', 'video', 'voice'] as const) {
      const bytes = Buffer.from('<script>');
      const sent = await stage.client.sendFile(MAYA, { kind, bytes, mimeType: 'text/html' });
      types.push((sent.photo ?? sent.video ?? sent.voice)?.mimeType);
    }
    expect(types).toEqual(['image/png', 'video/mp4', 'audio/ogg']);
    expect(await updates()).toHaveLength(3);
  });

  it('are refused when empty, of an unknown kind, over 50 MB, and before the chat is open', async () => {
    const send = (file: object) =>
      stage.client.sendFile(MAYA, { kind: 'document', bytes: Buffer.from('a'), ...file });
    await stage.client.addAccount({ id: 4103, name: 'Robin' });
    const early = stage.client.sendFile(4103, { kind: 'document', bytes: Buffer.from('a') });
    await expect(early).rejects.toThrow('has not opened the chat yet');
    await expect(send({ bytes: new Uint8Array() })).rejects.toThrow('An empty file');
    await expect(send({ kind: 'pigeon' })).rejects.toThrow('kind');
    await expect(send({ seconds: -1 })).rejects.toThrow('seconds');
    expect(await announce(52_428_801)).toContain('up to 50 MB');
    expect(stage.rehearsal.pendingUpdates()).toBe(0);
  });

  it('over 20 MB can be sent on, but not fetched', async () => {
    await stage.client.sendFile(MAYA, { kind: 'document', bytes: new Uint8Array(20_971_521) });
    const [update] = await updates();
    const id = update?.message?.document?.file_id ?? '';
    expect(await refusal(stage.bot.api.getFile(id))).toBe('400 Bad Request: file is too big');
    await expect(stage.bot.api.sendDocument(TOBI, id)).resolves.toBeTruthy();
  });
});
