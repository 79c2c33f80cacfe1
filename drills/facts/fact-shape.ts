import type { FactId } from './fact-id.ts';

/** A fact taken apart. `gap` asks for what is missing between `a` and `total`; `hour` runs from 1 to 12. */
export type FactShape =
  | { readonly kind: 'add'; readonly a: number; readonly b: number }
  | { readonly kind: 'gap'; readonly a: number; readonly total: number }
  | { readonly kind: 'sub'; readonly a: number; readonly b: number }
  | { readonly kind: 'double'; readonly n: number }
  | { readonly kind: 'half'; readonly n: number }
  | { readonly kind: 'clock'; readonly hour: number; readonly minute: number };

// A number has one spelling only (no leading zero), because the text is the key marks are stored under.
const SUM = /^(add|gap):(0|[1-9]\d{0,3})\+(0|[1-9]\d{0,3})$/;
const DIFFERENCE = /^sub:(0|[1-9]\d{0,3})-(0|[1-9]\d{0,3})$/;
const SINGLE = /^(double|half):(0|[1-9]\d{0,3})$/;
const CLOCK = /^clock:(0[1-9]|1[0-2])([0-5]\d)$/;

/** Takes a fact apart; null when the text is no fact or makes no sense (a negative answer, half of an odd number). */
export function parseShape(text: string): FactShape | null {
  return parseSum(text) ?? parseDifference(text) ?? parseSingle(text) ?? parseClock(text);
}

/** {@link parseShape} for a text that claims to be a fact. Throws RangeError when it is none. */
export function shapeOf(fact: FactId): FactShape {
  const shape = parseShape(fact);
  if (shape === null) throw new RangeError(`not a fact: ${fact}`);
  return shape;
}

function parseSum(text: string): FactShape | null {
  const match = SUM.exec(text);
  if (match === null) return null;
  const a = Number(match[2]);
  const second = Number(match[3]);
  if (match[1] === 'add') return { kind: 'add', a, b: second };
  return a <= second ? { kind: 'gap', a, total: second } : null;
}

function parseDifference(text: string): FactShape | null {
  const match = DIFFERENCE.exec(text);
  if (match === null) return null;
  const a = Number(match[1]);
  const b = Number(match[2]);
  return a >= b ? { kind: 'sub', a, b } : null;
}

function parseSingle(text: string): FactShape | null {
  const match = SINGLE.exec(text);
  if (match === null) return null;
  const n = Number(match[2]);
  if (match[1] === 'double') return { kind: 'double', n };
  return n % 2 === 0 ? { kind: 'half', n } : null;
}

function parseClock(text: string): FactShape | null {
  const match = CLOCK.exec(text);
  if (match === null) return null;
  return { kind: 'clock', hour: Number(match[1]), minute: Number(match[2]) };
}
