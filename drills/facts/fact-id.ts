import { type FactShape, parseShape } from './fact-shape.ts';

/**
 * One thing to know, as a stable string, its numbers in the order the card shows them: `word:14`, `add:3+4`,
 * `gap:7+10` (7 + ? = 10), `lead:7+10` (? + 7 = 10), `sub:9-4`, `less:10-7` (10 − ? = 7), `from:3-7` (? − 3 = 7), `double:7`,
 * `half:14`, `clock:0330` (hour 01 to 12, then minutes), `next:95+5` and `next:100-1` (one step of a count), `times:3x5`.
 * It is stored with every mark, so the spelling never changes.
 */
export type FactId = `${FactShape['kind']}:${string}`;

/**
 * Reads a stored fact. Null when it is spelled otherwise or makes no sense: every number is whole, 0 to 9999,
 * a difference and a gap are never negative, a half is of an even number, and a count moves and stays at 0 or above.
 *
 * @example
 * parseFactId('sub:4-9'); // null
 */
export function parseFactId(text: string): FactId | null {
  const shape = parseShape(text);
  return shape === null ? null : spell(shape);
}

/**
 * `a + b`. Throws RangeError, as all the constructors here do, for numbers that make no fact.
 *
 * @example
 * add(3, 4); // 'add:3+4'
 */
export function add(a: number, b: number): FactId {
  return checked({ kind: 'add', a, b });
}

/**
 * `a + ? = total`.
 *
 * @example
 * gap(7, 10); // 'gap:7+10'
 */
export function gap(a: number, total: number): FactId {
  return checked({ kind: 'gap', a, total });
}

/**
 * `? + b = total`.
 *
 * @example
 * lead(7, 10); // 'lead:7+10'
 */
export function lead(b: number, total: number): FactId {
  return checked({ kind: 'lead', b, total });
}

/**
 * `a − b`.
 *
 * @example
 * sub(9, 4); // 'sub:9-4'
 */
export function sub(a: number, b: number): FactId {
  return checked({ kind: 'sub', a, b });
}

/**
 * `a − ? = rest`.
 *
 * @example
 * less(10, 7); // 'less:10-7'
 */
export function less(a: number, rest: number): FactId {
  return checked({ kind: 'less', a, rest });
}

/**
 * `? − b = rest`.
 *
 * @example
 * from(3, 7); // 'from:3-7'
 */
export function from(b: number, rest: number): FactId {
  return checked({ kind: 'from', b, rest });
}

/**
 * `double n`.
 *
 * @example
 * double(7); // 'double:7'
 */
export function double(n: number): FactId {
  return checked({ kind: 'double', n });
}

/**
 * `half of n`; odd numbers are refused, since children meet them before fractions (common practice, no source).
 *
 * @example
 * half(14); // 'half:14'
 */
export function half(n: number): FactId {
  return checked({ kind: 'half', n });
}

/**
 * The time an analogue face shows: `hour` 1 to 12, `minute` 0 to 59.
 *
 * @example
 * clock(3, 30); // 'clock:0330'
 */
export function clock(hour: number, minute: number): FactId {
  return checked({ kind: 'clock', hour, minute });
}

/**
 * The number word of `n`: the child reads the word and says or writes the figures.
 *
 * @example
 * word(14); // 'word:14'
 */
export function word(n: number): FactId {
  return checked({ kind: 'word', n });
}

/**
 * One step of a count: what comes after `n`, `step` further; a negative step counts back.
 *
 * @example
 * next(100, -1); // 'next:100-1'
 */
export function next(n: number, step: number): FactId {
  return checked({ kind: 'next', n, step });
}

/**
 * `a × b`.
 *
 * @example
 * times(3, 5); // 'times:3x5'
 */
export function times(a: number, b: number): FactId {
  return checked({ kind: 'times', a, b });
}

function checked(shape: FactShape): FactId {
  const fact = spell(shape);
  if (parseShape(fact) === null) throw new RangeError(`not a fact: ${fact}`);
  return fact;
}

function spell(shape: FactShape): FactId {
  switch (shape.kind) {
    case 'add':
      return `add:${shape.a}+${shape.b}`;
    case 'gap':
      return `gap:${shape.a}+${shape.total}`;
    case 'lead':
      return `lead:${shape.b}+${shape.total}`;
    case 'sub':
      return `sub:${shape.a}-${shape.b}`;
    case 'less':
      return `less:${shape.a}-${shape.rest}`;
    case 'from':
      return `from:${shape.b}-${shape.rest}`;
    case 'times':
      return `times:${shape.a}x${shape.b}`;
    case 'next':
      return `next:${shape.n}${shape.step < 0 ? '-' : '+'}${Math.abs(shape.step)}`;
    case 'clock':
      return `clock:${twoDigits(shape.hour)}${twoDigits(shape.minute)}`;
    default:
      return `${shape.kind}:${shape.n}`;
  }
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
