/**
 * How many codes that open nothing may be tried. The numbers are our own choice.
 *
 * A code has 128 random bits (`db/codes.ts`). Against a million open codes (2^20) one try hits with a chance of 2^-108. A million
 * accounts (2^20) that each try ten an hour make 2^36.4 tries a year (2^13.1 hours, 2^3.3 tries), together a chance of 2^-71.6
 * a year. So it is the length of the codes that keeps them safe. The limit keeps guessing cheap for us and seen by the operator.
 */
export const GUESS_LIMITS = {
  /** Misses older than this are forgotten. */
  minutes: 60,
  /** Misses one account may have in that time. Somebody with an old slip in hand needs two or three. */
  ofOne: 10,
  /** From this many misses of all accounts in that time on, each may have `ofOneWhenBusy` only. Nobody is locked out by it. */
  ofAll: 300,
  ofOneWhenBusy: 3,
} as const;
