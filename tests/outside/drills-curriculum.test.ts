import { describe, expect, test } from 'vitest';
import { answerOf, type FactId, faceOf, type RungId, rungById } from '../../drills/index.ts';

// Sources: Common Core State Standards for Mathematics (NGA Center for Best Practices and CCSSO, 2010):
//   K.OA.A.4   "For any number from 1 to 9, find the number that makes 10 when added to the given number"
//   K.OA.A.5   "Fluently add and subtract within 5"
//   1.OA.C.6   "... demonstrating fluency for addition and subtraction within 10"
//   1.MD.B.3   "Tell and write time in hours and half-hours using analog and digital clocks"
//   2.OA.B.2   "By end of Grade 2, know from memory all sums of two one-digit numbers"
//   2.MD.C.7   "Tell and write time from analog and digital clocks to the nearest five minutes"
// Mathematics guidance key stages 1 and 2 (Department for Education, England, 2020): 2AS-1 "add and subtract across 10",
//   3NF-1 facts "that bridge 10". Annual Teaching Plan 2022 (Department of Basic Education, South Africa): number names to 200.
// The statements give ranges; the sizes are counted from them: ordered pairs of whole numbers from 0 up with a sum
// of at most n number (n + 1)(n + 2) / 2, and so do differences that start from at most n.

function factsOf(id: RungId): readonly FactId[] {
  const rung = rungById(id);
  if (rung?.kind !== 'facts') throw new Error(`${id} has no facts`);
  return rung.facts;
}

const numbers = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);

describe('the published ranges', () => {
  test.each<[RungId, number]>([
    ['bonds.within5', 21],
    ['bonds.to10', 66],
    ['bonds.to20', 231],
    ['bonds.bridging', 36],
    ['takeaway.within5', 21],
    ['takeaway.to10', 66],
    ['takeaway.to20', 231],
    ['takeaway.bridging', 36],
    ['bonds.make10', 11],
    ['bonds.make20', 21],
    ['bonds.anygap20', 2 * 231],
    ['takeaway.anygap20', 2 * 231],
    ['clock.oclock', 12],
    ['clock.half', 12],
    ['clock.mixed', 24],
    ['clock.quarters', 48],
    ['clock.all', 144],
    ['words.to20', 21],
    ['words.to200', 201],
  ])('%s holds %d facts', (id, size) => {
    expect(new Set(factsOf(id)).size).toBe(size);
  });

  test.each<[RungId, string, number]>([
    ['bonds.within5', '+', 5],
    ['bonds.to10', '+', 10],
    ['bonds.to20', '+', 20],
    ['takeaway.within5', '\u2212', 5],
    ['takeaway.to10', '\u2212', 10],
    ['takeaway.to20', '\u2212', 20],
  ])('%s is every whole-number card "a %s b" within %d', (id, sign, limit) => {
    const expected: [string, string][] = [];
    for (const a of numbers(0, limit)) {
      for (const b of numbers(0, limit)) {
        if (sign === '+' && a + b <= limit) expected.push([`${a} + ${b}`, String(a + b)]);
        if (sign !== '+' && a >= b) expected.push([`${a} ${sign} ${b}`, String(a - b)]);
      }
    }
    expect(cardsOf(id).toSorted()).toEqual(expected.toSorted());
  });

  test.each<[RungId, number]>([
    ['bonds.make10', 10],
    ['bonds.make20', 20],
  ])('%s covers every number from 1 up, and 0 and the whole besides', (id, total) => {
    const expected = numbers(0, total).map((a) => [`${a} + ? = ${total}`, String(total - a)]);
    expect(cardsOf(id)).toEqual(expected);
    expect(factsOf('bonds.make10').slice(1, -1)).toHaveLength(9);
  });
});

describe('parts of the published ranges', () => {
  test('without order, 36 sums are within 10 and 121 within 20', () => {
    const unordered = (id: RungId) =>
      new Set(factsOf(id).map((fact) => fact.match(/\d+/g)?.toSorted().join())).size;
    expect(unordered('bonds.to10')).toBe(36);
    expect(unordered('bonds.to20')).toBe(121);
  });

  test('a hundred sums of two one-digit numbers: 64 to 10 and the 36 that bridge', () => {
    const within20 = factsOf('bonds.to20').filter((fact) => /^add:\d\+\d$/.test(fact));
    const bridging = factsOf('bonds.bridging');
    expect(within20).toHaveLength(100);
    expect(within20.filter((fact) => Number(answerOf(fact)) <= 10)).toHaveLength(64);
    expect(within20.filter((fact) => Number(answerOf(fact)) > 10).toSorted()).toEqual(
      bridging.toSorted(),
    );
  });

  test('121 sums of numbers to ten: 66 within 10 and 55 across', () => {
    const grid = factsOf('bonds.to20').filter((fact) => /^add:(\d|10)\+(\d|10)$/.test(fact));
    const across = grid.filter((fact) => Number(answerOf(fact)) > 10);
    expect([grid.length, grid.length - across.length, across.length]).toEqual([121, 66, 55]);
  });

  test('taking away across 10 is the mirror of adding across 10', () => {
    const sums = cardsOf('bonds.bridging').map(([card, sum]) => `${card} = ${sum}`);
    const mirrored = cardsOf('takeaway.bridging').map(([card, rest]) => {
      const [whole, part] = (card ?? '').split(' \u2212 ');
      return `${rest} + ${part} = ${whole}`;
    });
    expect(mirrored.toSorted()).toEqual(sums.toSorted());
  });
});

describe('the clock', () => {
  test.each<[RungId, number]>([
    ['clock.oclock', 60],
    ['clock.mixed', 30],
    ['clock.quarters', 15],
    ['clock.all', 5],
  ])('%s is every time of the dial in steps of %d minutes, once', (id, step) => {
    const times = factsOf(id).map((fact) => {
      const face = faceOf(fact);
      return face.kind === 'clock' ? face.hour * 60 + face.minute : Number.NaN;
    });
    const expected = Array.from({ length: 720 / step }, (_, index) => 60 + index * step);
    expect(times.toSorted((a, b) => a - b)).toEqual(expected);
  });

  test('five-minute times are the quarters, those past and those to', () => {
    const parts: RungId[] = ['clock.quarters', 'clock.fivepast', 'clock.fiveto'];
    expect(parts.flatMap(factsOf).toSorted()).toEqual(factsOf('clock.all').toSorted());
  });
});

describe('doubles and halves', () => {
  // Source: Common Core 2.OA.C.3, even numbers up to 20 "as a sum of two equal addends".
  test('doubles to ten and halves to twenty ask the same ten pairs from both sides', () => {
    expect(cardsOf('doubles.to10')).toEqual(
      numbers(1, 10).map((n) => [`double ${n}`, String(2 * n)]),
    );
    expect(cardsOf('halves.to20')).toEqual(
      numbers(1, 10).map((n) => [`half of ${2 * n}`, String(n)]),
    );
  });

  // Common practice, no source: no half of an odd number, but of an odd ten.
  test('half of thirty is fifteen', () => {
    expect(cardsOf('halves.tens')).toContainEqual(['half of 30', '15']);
    expect(cardsOf('doubles.tens').at(-1)).toEqual(['double 50', '100']);
  });
});

describe('times tables', () => {
  // Source: National Curriculum in England (2013), Year 2: the 2, 5 and 10 multiplication tables. To ten times: common practice.
  test('each table is said from one times to ten times', () => {
    for (const [id, table] of [
      ['times.twos', 2],
      ['times.fives', 5],
      ['times.tens', 10],
    ] as const) {
      expect(cardsOf(id)).toEqual(
        numbers(1, 10).map((n) => [`${n} \u00d7 ${table}`, String(n * table)]),
      );
    }
    expect(factsOf('times.mixed')).toHaveLength(30);
  });
});

function cardsOf(id: RungId): string[][] {
  return factsOf(id).map((fact) => {
    const face = faceOf(fact);
    return [face.kind === 'text' ? face.text : 'a clock', answerOf(fact)];
  });
}
