/**
 * Why a request cannot be done. Closed on purpose: the bot translates each code to a plain reply in one place.
 *
 * - `not_found`: it does not exist, or it belongs to somebody else (the two are never told apart)
 * - `invalid`: the value is outside its allowed range
 * - `conflict`: it clashes with what is stored
 * - `expired`: the code's or the evening's time is over
 * - `used_up`: the code has no uses left
 * - `too_many`: it was tried too often; later it works again
 */
export type ErrorCode = 'not_found' | 'invalid' | 'conflict' | 'expired' | 'used_up' | 'too_many';

/** The one error the verbs of db/ throw on purpose. `what` names the thing, never a person. */
export class AppError extends Error {
  readonly code: ErrorCode;
  readonly what: string;

  constructor(code: ErrorCode, what: string) {
    super(`${code}: ${what}`);
    this.name = 'AppError';
    this.code = code;
    this.what = what;
  }
}
