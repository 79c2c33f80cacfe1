import { GrammyError, HttpError } from 'grammy';
import { describe, expect, it } from 'vitest';
import { apiProblem } from '../../../bot/chat/api-error.ts';
import { outcomeOf } from '../../../bot/send/courier.ts';
import { failure, nobody, serviceThat } from './service.ts';

const broken = (code: string) => new HttpError('failed', Object.assign(new Error(code), { code }));
const answered = (code: number, description: string) =>
  new GrammyError('Call failed', { ok: false, error_code: code, description }, 'sendMessage', {});

describe('a call that got no proper answer', () => {
  it('surely did not arrive when nobody listens', async () => {
    const error = await failure(await nobody());
    expect(apiProblem(error)).toEqual({ kind: 'not_connected', code: 'ECONNREFUSED' });
    expect(outcomeOf(error)).toEqual({ kind: 'refused', problem: 'ECONNREFUSED' });
  });

  it('may have arrived when the connection breaks afterwards', async () => {
    const api = await serviceThat((request) => request.socket.resetAndDestroy());
    const error = await failure(api);
    expect(apiProblem(error)).toEqual({ kind: 'unknown', code: 'ECONNRESET' });
    expect(outcomeOf(error)).toEqual({ kind: 'unknown', problem: 'ECONNRESET' });
  });

  it.each([200, 502])(
    'may have arrived when the answer is a page with status %d',
    async (status) => {
      const api = await serviceThat((_, response) => {
        response.writeHead(status, { 'content-type': 'text/html' }).end('<h1>Bad Gateway</h1>');
      });
      const error = await failure(api);
      expect(error).toBeInstanceOf(HttpError);
      expect(apiProblem(error)).toEqual({ kind: 'unknown', code: 'no_answer' });
      expect(outcomeOf(error).kind).toBe('unknown');
    },
  );

  it.each(['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'ENETUNREACH', 'EHOSTUNREACH'])(
    'surely did not arrive after %s',
    (code) => {
      expect(apiProblem(broken(code))).toEqual({ kind: 'not_connected', code });
      expect(outcomeOf(broken(code)).kind).toBe('refused');
    },
  );

  it.each(['ECONNRESET', 'ETIMEDOUT', 'EPIPE', 'ERR_STREAM_PREMATURE_CLOSE', 'UND_ERR_SOCKET'])(
    'may have arrived after %s, and is never sent again blindly',
    (code) => {
      expect(apiProblem(broken(code))).toEqual({ kind: 'unknown', code });
      expect(outcomeOf(broken(code)).kind).toBe('unknown');
    },
  );

  it.each([new Error('Request to sendMessage timed out after 20 seconds'), null, 'ECONNREFUSED'])(
    'may have arrived when all we know is %s',
    (cause) => {
      expect(apiProblem(new HttpError('failed', cause))).toEqual({
        kind: 'unknown',
        code: 'no_answer',
      });
    },
  );
});

describe('a call that was answered', () => {
  it('with too many requests waits a second when it is not told how long', () => {
    const error = answered(429, 'Too Many Requests');
    expect(apiProblem(error)).toEqual({ kind: 'too_many', retryAfterSeconds: 1 });
    expect(outcomeOf(error)).toMatchObject({ kind: 'refused', retryAfterSeconds: 1 });
  });

  it.each([500, 502, 504])('with the service’s own error %d did not arrive', (code) => {
    const error = answered(code, 'Internal Server Error: chat not found');
    expect(apiProblem(error)).toEqual({ kind: 'service_error', code: String(code) });
    expect(outcomeOf(error)).toEqual({ kind: 'refused', problem: String(code) });
  });

  it('with words nobody knows is rejected, or gone when it is forbidden', () => {
    expect(apiProblem(answered(400, 'Bad Request: A_NEW_WORD'))).toEqual({
      kind: 'rejected',
      code: '400',
    });
    expect(apiProblem(answered(403, 'Forbidden: for a new reason'))).toEqual({
      kind: 'gone',
      code: 'forbidden',
    });
  });
});

it('a mistake of our own is named by its kind, never by its words, and nothing has arrived', () => {
  expect(apiProblem(new TypeError('Wren is missing'))).toEqual({
    kind: 'rejected',
    code: 'TypeError',
  });
  expect(apiProblem('Wren is missing')).toEqual({ kind: 'rejected', code: 'not_an_error' });
  // It kept the call from leaving, so the message may be tried again.
  expect(outcomeOf(new TypeError('Wren is missing'))).toEqual({
    kind: 'refused',
    problem: 'TypeError',
  });
});
