import { GrammyError } from 'grammy';
import { describe, expect, it } from 'vitest';
import { type ApiProblem, apiProblem } from '../../bot/chat/api-error.ts';
import { outcomeOf } from '../../bot/send/courier.ts';

/**
 * Source: Bot API server source, as of May 2026 (tdlib/telegram-bot-api at 01a3679, and tdlib/td under it): the envelope in
 * Query.h and the descriptions in Client.cpp, MessagesManager.cpp and FileManager.cpp, word for word.
 */
interface Answer {
  readonly code: number;
  readonly description: string;
  readonly problem: ApiProblem;
  readonly outcome: string;
}

const gone = (code: string) => ({ kind: 'gone', code }) as const;
const rejected = (code: string) => ({ kind: 'rejected', code }) as const;

const FORBIDDEN: readonly [string, string][] = [
  ['Forbidden: bot was blocked by the user', 'blocked'],
  ['Forbidden: user is deactivated', 'deactivated'],
  ["Forbidden: bot can't initiate conversation with a user", 'never_started'],
  ['Forbidden: bot was kicked from the group chat', 'forbidden'],
  ['Forbidden: bot was kicked from the supergroup chat', 'forbidden'],
  ['Forbidden: bot is not a member of the supergroup chat', 'forbidden'],
  ['Forbidden: the group chat was deleted', 'forbidden'],
];

const ACTED_ON: readonly [string, ApiProblem][] = [
  [
    'Bad Request: message is not modified: specified new message content and reply markup are exactly the same as a current content and reply markup of the message',
    { kind: 'not_modified' },
  ],
  [
    'Bad Request: query is too old and response timeout expired or query ID is invalid',
    { kind: 'query_too_old' },
  ],
  ['Bad Request: message to edit not found', { kind: 'not_editable' }],
  ["Bad Request: message can't be edited", { kind: 'not_editable' }],
  ['Bad Request: there is no text in the message to edit', { kind: 'no_text' }],
  ['Bad Request: there is no caption in the message to edit', { kind: 'no_caption' }],
  ['Bad Request: wrong file identifier/HTTP URL specified', { kind: 'bad_file' }],
  [
    'Bad Request: wrong remote file identifier specified: Wrong string length',
    { kind: 'bad_file' },
  ],
  [
    'Bad Request: wrong remote file identifier specified: Wrong character in the string',
    { kind: 'bad_file' },
  ],
  [
    "Bad Request: wrong remote file identifier specified: can't unserialize it",
    { kind: 'bad_file' },
  ],
  ["Bad Request: can't use file of type Photo as Document", { kind: 'bad_file' }],
  ['Bad Request: chat not found', gone('chat_not_found')],
];

const OUR_MISTAKES: readonly [number, string][] = [
  [400, 'Bad Request: message text is empty'],
  [400, 'Bad Request: message is too long'],
  [400, 'Bad Request: message caption is too long'],
  [400, 'Bad Request: text is too long'],
  [400, 'Bad Request: message to delete not found'],
  [400, "Bad Request: message can't be deleted for everyone"],
  [400, "Bad Request: message media can't be edited"],
  [400, 'Bad Request: BUTTON_DATA_INVALID'],
  [400, 'Bad Request: reply markup is too long'],
  [
    400,
    "Bad Request: can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard",
  ],
  [400, 'Bad Request: PHOTO_INVALID_DIMENSIONS'],
  [
    400,
    'Bad Request: file of size 10485761 bytes is too big for a photo; the maximum size is 10485760 bytes',
  ],
  [400, 'Bad Request: file must be non-empty'],
  [400, 'Bad Request: there is no photo in the request'],
  [400, 'Bad Request: CHAT_WRITE_FORBIDDEN'],
  [401, 'Unauthorized'],
  [401, 'Unauthorized: invalid token specified'],
  [404, 'Not Found'],
  [404, 'Not Found: method not found'],
  [
    409,
    'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
  ],
  [
    409,
    "Conflict: can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first",
  ],
  [413, 'Request Entity Too Large'],
];

const ANSWERS: readonly Answer[] = [
  ...FORBIDDEN.map(([description, code]) => ({
    code: 403,
    description,
    problem: gone(code),
    outcome: 'gone',
  })),
  ...ACTED_ON.map(([description, problem]) => ({
    code: 400,
    description,
    problem,
    outcome: problem.kind === 'gone' ? 'gone' : 'rejected',
  })),
  ...OUR_MISTAKES.map(([code, description]) => ({
    code,
    description,
    problem: rejected(String(code)),
    outcome: 'rejected',
  })),
];

function answer(code: number, description: string, parameters = {}): GrammyError {
  const envelope = { ok: false, error_code: code, description, parameters } as const;
  return new GrammyError('Call failed', envelope, 'sendMessage', {});
}

describe('an answer of the service', () => {
  it.each(ANSWERS)(
    '$code “$description” is understood',
    ({ code, description, problem, outcome }) => {
      expect(apiProblem(answer(code, description))).toEqual(problem);
      // What was answered with a no did not arrive, but asking again would not help either.
      expect(outcomeOf(answer(code, description)).kind).toBe(outcome);
    },
  );

  it('that asks us to wait says for how long', () => {
    const error = answer(429, 'Too Many Requests: retry after 17', { retry_after: 17 });
    expect(apiProblem(error)).toEqual({ kind: 'too_many', retryAfterSeconds: 17 });
    expect(outcomeOf(error)).toEqual({
      kind: 'refused',
      problem: 'too_many',
      retryAfterSeconds: 17,
    });
  });
});
