import { cleanNickname, lengthOf, NICKNAME_LENGTH } from './nickname.ts';

/** A line of a pasted roster that cannot be taken. `line` counts from 1, blank lines included. */
export type RosterProblem =
  | {
      readonly kind: 'long';
      readonly line: number;
      readonly value: string;
      readonly length: number;
    }
  | {
      readonly kind: 'twice';
      readonly line: number;
      readonly value: string;
      readonly firstLine: number;
    }
  | { readonly kind: 'present'; readonly line: number; readonly value: string };

/** Nicknames in order, or what is wrong with them. Nothing is taken while there is a problem. */
export interface ParsedRoster {
  readonly nicknames: readonly string[];
  readonly problems: readonly RosterProblem[];
}

/**
 * Reads nicknames, one a line. Blank lines are passed over; capitals do not make a name different.
 *
 * @example
 * parseRoster('Wren\n\nOtto', []); // { nicknames: ['Wren', 'Otto'], problems: [] }
 */
export function parseRoster(text: string, present: readonly string[]): ParsedRoster {
  const entries = text.split(/\r\n|\r|\n/u).map((raw, index) => ({ line: index + 1, raw }));
  return readRoster(entries, present);
}

/** The same for nicknames whose lines are known, as from a column of a table. */
export function readRoster(
  entries: readonly { readonly line: number; readonly raw: string }[],
  present: readonly string[],
): ParsedRoster {
  const known = new Set(present.map((nickname) => nickname.toLowerCase()));
  const seen = new Map<string, number>();
  const nicknames: string[] = [];
  const problems: RosterProblem[] = [];
  for (const { line, raw } of entries) {
    const value = cleanNickname(raw);
    if (value === '') continue;
    const key = value.toLowerCase();
    const firstLine = seen.get(key);
    const length = lengthOf(value);
    if (length > NICKNAME_LENGTH) problems.push({ kind: 'long', line, value, length });
    else if (firstLine !== undefined) problems.push({ kind: 'twice', line, value, firstLine });
    else if (known.has(key)) problems.push({ kind: 'present', line, value });
    else nicknames.push(value);
    if (firstLine === undefined) seen.set(key, line);
  }
  return { nicknames, problems };
}
