import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { monthMessage, practisedLine, withPractised } from '../../../bot/texts/months.ts';
import { lines } from '../../../bot/texts/words.ts';
import { storedDay } from '../../../db/index.ts';
import { RUNGS } from '../../../drills/index.ts';

const OCTOBER = storedDay('2026-10-01');

describe('the look back on a month', () => {
  it('names what became sure, and says nothing of it when nothing did', () => {
    const sure = monthMessage('Wren', OCTOBER, { practised: 14, secure: ['doubles.to5'] });
    expect(sure.text.split('\n').slice(0, 3)).toEqual([
      'Wren’s October',
      '14 evenings practised together.',
      'New this month: sure of doubles to 5 + 5.',
    ]);
    const none = monthMessage('Wren', OCTOBER, { practised: 1, secure: [] });
    expect(none.text).not.toContain('sure of');
    expect(none.text).toContain('One evening practised together.');
  });

  it('names four steps at most', () => {
    const secure = RUNGS.slice(0, 6).map(({ id }) => id);
    const { text } = monthMessage('Wren', OCTOBER, { practised: 14, secure });
    const titles = RUNGS.slice(0, 6).map(({ title }) => text.includes(title));
    expect(titles.slice(0, 4)).toEqual([true, true, true, true]);
    expect(text.split('\n')).toHaveLength(4);
  });

  it('has the month’s name in the reader’s language, and how to turn it off', () => {
    const said = (['af', 'de', 'es', 'fr'] as const).map((tag) =>
      readIn(tag, () => monthMessage('Wren', OCTOBER, { practised: 2, secure: [] }).text),
    );
    expect(said.map((text) => /[Oo](k|c)to?[bu]\w+e?/.exec(text)?.[0])).toEqual([
      'Oktober',
      'Oktober',
      'octubre',
      'octobre',
    ]);
    for (const text of said) expect(text).toContain('/settings');
  });
});

describe('how many evenings were practised', () => {
  it('is a count without a goal, a row or anything that could break', () => {
    expect(practisedLine({ evenings: 17, since: OCTOBER })).toBe(
      '17 evenings practised this term.',
    );
    expect(practisedLine({ evenings: 1, since: null })).toBe('One evening practised so far.');
    for (const evenings of [0, 1, 2, 30]) {
      expect(practisedLine({ evenings, since: null })).not.toMatch(
        /in a row|streak|only|missed|keep it up|goal/i,
      );
    }
  });

  it('stands below a result where there is room for one more line, and gives way where there is none', () => {
    const short = lines('Wren · Monday', 'doubles: 5 of 5');
    expect(withPractised(short, { evenings: 3, since: null }).text.split('\n')).toHaveLength(3);
    const full = lines(...Array.from({ length: 9 }, (_, at) => `line ${at}`));
    expect(withPractised(full, { evenings: 3, since: null }).text).toBe(full.text);
  });
});
