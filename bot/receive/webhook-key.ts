import { createHash, createHmac, timingSafeEqual } from 'node:crypto';

/** What only the chat service and we know of one bot's webhook: where its updates go, and the word that comes along. */
export interface WebhookKey {
  /** Like `/updates/` and 43 letters. */
  readonly path: string;
  /** Sent in the header {@link SECRET_HEADER} (Bot API, setWebhook: 1 to 256 of `A-Z a-z 0-9 _ -`). */
  readonly secret: string;
}

/** Bot API, setWebhook, `secret_token`. */
export const SECRET_HEADER = 'x-telegram-bot-api-secret-token';

/**
 * Path and secret of a bot's webhook. Both are drawn from the token, which is random and known to nobody else, by a keyed hash
 * (HMAC-SHA-256, RFC 2104): processes that receive for one bot agree on them without a setting, neither tells the token, neither
 * tells the other (a path stands in the logs of proxies), and a new token makes new ones.
 *
 * @example
 * webhookKey('9001:made-up').path.length; // 52
 */
export function webhookKey(token: string): WebhookKey {
  const draw = (what: string) => createHmac('sha256', token).update(what).digest('base64url');
  return { path: `/updates/${draw('webhook path')}`, secret: draw('webhook secret') };
}

/**
 * Whether a word is the secret, in a time that does not depend on how much of it is right: both are hashed to one length first.
 *
 * @example
 * isSecret('guess', webhookKey('9001:made-up').secret); // false
 */
export function isSecret(word: string | undefined, secret: string): boolean {
  return word !== undefined && timingSafeEqual(digest(word), digest(secret));
}

function digest(word: string): Buffer {
  return createHash('sha256').update(word).digest();
}
