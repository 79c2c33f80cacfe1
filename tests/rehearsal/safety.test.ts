import { once } from 'node:events';
import { get, type IncomingMessage } from 'node:http';
import { afterEach, describe, expect, it } from 'vitest';
import { isLoopback } from '../../rehearsal/safety.ts';
import { createStage, type Stage } from './support/stage.ts';

const open: Stage[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map(({ rehearsal }) => rehearsal.close()));
});

describe('a rehearsal', () => {
  it('does not start with a token that could be real, and does not repeat it', async () => {
    const start = createStage({ token: '123456:AAsecret' });
    await expect(start).rejects.toThrow('only made-up tokens that begin with "0:rehearsal"');
    await expect(start).rejects.not.toThrow('AAsecret');
  });

  it('does not start beside a real token, and names the setting only', async () => {
    const secret = `AA${'x'.repeat(33)}`;
    const start = createStage({ settings: { BOT_TOKEN: `123456789:${secret}`, HOME: '/' } });
    await expect(start).rejects.toThrow("BOT_TOKEN holds what looks like a real bot's token");
    await expect(start).rejects.not.toThrow(secret);
    const quoted = { BOT_TOKEN: `"123456789:${secret}"` };
    await expect(createStage({ settings: quoted })).rejects.toThrow('BOT_TOKEN holds');
    const settings = { BOT_TOKEN: undefined, TIME: '12:30', OTHER: '0:rehearsal-demo' };
    open.push(await createStage({ settings }));
  });

  it('does not listen where other computers reach it', async () => {
    await expect(createStage({ host: '0.0.0.0' })).rejects.toThrow('listens on this computer only');
  });

  it('listens there when that is asked for', async () => {
    const stage = await createStage({ host: '0.0.0.0', allowRemote: true });
    open.push(stage);
    expect(stage.rehearsal.url).toMatch(/^http:\/\/0\.0\.0\.0:\d+$/);
  });

  it('refuses pages of other addresses', async () => {
    const stage = await createStage();
    open.push(stage);
    const ask = (headers: Record<string, string>) =>
      fetch(`${stage.rehearsal.url}/rehearsal/accounts`, { headers });
    expect((await ask({ origin: 'http://example.org' })).status).toBe(403);
    expect((await ask({ origin: stage.rehearsal.url })).status).toBe(200);
  });

  it('refuses every page at the bot’s side, even one that only asks', async () => {
    const stage = await createStage();
    open.push(stage);
    const { apiRoot, token } = stage.rehearsal;
    const ask = (headers: Record<string, string>) =>
      fetch(`${apiRoot}/bot${token}/getMe`, { headers });
    expect((await ask({ 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    expect((await ask({})).status).toBe(200);
  });

  it('answers to no name that was made to lead here, unless it may be reached from elsewhere', async () => {
    const statusAt = async (allowRemote: boolean, host: string): Promise<number | undefined> => {
      const stage = await createStage({ allowRemote });
      open.push(stage);
      const { port } = new URL(stage.rehearsal.url);
      const asking = get(`${stage.rehearsal.url}/`, { headers: { host: `${host}:${port}` } });
      const [answer]: IncomingMessage[] = await once(asking, 'response');
      answer?.resume();
      return answer?.statusCode;
    };
    expect(await statusAt(false, 'harbour.example')).toBe(403);
    expect(await statusAt(false, 'localhost')).toBe(200);
    expect(await statusAt(true, 'harbour.example')).toBe(200);
  });
});

describe('isLoopback', () => {
  it('is true for this computer only', () => {
    expect(isLoopback('127.0.0.1')).toBe(true);
    expect(['127.9.9.9', '::1', 'localhost'].map(isLoopback)).toEqual([true, true, true]);
    expect(['0.0.0.0', '::', '127.example.org', '192.168.0.4'].map(isLoopback)).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });
});
