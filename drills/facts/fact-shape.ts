import type { FactId } from './fact-id.ts';

/**
 * A fact taken apart. `gap` (a + ? = total), `lead` (? + b = total), `less` (a − ? = rest) and `from` (? − b = rest) ask for
 * the number that is missing; `hour` runs from 1 to 12; `step` of a count is negative when counting back.
 */
export type FactShape =
  | { readonly kind: 'word'; readonly n: number }
  | { readonly kind: 'add'; readonly a: number; readonly b: number }
  | { readonly kind: 'gap'; readonly a: number; readonly total: number }
  | { readonly kind: 'lead'; readonly b: number; readonly total: number }
  | { readonly kind: 'sub'; readonly a: number; readonly b: number }
  | { readonly kind: 'less'; readonly a: number; readonly rest: number }
  | { readonly kind: 'from'; readonly b: number; readonly rest: number }
  | { readonly kind: 'double'; readonly n: number }
  | { readonly kind: 'half'; readonly n: number }
  | { readonly kind: 'clock'; readonly hour: number; readonly minute: number }
  | { readonly kind: 'next'; readonly n: number; readonly step: number }
  | { readonly kind: 'times'; readonly a: number; readonly b: number };

// A number has one spelling only (no leading zero), because the text is the key marks are stored under.
const PAIR = /^(add|gap|lead|sub|less|from|next|times):(0|[1-9]\d{0,3})([-+x])(0|[1-9]\d{0,3})$/;
const SINGLE = /^(word|double|half):(0|[1-9]\d{0,3})$/;
const CLOCK = /^clock:(0[1-9]|1[0-2])([0-5]\d)$/;

/**
 * Takes a fact apart; null when the text is no fact or makes no sense (a negative answer, half of an odd number).
 *
 * @example
 * parseShape('next:100-1'); // { kind: 'next', n: 100, step: -1 }
 */
export function parseShape(text: string): FactShape | null {
  return parsePair(text) ?? parseSingle(text) ?? parseClock(text);
}

/** {@link parseShape} for a text that claims to be a fact. Throws RangeError when it is none. */
export function shapeOf(fact: FactId): FactShape {
  const shape = parseShape(fact);
  if (shape === null) throw new RangeError(`not a fact: ${fact}`);
  return shape;
}

function parsePair(text: string): FactShape | null {
  const match = PAIR.exec(text);
  if (match === null) return null;
  const first = Number(match[2]);
  const second = Number(match[4]);
  switch (`${match[1]}${match[3]}`) {
    case 'add+':
      return { kind: 'add', a: first, b: second };
    case 'gap+':
      return first <= second ? { kind: 'gap', a: first, total: second } : null;
    case 'lead+':
      return first <= second ? { kind: 'lead', b: first, total: second } : null;
    case 'sub-':
      return first >= second ? { kind: 'sub', a: first, b: second } : null;
    case 'less-':
      return first >= second ? { kind: 'less', a: first, rest: second } : null;
    case 'from-':
      return { kind: 'from', b: first, rest: second };
    case 'next+':
      return second > 0 ? { kind: 'next', n: first, step: second } : null;
    case 'next-':
      return second > 0 && first >= second ? { kind: 'next', n: first, step: -second } : null;
    case 'timesx':
      return { kind: 'times', a: first, b: second };
    default:
      return null;
  }
}

function parseSingle(text: string): FactShape | null {
  const match = SINGLE.exec(text);
  if (match === null) return null;
  const n = Number(match[2]);
  if (match[1] === 'word') return { kind: 'word', n };
  if (match[1] === 'double') return { kind: 'double', n };
  return n % 2 === 0 ? { kind: 'half', n } : null;
}

function parseClock(text: string): FactShape | null {
  const match = CLOCK.exec(text);
  if (match === null) return null;
  return { kind: 'clock', hour: Number(match[1]), minute: Number(match[2]) };
}
