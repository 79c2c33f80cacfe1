import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { SECRET_HEADER, webhookKey } from '../../bot/receive/webhook-key.ts';

const TOKEN = '9001:AAH-made_up-made_up-made_up-made_up';

/** HMAC as RFC 2104 defines it: H(K xor opad, H(K xor ipad, text)), with blocks of 64 bytes, here of SHA-256. */
function hmac(key: string, text: string): Buffer {
  const padded = Buffer.alloc(64);
  padded.write(key);
  const mask = (byte: number) => Buffer.from(padded.map((own) => own ^ byte));
  const hash = (...parts: readonly (Buffer | string)[]) =>
    parts.reduce((sum, part) => sum.update(part), createHash('sha256')).digest();
  return hash(mask(0x5c), hash(mask(0x36), text));
}

describe('a webhook’s path and secret, by published standards', () => {
  it('this test’s own HMAC gives the value of RFC 4231, test case 2', () => {
    expect(hmac('Jefe', 'what do ya want for nothing?').toString('hex')).toBe(
      '5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843',
    );
  });

  it('are keyed hashes of the token (RFC 2104), written as base64url (RFC 4648, section 5)', () => {
    const { path, secret } = webhookKey(TOKEN);
    expect(Buffer.from(secret, 'base64url')).toEqual(hmac(TOKEN, 'webhook secret'));
    expect(Buffer.from(path.replace('/updates/', ''), 'base64url')).toEqual(
      hmac(TOKEN, 'webhook path'),
    );
  });

  it('are what the service takes', () => {
    const { path, secret } = webhookKey(TOKEN);
    // Bot API, setWebhook, secret_token: "1-256 characters. Only characters A-Z, a-z, 0-9, _ and - are allowed."
    expect(secret).toMatch(/^[A-Za-z0-9_-]{1,256}$/);
    expect(SECRET_HEADER).toBe('X-Telegram-Bot-Api-Secret-Token'.toLowerCase());
    // RFC 3986, section 3.3: nothing of the path has to be escaped.
    expect(path).toMatch(/^(\/[A-Za-z0-9\-._~]+)+$/);
  });
});
