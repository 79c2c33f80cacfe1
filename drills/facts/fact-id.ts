import { type FactShape, parseShape } from './fact-shape.ts';

/**
 * One thing to know, as a stable string: `add:3+4`, `gap:7+10` (7 + ? = 10), `sub:9-4`, `double:7`,
 * `half:14`, `clock:0330` (hour 01 to 12, then minutes). It is stored with every mark, so the spelling never changes.
 */
export type FactId = `${'add' | 'gap' | 'sub' | 'double' | 'half' | 'clock'}:${string}`;

/**
 * Reads a stored fact. Null when it is spelled otherwise or makes no sense: every number is whole, 0 to 9999,
 * a difference and a gap are never negative, and a half is of an even number.
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
 * `a − b`.
 *
 * @example
 * sub(9, 4); // 'sub:9-4'
 */
export function sub(a: number, b: number): FactId {
  return checked({ kind: 'sub', a, b });
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
    case 'sub':
      return `sub:${shape.a}-${shape.b}`;
    case 'clock':
      return `clock:${twoDigits(shape.hour)}${twoDigits(shape.minute)}`;
    default:
      return `${shape.kind}:${shape.n}`;
  }
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
