import { describe, expect, it } from 'vitest';
import { parseRoster } from '../../../bot/input/roster.ts';

describe('a pasted roster', () => {
  it('is as its docstring says', () => {
    expect(parseRoster('Wren\n\nOtto', [])).toEqual({ nicknames: ['Wren', 'Otto'], problems: [] });
  });

  it.each(['Wren\r\nOtto\r\n', 'Wren\rOtto', '\n\nWren\n \n\tOtto\n\n', '1. Wren\n2. Otto\n3.'])(
    'is one nickname a line, however lines end: %j',
    (text) => {
      expect(parseRoster(text, [])).toEqual({ nicknames: ['Wren', 'Otto'], problems: [] });
    },
  );

  it('keeps the order it was sent in', () => {
    expect(parseRoster('Otto\nWren\nJuniper', []).nicknames).toEqual(['Otto', 'Wren', 'Juniper']);
  });

  it.each(['', '\n\n', ' \r\n\u200b\n4.'])('may hold nobody: %j', (text) => {
    expect(parseRoster(text, ['Wren'])).toEqual({ nicknames: [], problems: [] });
  });

  it('takes thirty characters and refuses thirty-one, counted as people count', () => {
    const fits = '👩‍🚀'.repeat(30);
    expect(parseRoster(fits, []).nicknames).toEqual([fits]);
    expect(parseRoster(`${fits}x`, []).problems).toEqual([
      { kind: 'long', line: 1, value: `${fits}x`, length: 31 },
    ]);
  });

  it('names the line of a name of sixty characters, blank lines included', () => {
    const value = 'Wren of the Long Meadow by the River'.padEnd(60, 'x');
    expect(parseRoster(`Otto\n\n${value}`, [])).toEqual({
      nicknames: ['Otto'],
      problems: [{ kind: 'long', line: 3, value, length: 60 }],
    });
  });

  it('names both lines of a nickname that comes twice, and capitals make no difference', () => {
    expect(parseRoster('Wren\r\n\r\nOtto\r\nWREN\r\n 5. wren', []).problems).toEqual([
      { kind: 'twice', line: 4, value: 'WREN', firstLine: 1 },
      { kind: 'twice', line: 5, value: 'wren', firstLine: 1 },
    ]);
  });

  it('sees through the two ways to type an accent', () => {
    expect(parseRoster('Zo\u00eb\nZoe\u0308', []).problems).toEqual([
      { kind: 'twice', line: 2, value: 'Zo\u00eb', firstLine: 1 },
    ]);
  });

  it('names a nickname that the class has already, whatever its capitals', () => {
    expect(parseRoster('Otto\nwren', ['Wren', 'Juniper'])).toEqual({
      nicknames: ['Otto'],
      problems: [{ kind: 'present', line: 2, value: 'wren' }],
    });
  });

  it('tells all problems at once, in the order of the lines', () => {
    const long = 'x'.repeat(31);
    const { problems } = parseRoster(`${long}\nOtto\nWren\nOtto`, ['Wren']);
    expect(problems.map(({ kind, line }) => [kind, line])).toEqual([
      ['long', 1],
      ['present', 3],
      ['twice', 4],
    ]);
  });
});
