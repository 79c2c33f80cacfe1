// Written by `npm run texts` from the files in bot/texts/en. Do not edit.

/** Shown as it is. */
export type Shown = string | number;

/** No variables. */
export type None = Record<never, never>;

/** Every message and its variables; a number chooses a plural. */
export interface Messages {
  'words-minutes': { count: number };
}
