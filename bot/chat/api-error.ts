import { GrammyError, HttpError } from 'grammy';

/** What went wrong with a call to the chat service, as far as we act on it. */
export type ApiProblem =
  | {
      readonly kind:
        | 'not_modified'
        | 'no_text'
        | 'no_caption'
        | 'not_editable'
        | 'bad_file'
        | 'query_too_old';
    }
  | { readonly kind: 'gone'; readonly code: string }
  | { readonly kind: 'too_many'; readonly retryAfterSeconds: number }
  | {
      readonly kind: 'service_error' | 'not_connected' | 'unknown' | 'rejected';
      readonly code: string;
    };

/** The service's own words, which "are subject to change": we look for the phrase, not the sentence. */
const PHRASES: readonly (readonly [RegExp, ApiProblem])[] = [
  [/message is not modified/i, { kind: 'not_modified' }],
  [/no text in the message to edit/i, { kind: 'no_text' }],
  [/no caption in the message to edit/i, { kind: 'no_caption' }],
  [
    /message to edit not found|message can't be edited|MESSAGE_ID_INVALID/i,
    { kind: 'not_editable' },
  ],
  [/query is too old|query ID is invalid/i, { kind: 'query_too_old' }],
  [/file identifier|FILE_REFERENCE|can't use file of type/i, { kind: 'bad_file' }],
  [/chat not found/i, { kind: 'gone', code: 'chat_not_found' }],
  [/blocked by the user/i, { kind: 'gone', code: 'blocked' }],
  [/user is deactivated/i, { kind: 'gone', code: 'deactivated' }],
  [/can't initiate conversation/i, { kind: 'gone', code: 'never_started' }],
];

/** Node's own codes for a connection that was never made: nothing can have arrived. */
const NEVER_CONNECTED = new Set([
  'ECONNREFUSED',
  'ENOTFOUND',
  'EAI_AGAIN',
  'ENETUNREACH',
  'EHOSTUNREACH',
]);

/**
 * Sorts a failed call. `unknown` means the request left and no proper answer came: it may have been carried out.
 */
export function apiProblem(error: unknown): ApiProblem {
  if (error instanceof GrammyError) return answeredNo(error);
  if (error instanceof HttpError) {
    const code = connectionCode(error.error);
    return NEVER_CONNECTED.has(code)
      ? { kind: 'not_connected', code }
      : { kind: 'unknown', code: code === '' ? 'no_answer' : code };
  }
  return { kind: 'rejected', code: error instanceof Error ? error.name : 'not_an_error' };
}

function answeredNo(error: GrammyError): ApiProblem {
  if (error.error_code === 429) {
    return { kind: 'too_many', retryAfterSeconds: error.parameters.retry_after ?? 1 };
  }
  if (error.error_code >= 500) return { kind: 'service_error', code: String(error.error_code) };
  const known = PHRASES.find(([phrase]) => phrase.test(error.description));
  if (known) return known[1];
  if (error.error_code === 403) return { kind: 'gone', code: 'forbidden' };
  return { kind: 'rejected', code: String(error.error_code) };
}

function connectionCode(cause: unknown): string {
  if (typeof cause === 'object' && cause !== null && 'code' in cause) return String(cause.code);
  return '';
}
