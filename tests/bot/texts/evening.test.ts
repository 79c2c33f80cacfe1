import { describe, expect, it } from 'vitest';
import { cardLabel, partInWords, solved } from '../../../bot/texts/cards.ts';
import * as texts from '../../../bot/texts/evening.ts';
import { storedDay } from '../../../db/index.ts';
import { RUNGS } from '../../../drills/index.ts';
import {
  bonds,
  clocks,
  finished,
  fives,
  fullPart,
  gaps,
  scored,
  view,
} from '../support/evening.ts';

describe('the message of an evening', () => {
  it('says who, when, how long, what, and which pages', () => {
    expect(texts.offer(view()).text).toBe(
      'Wren · Tuesday\nAbout 3 minutes: adding within 10, clock (half past) and counting in fives to 200.\nThen Pebble Path, pages 14 and 15.',
    );
  });

  it('has no page line without a workbook', () => {
    expect(texts.offer(view({ book: null })).text).not.toContain('Then');
  });

  it('names a rung once, even when two parts practise it', () => {
    const drill = { version: 1, parts: [bonds, bonds] } as const;
    expect(texts.offer(view({ drill })).text).toContain(': adding within 10.');
  });

  it('names the weekday of its own day, whatever day it is read on', () => {
    expect(texts.heading(view({ day: storedDay('2026-09-13') })).text).toBe('Wren · Sunday');
  });

  it('is the same in the nudge and the reminder, with one more line', () => {
    const offer = texts.offer(view()).text;
    for (const second of [texts.nudge(view()), texts.reminder(view())]) {
      expect(second.text.startsWith(`${offer}\n`)).toBe(true);
      expect(second.text.split('\n')).toHaveLength(4);
    }
  });
});

describe('a part', () => {
  it('says its place, its pace, and no hurry', () => {
    expect(texts.partTask(view({ started: true }), 0).text).toBe(
      'Wren · Tuesday\nPart 1 of 3: adding within 10\nSay each answer aloud, about 3 seconds a card. No rush.',
    );
  });

  it('tells how the one before it went', () => {
    const { text } = texts.partTask(view({ results: [scored(bonds), null, null] }), 1);
    expect(text).toContain(
      'adding within 10: 4 of 4, first time at this\nPart 2 of 3: clock (half past)',
    );
  });

  it('of counting asks to count, not to answer', () => {
    const { text } = texts.partTask(view(), 2);
    expect(text).toContain('Count aloud together: start at 35, 4 numbers in all.');
    expect(text).not.toContain('seconds a card');
  });

  it('in words has every question and no answer', () => {
    expect(partInWords(gaps)).toBe('1. 7 + ? = 10\n2. 2 + ? = 10\n3. 5 + ? = 10');
    expect(partInWords(clocks)).toBe('1. a clock\n2. a clock\n3. a clock');
    expect(partInWords(fives)).toBe('Start at 35: 35, 40, and so on. 4 numbers in all.');
  });

  it('being marked tells the score as it stands', () => {
    expect(texts.marking(view({ marking: { part: 0, missed: [1] } }), 0).text).toContain(
      'Tap the cards that were missed (✗), then Done. Now: 3 of 4.',
    );
  });
});

describe('a card while marking', () => {
  it('shows its number, question and answer', () => {
    expect(cardLabel(bonds, 0, false)).toBe('1. 3 + 4 = 7');
    expect(cardLabel(gaps, 1, false)).toBe('2. 2 + 8 = 10');
    expect(cardLabel(clocks, 1, false)).toBe('2. half past twelve');
  });

  it('shows that it was missed by a sign and a word, not by colour', () => {
    expect(cardLabel(bonds, 0, true)).toBe('✗ 1. 3 + 4 = 7');
  });

  it('never reads like a riddle: each has its number and no question is left open', () => {
    for (const rung of RUNGS) {
      const part = fullPart(rung);
      if (part.kind === 'run') continue;
      for (const card of part.cards.keys()) {
        const label = cardLabel(part, card, true);
        expect(label).toMatch(/^✗ \d{1,2}\. [^?]+$/);
        expect(label.length).toBeLessThanOrEqual(40);
      }
    }
  });

  it('that does not exist has no label', () => {
    expect(cardLabel(bonds, 4, false)).toBe('');
    expect(cardLabel(fives, 0, false)).toBe('');
  });

  it('solves as the docstring says', () => {
    expect(solved('7 + ? = 10', '3')).toBe('7 + 3 = 10');
    expect(solved('double 7', '14')).toBe('double 7 = 14');
  });
});

describe('a score beside the own best', () => {
  it.each([
    [[], 'first time at this'],
    [[1, 2], '1 more than the best so far'],
    [[3, 1], 'same as the best so far'],
    [[4], 'best so far 4'],
  ])('after %j reads: %s', (earlier, words) => {
    expect(texts.comparison(scored(bonds, { right: 3, earlier }))).toBe(words);
  });

  it('is not said of a part that is not marked or not there', () => {
    expect(texts.partResultLine(view(), 0)).toBeNull();
    expect(texts.partResultLine(finished(), 3)).toBeNull();
  });
});

describe('the end of an evening', () => {
  it('has a line for each part and the pages', () => {
    expect(texts.result(finished()).text.split('\n').slice(1, -1)).toEqual([
      'adding within 10: 4 of 4, first time at this',
      'clock (half past): 3 of 3, first time at this',
      'counting in fives to 200: 4 of 4, first time at this',
      'Pebble Path: 2 pages done',
    ]);
  });

  it.each([
    [0, '0 pages done'],
    [1, '1 page done'],
    [2, '2 pages done'],
    [3, '3 pages done, one more than planned. Well done!'],
    [5, '5 pages done, 3 more than planned. Well done!'],
  ])('with %d pages says: %s', (pages, words) => {
    expect(texts.result(finished({ pages })).text).toContain(`Pebble Path: ${words}\n`);
  });

  it('says kindly that the last page is done, and which book comes next', () => {
    const book = { title: 'Pebble Path', from: 47, to: 48, last: 48, next: null };
    const linesOf = (change: Parameters<typeof finished>[0]) =>
      texts.result(finished(change)).text.split('\n').slice(-3, -1);
    expect(linesOf({ book, pages: 1 }).at(-1)).toBe('Pebble Path: 1 page done');
    const done = ['Pebble Path: 2 pages done', 'Pebble Path is done!'];
    expect(linesOf({ book, pages: 2 })).toEqual(done);
    const next = { title: 'Pebble Path 2', from: 1 };
    expect(linesOf({ book: { ...book, next }, pages: 2 }).at(-1)).toBe(
      'Pebble Path is done! Next: Pebble Path 2, from page 1.',
    );
    const { text } = texts.elsewhere(finished({ book: { ...book, next }, pages: 2 }), true);
    expect(text).toContain('Next: Pebble Path 2');
  });

  it('says nothing of pages while nobody said how many, or without a workbook', () => {
    expect(texts.result(finished({ pages: null })).text).not.toContain('Pebble Path');
    expect(texts.result(finished({ book: null, pages: null })).text).not.toContain('page');
  });

  it('seen by another helper says where it stands', () => {
    expect(texts.elsewhere(view(), false).text).toContain('is marking this just now');
    expect(texts.elsewhere(finished(), true).text).toContain('Practised with another helper.');
    expect(texts.elsewhere(finished(), true).text).toContain('Pebble Path: 2 pages done');
    expect(texts.elsewhere(finished(), false).text).not.toContain('Pebble Path');
  });

  it('of a day that is over shows what was marked and how to go on', () => {
    const { text } = texts.closed(view({ results: [scored(bonds), null, null] }));
    expect(text).toBe(
      'Wren · Tuesday\nadding within 10: 4 of 4, first time at this\nThis day is over and its drill is closed. Send /today for today’s.',
    );
  });
});
