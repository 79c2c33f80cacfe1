import { describe, expect, test } from 'vitest';
import { answerOf, type FactId, faceOf, questionOf, RUNGS } from '../../../drills/index.ts';

describe('faceOf', () => {
  test.each<[FactId, string]>([
    ['add:3+4', '3 + 4'],
    ['gap:7+10', '7 + ? = 10'],
    ['sub:9-4', '9 \u2212 4'],
    ['double:7', 'double 7'],
    ['half:14', 'half of 14'],
  ])('%s shows as %j', (fact, text) => {
    expect(faceOf(fact)).toEqual({ kind: 'text', text });
    expect(questionOf(fact)).toBe(text);
  });

  test('a clock shows hands, not words', () => {
    expect(faceOf('clock:0330')).toEqual({ kind: 'clock', hour: 3, minute: 30 });
  });

  test('a clock in words never gives its answer', () => {
    expect(questionOf('clock:0330')).toBe('a clock');
  });

  test('a text that is no fact is refused', () => {
    expect(() => faceOf('half:7')).toThrow(RangeError);
    expect(() => answerOf('add:x')).toThrow(RangeError);
  });
});

describe('answerOf', () => {
  test.each<[FactId, string]>([
    ['add:3+4', '7'],
    ['add:0+0', '0'],
    ['gap:7+10', '3'],
    ['sub:9-4', '5'],
    ['double:7', '14'],
    ['half:14', '7'],
    ['clock:0330', 'half past three'],
  ])('the answer to %s is %s', (fact, answer) => {
    expect(answerOf(fact)).toBe(answer);
  });

  test('every card of every rung has a face, and an answer in digits or, for a clock, in words', () => {
    const facts = RUNGS.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : []));
    expect(facts.length).toBe(263);
    for (const fact of facts) {
      const digits = faceOf(fact).kind === 'text';
      expect(answerOf(fact)).toMatch(digits ? /^\d+$/ : /^(half past [a-z]+|[a-z]+ o\u2019clock)$/);
    }
  });
});
