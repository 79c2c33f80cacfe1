import {
  add,
  double,
  type FactId,
  from,
  gap,
  lead,
  less,
  parseFactId,
  sub,
  times,
} from './fact-id.ts';
import { type FactShape, shapeOf } from './fact-shape.ts';

/** A fact that a mark of another one says something about, and how much: more than 0, less than 1. */
export interface Relative {
  readonly fact: FactId;
  readonly share: number;
}

/**
 * How much one mark counts for a relative, where its own mark counts 1. All of it is our choice, no source: the nearer two
 * facts are to being the same question, the more.
 */
export const SHARES = {
  /** 3 + 4 and 4 + 3, 3 × 5 and 5 × 3. */
  turned: 0.5,
  /** 6 + 6 and double 6: the same question in other words. */
  tieAndDouble: 0.7,
  /** double 7 and 7 × 2. */
  doubleAndTwos: 0.5,
  /** double 7 and half of 14. */
  doubleAndHalf: 0.3,
  /** 7 + ? = 10 and ? + 7 = 10. */
  gapAndLead: 0.5,
  /** 7 + ? = 10 and 10 − 7: the same number is wanted. */
  gapAndTakeAway: 0.4,
  /** 10 − ? = 7 and 10 − 7; ? − 3 = 7 and 7 + 3. */
  missingAndPlain: 0.3,
  /** 10 − 3 and 10 − 7. */
  takeAwayPair: 0.2,
} as const;

/**
 * Which other facts a mark lends evidence to, and which share of it. A fact is never its own relative, and what it lends to
 * another it borrows from it in the same share. Words, clocks and steps of a count have none. Numbers stay within 0 to 9999.
 * Throws RangeError for a text that is no fact.
 *
 * @example
 * relativesOf('times:3x5'); // [{ fact: 'times:5x3', share: 0.5 }]
 */
export function relativesOf(fact: FactId): readonly Relative[] {
  return candidates(shapeOf(fact)).filter((each) => each.fact !== fact);
}

function candidates(shape: FactShape): Relative[] {
  switch (shape.kind) {
    case 'add':
      return relativesOfSum(shape.a, shape.b);
    case 'gap':
      return relativesOfMissingAddend(shape.a, shape.total, lead);
    case 'lead':
      return relativesOfMissingAddend(shape.b, shape.total, gap);
    case 'sub':
      return relativesOfTakeAway(shape.a, shape.b);
    case 'less':
      return [{ fact: sub(shape.a, shape.rest), share: SHARES.missingAndPlain }];
    case 'from':
      return [{ fact: add(shape.rest, shape.b), share: SHARES.missingAndPlain }];
    case 'double':
      return relativesOfDouble(shape.n);
    case 'half':
      return [{ fact: double(shape.n / 2), share: SHARES.doubleAndHalf }];
    case 'times':
      return relativesOfProduct(shape.a, shape.b);
    case 'word':
    case 'clock':
    case 'next':
      return [];
  }
}

function relativesOfSum(a: number, b: number): Relative[] {
  return [
    { fact: add(b, a), share: SHARES.turned },
    ...(a === b ? [{ fact: double(a), share: SHARES.tieAndDouble }] : []),
    { fact: from(b, a), share: SHARES.missingAndPlain },
  ];
}

function relativesOfMissingAddend(given: number, total: number, other: typeof gap): Relative[] {
  return [
    { fact: other(given, total), share: SHARES.gapAndLead },
    { fact: sub(total, given), share: SHARES.gapAndTakeAway },
  ];
}

function relativesOfTakeAway(a: number, b: number): Relative[] {
  return [
    { fact: sub(a, a - b), share: SHARES.takeAwayPair },
    { fact: gap(b, a), share: SHARES.gapAndTakeAway },
    { fact: lead(b, a), share: SHARES.gapAndTakeAway },
    { fact: less(a, b), share: SHARES.missingAndPlain },
  ];
}

function relativesOfDouble(n: number): Relative[] {
  const halved = parseFactId(`half:${2 * n}`);
  return [
    { fact: add(n, n), share: SHARES.tieAndDouble },
    { fact: times(n, 2), share: SHARES.doubleAndTwos },
    ...(halved === null ? [] : [{ fact: halved, share: SHARES.doubleAndHalf }]),
  ];
}

function relativesOfProduct(a: number, b: number): Relative[] {
  return [
    { fact: times(b, a), share: SHARES.turned },
    ...(b === 2 ? [{ fact: double(a), share: SHARES.doubleAndTwos }] : []),
  ];
}
