import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { InputFile } from 'grammy';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { mp4 } from './support/mp4.ts';
import { png } from './support/png.ts';
import { openReceiver } from './support/receiver.ts';
import { createStage, MAYA, openBoth, START, type Stage } from './support/stage.ts';

const MACHINE_MS = Date.UTC(2026, 8, 7);

let folder: string;
let stage: Stage;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rehearsal-'));
});
afterEach(async () => {
  await stage.rehearsal.close();
  await rm(folder, { recursive: true });
});

async function restart(
  options: { dataFile?: string; machineClock?: () => number } = {},
): Promise<Stage> {
  return createStage({
    dataFile: join(folder, 'chats.json'),
    machineClock: () => MACHINE_MS,
    ...options,
  });
}

describe('a second start', () => {
  it('finds chats, pictures, buttons and waiting updates', async () => {
    stage = await restart();
    await openBoth(stage);
    const sent = await stage.bot.api.sendPhoto(MAYA, new InputFile(png(9, 9)), {
      caption: 'Card',
      reply_markup: START,
    });
    await stage.client.tap(MAYA, sent.message_id, 'v1:start');
    const before = await stage.client.chat(MAYA);
    await stage.rehearsal.close();

    stage = await restart();
    expect(await stage.client.chat(MAYA)).toEqual(before);
    expect(Buffer.from(await stage.client.file(before.at(-1)?.photo?.fileId ?? ''))).toEqual(
      Buffer.from(png(9, 9)),
    );
    const [update] = await stage.bot.api.getUpdates();
    expect(update?.callback_query?.data).toBe('v1:start');
    await expect(
      stage.bot.api.editMessageCaption(MAYA, sent.message_id, { caption: 'Later' }),
    ).resolves.toBeTruthy();
  });

  it('finds clips with their measures, and takes their ids', async () => {
    const clip = mp4({ width: 480, height: 360, seconds: 42 });
    stage = await restart();
    await openBoth(stage);
    const sent = await stage.bot.api.sendVideo(MAYA, new InputFile(clip, 'part.mp4'));
    const before = await stage.client.chat(MAYA);
    await stage.rehearsal.close();

    stage = await restart();
    expect(await stage.client.chat(MAYA)).toEqual(before);
    const shown = before.at(-1)?.video;
    expect(shown).toMatchObject({ width: 480, height: 360, duration: 42 });
    expect(Buffer.from(await stage.client.file(shown?.fileId ?? ''))).toEqual(Buffer.from(clip));
    const again = await stage.bot.api.sendVideo(MAYA, sent.video.file_id);
    expect(again.video).toEqual(sent.video);
  });

  it('goes on sending to the webhook what was waiting', async () => {
    const receiver = await openReceiver();
    stage = await restart();
    await openBoth(stage);
    await stage.client.say(MAYA, 'before');
    const setting = { secret_token: 'kingfisher-7', max_connections: 2 };
    receiver.answers({ status: 500 }, { status: 501 });
    await stage.bot.api.setWebhook(receiver.url, setting);
    await receiver.next();
    await receiver.next();
    await stage.rehearsal.close();

    stage = await restart();
    const { headers, update } = await receiver.next();
    expect(update).toMatchObject({ message: { text: 'before' } });
    expect(headers['x-telegram-bot-api-secret-token']).toBe('kingfisher-7');
    const info = await stage.bot.api.getWebhookInfo();
    expect(info).toMatchObject({ url: receiver.url, max_connections: 2 });
    await receiver.close();
  });
});

describe('the data file', () => {
  it('is not left half-written', async () => {
    stage = await restart();
    await openBoth(stage);
    await stage.rehearsal.close();
    expect(await readdir(folder)).toEqual(['chats.json']);
  });

  it('is not read when it is of another kind', async () => {
    stage = await restart();
    const other = join(folder, 'other.json');
    for (const text of ['{"format":99}', '{"format":1,"state":{', 'null', '']) {
      await writeFile(other, text);
      await expect(restart({ dataFile: other })).rejects.toThrow(
        `${other} is not a rehearsal file`,
      );
    }
  });

  it('is written whatever a bot sent', async () => {
    stage = await restart();
    await openBoth(stage);
    const deep = `${'['.repeat(50_000)}${']'.repeat(50_000)}`;
    const { apiRoot, token } = stage.rehearsal;
    const send = (markup: string): Promise<Response> =>
      fetch(`${apiRoot}/bot${token}/sendMessage`, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: `{"chat_id":${MAYA},"text":"x","reply_markup":${markup}}`,
      });
    expect((await send(`{"keyboard":${deep}}`)).status).toBe(400);
    expect((await send(JSON.stringify(`{"keyboard":${deep}}`))).status).toBe(400);
    const last = (await stage.client.log()).slice(-2);
    expect(last.map(({ status }) => status)).toEqual([400, 400]);
    await expect(stage.rehearsal.close()).resolves.toBeUndefined();
  });
});

describe('update ids', () => {
  async function lastUpdateId(): Promise<number> {
    await stage.client.say(MAYA, '/start');
    return (await stage.bot.api.getUpdates()).at(-1)?.update_id ?? 0;
  }

  it('go on after a restart within the same instant', async () => {
    stage = await restart();
    const before = await lastUpdateId();
    await stage.rehearsal.close();
    stage = await restart();
    expect(await lastUpdateId()).toBe(before + 1);
  });

  it('do not repeat after the file is lost', async () => {
    stage = await restart();
    const before = await lastUpdateId();
    await stage.rehearsal.close();
    await rm(join(folder, 'chats.json'));
    stage = await restart({ machineClock: () => MACHINE_MS + 1000 });
    expect(await lastUpdateId()).toBeGreaterThan(before);
  });
});
