import { HttpError } from 'grammy';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readable } from '../../rehearsal/call-log.ts';
import { createStage, MAYA, openBoth, refusal, type Stage, TOBI } from './support/stage.ts';

let stage: Stage;
beforeEach(async () => {
  stage = await createStage();
  await openBoth(stage);
});
afterEach(() => stage.rehearsal.close());

async function texts(account: number): Promise<string[]> {
  return (await stage.client.chat(account))
    .filter(({ from }) => from === 'bot')
    .map(({ text }) => text);
}

describe('a fault', () => {
  it('drop_before cuts the connection and applies nothing', async () => {
    await stage.client.setFault({ method: 'sendMessage', mode: 'drop_before', count: 1 });
    await expect(stage.bot.api.sendMessage(MAYA, 'x')).rejects.toBeInstanceOf(HttpError);
    expect(await texts(MAYA)).toEqual([]);
    await stage.bot.api.sendMessage(MAYA, 'y');
    expect(await texts(MAYA)).toEqual(['y']);
  });

  it('apply_then_drop delivers and cuts the connection', async () => {
    await stage.client.setFault({ method: 'sendMessage', mode: 'apply_then_drop', count: 1 });
    await expect(stage.bot.api.sendMessage(MAYA, 'x')).rejects.toBeInstanceOf(HttpError);
    expect(await texts(MAYA)).toEqual(['x']);
    expect((await stage.client.log()).at(-1)).toMatchObject({
      method: 'sendMessage',
      status: 0,
      chatId: MAYA,
    });
  });

  it('apply_then_hang delivers and never answers', async () => {
    await stage.client.setFault({ method: 'sendMessage', mode: 'apply_then_hang', count: 1 });
    const hanging = stage.bot.api.sendMessage(MAYA, 'x').then(
      () => 'answered',
      () => 'cut off',
    );
    // A second call is answered while the first still hangs.
    await stage.bot.api.sendMessage(TOBI, 'y');
    expect(await Promise.race([hanging, stage.client.chat(TOBI).then(() => 'still waiting')])).toBe(
      'still waiting',
    );
    await stage.rehearsal.close();
    expect(await hanging).toBe('cut off');
  });

  it('http_502 answers with a page that is no envelope', async () => {
    await stage.client.setFault({ method: '*', mode: 'http_502', count: 1 });
    await expect(stage.bot.api.getMe()).rejects.toBeInstanceOf(HttpError);
    await expect(stage.bot.api.getMe()).resolves.toMatchObject({ id: 0 });
  });

  it('error answers as the service does, with the time to wait', async () => {
    const error = { code: 429, description: 'Too Many Requests: retry after 7', retryAfter: 7 };
    await stage.client.setFault({ method: 'sendMessage', mode: 'error', count: 2, error });
    await expect(stage.bot.api.sendMessage(MAYA, 'x')).rejects.toMatchObject({
      error_code: 429,
      parameters: { retry_after: 7 },
    });
    const { apiRoot, token } = stage.rehearsal;
    const raw = await fetch(`${apiRoot}/bot${token}/sendMessage?chat_id=${MAYA}&text=x`);
    expect([raw.status, raw.headers.get('retry-after')]).toEqual([429, '7']);
    expect(await texts(MAYA)).toEqual([]);
  });

  it('slow delivers at once and answers late', async () => {
    const waits: number[] = [];
    const machineSleep = async (ms: number): Promise<void> => {
      waits.push(ms);
      expect(await slowStage.client.chat(MAYA)).toHaveLength(2);
    };
    const slowStage = await createStage({ machineSleep });
    await openBoth(slowStage);
    const slow = { method: 'sendMessage', mode: 'slow', count: 1 } as const;
    await slowStage.client.setFault({ ...slow, seconds: 3 });
    await expect(slowStage.bot.api.sendMessage(MAYA, 'x')).resolves.toMatchObject({ text: 'x' });
    await slowStage.bot.api.sendMessage(MAYA, 'y');
    await slowStage.rehearsal.close();
    expect(waits).toEqual([3000]);
  });
});

describe('setting a fault', () => {
  it('lasts until it is cleared', async () => {
    await stage.client.setFault({ method: '*', mode: 'drop_before', count: 9 });
    await stage.client.clearFaults();
    await expect(stage.bot.api.getMe()).resolves.toBeTruthy();
  });

  it('lists it until it is used up', async () => {
    const fault = { method: 'getMe', mode: 'http_502', count: 1 } as const;
    await stage.client.setFault(fault);
    expect(await stage.client.faults()).toEqual([fault]);
    await expect(stage.bot.api.getMe()).rejects.toThrow();
    expect(await stage.client.faults()).toEqual([]);
  });

  it('refuses a kind that is not known', async () => {
    const wrong = JSON.parse('{"method":"*","mode":"explode","count":1}');
    await expect(stage.client.setFault(wrong)).rejects.toThrow('mode');
  });
});

describe('a fault of updates', () => {
  const said = async (): Promise<(string | undefined)[]> =>
    (await stage.bot.api.getUpdates()).map(({ message }) => message?.text);

  it('gives an update twice, with one id, and strikes no call', async () => {
    await stage.client.setFault({ method: '*', mode: 'duplicate_updates', count: 1 });
    await stage.bot.api.getMe();
    await stage.client.say(MAYA, 'one');
    await stage.client.say(MAYA, 'two');
    expect(await said()).toEqual(['one', 'one', 'two']);
    const [first, second] = await stage.bot.api.getUpdates();
    expect(second?.update_id).toBe(first?.update_id);
    await stage.bot.api.getUpdates({ offset: (first?.update_id ?? 0) + 1 });
    expect(await said()).toEqual(['two']);
  });

  it('gives an update after the one that follows', async () => {
    await stage.client.setFault({ method: '*', mode: 'reorder_updates', count: 1 });
    await stage.client.say(MAYA, 'one');
    expect(await said()).toEqual([]);
    await stage.client.say(MAYA, 'two');
    expect(await said()).toEqual(['two', 'one']);
  });
});

describe('the envelope', () => {
  it('tells a wrong token, a wrong method and a missing parameter apart', async () => {
    const { apiRoot, token } = stage.rehearsal;
    const ask = async (path: string): Promise<string> => {
      const response = await fetch(`${apiRoot}/${path}`);
      const body = await response.json();
      return `${response.status} ${body.error_code} ${body.description}`;
    };
    expect(await ask('bot0:rehearsal-wrong/getMe')).toBe('401 401 Unauthorized');
    expect(await ask(`bot${token}/sendPigeon`)).toBe('404 404 Not Found: method not found');
    expect(await ask(`bot${token}/sendMessage?text=x`)).toBe(
      '400 400 Bad Request: chat_id is empty',
    );
    expect(await ask(`bot${token}/deleteMessage?chat_id=1`)).toBe(
      '400 400 Bad Request: message identifier is not specified',
    );
    expect(await ask(`bot${token}/getUpdates?limit=many`)).toContain(
      '400 400 Bad Request: can\'t parse parameter "limit"',
    );
    expect(await ask('nowhere')).toBe('404 404 Not Found');
  });

  it('takes form bodies and method names in any case', async () => {
    const { apiRoot, token } = stage.rehearsal;
    const body = new URLSearchParams({ chat_id: String(MAYA), text: 'form' });
    const response = await fetch(`${apiRoot}/bot${token}/SENDMESSAGE`, { method: 'POST', body });
    expect(await response.json()).toMatchObject({ ok: true, result: { text: 'form' } });
  });

  it('refuses over 1 MiB of parameters', async () => {
    expect(await refusal(stage.bot.api.sendMessage(MAYA, 'x'.repeat(1_048_576)))).toBe(
      '413 Request Entity Too Large',
    );
  });
});

describe('a gate', () => {
  it('is asked before each call and can let it vanish', async () => {
    const seen: string[] = [];
    const gated = await createStage({
      gate: async ({ method, index }) => {
        seen.push(`${index} ${method}`);
        return method === 'sendMessage' ? 'drop' : 'apply';
      },
    });
    await openBoth(gated);
    const before = seen.length;
    await expect(gated.bot.api.sendMessage(MAYA, 'x')).rejects.toBeInstanceOf(HttpError);
    await gated.bot.api.getMe();
    const shown = await gated.client.chat(MAYA);
    await gated.rehearsal.close();
    expect(seen.slice(before)).toEqual([`${before} sendMessage`, `${before + 1} getMe`]);
    expect(shown.filter(({ from }) => from === 'bot')).toEqual([]);
  });
});

describe('the log of calls', () => {
  it('names method, status, chat and parameters, and holds no file', async () => {
    await stage.bot.api.sendMessage(MAYA, 'x');
    await refusal(stage.bot.api.sendMessage(5, 'x'));
    expect((await stage.client.log()).slice(-2)).toMatchObject([
      {
        at: '2026-09-07T17:30:00.000Z',
        method: 'sendMessage',
        status: 200,
        chatId: MAYA,
        params: { text: 'x' },
      },
      { status: 400, chatId: 5, description: 'Bad Request: chat not found' },
    ]);
  });

  it('opens up JSON that came as text', () => {
    expect(readable({ media: '{"type":"photo"}' })).toEqual({ media: { type: 'photo' } });
    expect(readable({ text: '[not JSON', n: 1 })).toEqual({ text: '[not JSON', n: 1 });
  });

  it('leaves out polls that bring nothing', async () => {
    const before = (await stage.client.log()).length;
    await stage.bot.api.getUpdates();
    expect(await stage.client.log()).toHaveLength(before);
  });
});
