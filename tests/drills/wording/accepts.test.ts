import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { accepts, answerOf, type FactId, type Language, RUNGS } from '../../../drills/index.ts';
import { EVERY_LANGUAGE } from './every-language.ts';

const FACTS: readonly FactId[] = [
  'word:14',
  'add:3+4',
  'gap:7+10',
  'lead:7+10',
  'sub:9-4',
  'less:10-7',
  'from:3-7',
  'double:7',
  'half:14',
  'clock:0330',
  'clock:0307',
  'next:995+5',
  'times:99x99',
];

describe('a right answer', () => {
  test.each<[FactId, string, Language]>([
    ['double:7', '14', 'en'],
    ['double:7', ' 14. ', 'en'],
    ['double:7', '014', 'en'],
    ['double:7', 'Fourteen', 'en'],
    ['double:7', 'veertien', 'af'],
    ['double:7', 'catorce', 'es'],
    ['double:7', 'Vierzehn!', 'de'],
    ['double:7', 'quatorze', 'fr'],
    ['sub:9-9', 'nought', 'en'],
    ['next:995+5', '1000', 'en'],
    ['next:995+5', '1 000', 'af'],
    ['next:995+5', '1\u202f000', 'fr'],
    ['next:995+5', '1.000', 'de'],
    ['next:995+5', '1,000', 'en'],
    ['next:995+5', 'a thousand', 'en'],
    ['times:3x5', '15', 'en'],
    ['word:14', '14', 'fr'],
    ['clock:0330', 'half past three', 'en'],
    ['clock:0330', 'halb vier', 'de'],
    ['clock:0330', '3:30', 'de'],
    ['clock:0330', '3.30', 'en'],
    ['clock:0330', '03:30', 'af'],
    ['clock:0330', '3h30', 'fr'],
    ['clock:0330', '3 h 30', 'fr'],
    ['clock:0330', '3:30 Uhr', 'de'],
    ['clock:0300', '3h', 'fr'],
    ['clock:1200', 'twelve o\u2019clock', 'en'],
    ['clock:1200', "12 o'clock", 'en'],
    ['clock:0307', '3:07', 'en'],
  ])('%s is answered by %j in %s', (fact, text, language) => {
    expect(accepts(fact, text, language)).toBe(true);
  });
});

describe('a wrong answer', () => {
  test.each<[FactId, string, Language, string]>([
    ['double:7', '', 'en', 'nothing'],
    ['double:7', '15', 'en', 'another number'],
    ['double:7', '-14', 'en', 'a number with a sign'],
    ['double:7', '\u221214', 'en', 'a number with a sign'],
    ['double:7', '1 4', 'en', 'figures apart'],
    ['double:7', '14.0', 'en', 'a decimal'],
    ['double:7', '1e1', 'en', 'a power'],
    ['double:7', '0x0e', 'en', 'figures of a computer'],
    ['double:7', 'vierzehn', 'en', 'a word of another language'],
    ['double:7', '14 or 15', 'en', 'two answers'],
    ['word:14', 'fourteen', 'en', 'the word on the card itself'],
    ['clock:0330', '15:30', 'en', 'an hour that is not on the dial'],
    ['clock:1230', '0:30', 'en', 'an hour that is not on the dial'],
    ['clock:0330', '3:3', 'en', 'half the minutes'],
    ['clock:0330', '330', 'en', 'a plain number'],
    ['clock:0330', '3', 'en', 'the hour alone'],
    ['clock:0330', 'halb drei', 'de', 'the half hour of the hour before'],
    ['clock:0330', 'halfdrie', 'af', 'the half hour of the hour before'],
    ['clock:0307', 'three o\u2019clock', 'en', 'the nearest time that has a phrase'],
  ])('%s is not answered by %j in %s: %s', (fact, text, language) => {
    expect(accepts(fact, text, language)).toBe(false);
  });
});

describe('accepts', () => {
  test('every card of every rung accepts its own answer in every language', () => {
    const facts = RUNGS.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : []));
    for (const language of EVERY_LANGUAGE) {
      const refused = facts.filter((fact) => !accepts(fact, answerOf(fact, language), language));
      expect(refused).toEqual([]);
    }
  });

  test('no text makes it throw', () => {
    const texts = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.string({ unit: fc.constantFrom(..."0123456789 -\u2212:.h,'\u2019half"), maxLength: 120 }),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...FACTS),
        texts,
        fc.constantFrom(...EVERY_LANGUAGE),
        (fact, text, language) => {
          expect([true, false]).toContain(accepts(fact, text, language));
        },
      ),
      { numRuns: 500 },
    );
  });

  test('figures are right exactly when they are the answer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 40 }), (n, said) => {
        expect(accepts(`double:${n}`, String(said), 'en')).toBe(said === 2 * n);
      }),
    );
  });

  test('a text that is no fact is refused', () => {
    expect(() => accepts('half:7', '3', 'en')).toThrow(RangeError);
  });
});

test('the example holds', () => {
  expect(accepts('clock:0330', 'half 3', 'en')).toBe(true);
});
