import { describe, expect, test } from 'vitest';
import { answerOf, faceOf, type RungId, rungById } from '../../drills/index.ts';

// Source: Common Core State Standards for Mathematics (NGA Center for Best Practices and CCSSO, 2010).
//   K.OA.A.4   "For any number from 1 to 9, find the number that makes 10 when added to the given number"
//   K.OA.A.5   "Fluently add and subtract within 5"
//   1.OA.C.6   "... demonstrating fluency for addition and subtraction within 10"
//   1.MD.B.3   "Tell and write time in hours and half-hours using analog and digital clocks"
// The statements give ranges; the sizes are counted from them: ordered pairs of whole numbers from 0 up with a sum
// of at most n number (n + 1)(n + 2) / 2, and so do differences that start from at most n.

function factsOf(id: RungId) {
  const rung = rungById(id);
  if (rung?.kind !== 'facts') throw new Error(`${id} has no facts`);
  return rung.facts;
}

describe('the published ranges', () => {
  test.each<[RungId, number]>([
    ['bonds.within5', 21],
    ['bonds.to10', 66],
    ['takeaway.within5', 21],
    ['takeaway.to10', 66],
    ['bonds.make10', 11],
    ['clock.oclock', 12],
    ['clock.half', 12],
    ['clock.mixed', 24],
  ])('%s holds %d facts', (id, size) => {
    expect(new Set(factsOf(id)).size).toBe(size);
  });

  test.each<[RungId, string, number]>([
    ['bonds.within5', '+', 5],
    ['bonds.to10', '+', 10],
    ['takeaway.within5', '\u2212', 5],
    ['takeaway.to10', '\u2212', 10],
  ])('%s is every whole-number card "a %s b" within %d', (id, sign, limit) => {
    const cards = factsOf(id).map((fact) => [textOf(fact), answerOf(fact)]);
    const expected: [string, string][] = [];
    for (let a = 0; a <= limit; a += 1) {
      for (let b = 0; b <= limit; b += 1) {
        if (sign === '+' && a + b <= limit) expected.push([`${a} + ${b}`, String(a + b)]);
        if (sign !== '+' && a >= b) expected.push([`${a} ${sign} ${b}`, String(a - b)]);
      }
    }
    expect(cards.toSorted()).toEqual(expected.toSorted());
  });

  test('making ten covers every number from 1 to 9, and 0 and 10 besides', () => {
    const cards = factsOf('bonds.make10').map((fact) => `${textOf(fact)}: ${answerOf(fact)}`);
    const expected = Array.from({ length: 11 }, (_, a) => `${a} + ? = 10: ${10 - a}`);
    expect(cards.toSorted()).toEqual(expected.toSorted());
  });

  test('the mixed clock is every hour and half-hour of the dial, once', () => {
    const times = factsOf('clock.mixed').map((fact) => {
      const face = faceOf(fact);
      return face.kind === 'clock' ? face.hour * 60 + face.minute : Number.NaN;
    });
    const expected = Array.from({ length: 24 }, (_, index) => 60 + index * 30);
    expect(times.toSorted((a, b) => a - b)).toEqual(expected);
  });
});

describe('doubles and halves', () => {
  // Source: Common Core 2.OA.C.3, even numbers up to 20 "as a sum of two equal addends".
  test('doubles to ten and halves to twenty ask the same ten pairs from both sides', () => {
    const doubles = factsOf('doubles.to10').map((fact) => `${textOf(fact)} ${answerOf(fact)}`);
    const halves = factsOf('halves.to20').map((fact) => `${textOf(fact)} ${answerOf(fact)}`);
    const numbers = Array.from({ length: 10 }, (_, index) => index + 1);
    expect(doubles).toEqual(numbers.map((n) => `double ${n} ${2 * n}`));
    expect(halves).toEqual(numbers.map((n) => `half of ${2 * n} ${n}`));
  });
});

function textOf(fact: Parameters<typeof faceOf>[0]): string {
  const face = faceOf(fact);
  return face.kind === 'text' ? face.text : 'a clock';
}
