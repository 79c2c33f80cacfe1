import { isIP } from 'node:net';

/** Every token this stand-in accepts begins so; no real token does, because real bot numbers are never 0. */
export const TOKEN_PREFIX = '0:rehearsal';

/** Refuses a token that could belong to a real bot. Throws an Error that does not repeat the token. */
export function requireRehearsalToken(token: string): void {
  if (!token.startsWith(TOKEN_PREFIX)) {
    throw new Error(
      `The rehearsal takes only made-up tokens that begin with "${TOKEN_PREFIX}". Never give it a real one.`,
    );
  }
  if (!/^[\w:-]+$/.test(token))
    throw new Error('A rehearsal token holds only letters, digits, "_", "-" and ":".');
}

/**
 * A bot's number, a colon and a long secret, perhaps with the quotation marks of a settings file; that secrets have 35
 * characters is from memory.
 */
const REAL_TOKEN = /^["']?[1-9]\d{4,}:[\w-]{30,}["']?$/;

/**
 * Refuses to start beside a real token, which a rehearsal has no use for. Throws an Error that names the setting and does
 * not repeat the token.
 */
export function requireNoRealToken(settings: Readonly<Record<string, string | undefined>>): void {
  const found = Object.entries(settings).find(([, value]) => REAL_TOKEN.test(value?.trim() ?? ''));
  if (found === undefined) return;
  throw new Error(
    `${found[0]} holds what looks like a real bot's token, and a rehearsal needs none. Unset it, or start the bot itself.`,
  );
}

/**
 * Whether a host name reaches this computer only.
 * Names other than "localhost" are not resolved and count as reachable from elsewhere.
 *
 * @example isLoopback('127.0.0.1') // true
 */
export function isLoopback(host: string): boolean {
  if (host === 'localhost' || host === '::1') return true;
  return isIP(host) === 4 && host.startsWith('127.');
}

/** Refuses to listen where other computers can reach, unless that was asked for. */
export function requireLoopback(host: string, allowRemote: boolean): void {
  if (allowRemote || isLoopback(host)) return;
  throw new Error(
    `The rehearsal listens on this computer only, and "${host}" is reachable from others. Pass allowRemote: true if you mean it.`,
  );
}
