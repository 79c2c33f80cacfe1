import { describe, expect, it } from 'vitest';
import { cleanNickname, lengthOf, NICKNAME_LENGTH } from '../../../bot/input/nickname.ts';

describe('a nickname', () => {
  it.each([
    [' 3. Otto   B ', 'Otto B'],
    ['Wren', 'Wren'],
    ['12) Juniper', 'Juniper'],
    ['- Wren', 'Wren'],
    ['* Wren', 'Wren'],
    ['•\tWren', 'Wren'],
    ['\u200e7.\u00a0Wren', 'Wren'],
  ])('loses the list mark before it and spare spaces: %j', (line, nickname) => {
    expect(cleanNickname(line)).toBe(nickname);
  });

  it.each(['3 Otters', '3.5', '-Otto', '2026. Wren', 'Otto 2.', '1.Otto'])(
    'keeps what only looks like a list mark: %j',
    (nickname) => {
      expect(cleanNickname(nickname)).toBe(nickname);
    },
  );

  it.each(['<b>Wren</b>', '*Wren*', '_Otto_', '&amp;', '[Wren](x)', '`Wren`', '=1+1', '@wren'])(
    'keeps characters that look like markup: %s',
    (nickname) => {
      expect(cleanNickname(nickname)).toBe(nickname);
    },
  );

  it.each(['שרה', 'يوسف', 'Zoë 👩‍🚀', '👨‍👩‍👧‍👦', 'Otto 🏴󠁧󠁢󠁳󠁣󠁴󠁿', '❤️', 'می‌خواهم'])(
    'keeps any script and whole emoji: %s',
    (nickname) => {
      expect(cleanNickname(nickname)).toBe(nickname);
    },
  );

  it.each([
    ['\u202eWren\u202c', 'Wren'],
    ['\u2067Wren\u2069', 'Wren'],
    ['\u061cWren\u200f', 'Wren'],
    ['W\u200bre\u00adn\ufeff', 'Wren'],
    ['W\u0000r\ten', 'W r en'],
    ['Wren\ud83d', 'Wren'],
  ])('loses hidden characters: %j', (line, nickname) => {
    expect(cleanNickname(line)).toBe(nickname);
  });

  it('is one spelling, however its accents were typed', () => {
    expect(cleanNickname('Zoe\u0308')).toBe('Zo\u00eb');
  });

  it.each(['', '   ', '\t', '\u200b', '\u200d', '\u2060\ufe0f', '\u3164', '4.', '17)', '-', '•'])(
    'is empty when there is nothing to see: %j',
    (line) => {
      expect(cleanNickname(line)).toBe('');
    },
  );
});

describe('the length of a nickname', () => {
  it.each([
    ['Zoë 👩‍🚀', 5],
    ['', 0],
    ['Wren', 4],
    ['👨‍👩‍👧‍👦', 1],
    ['🏴󠁧󠁢󠁳󠁣󠁴󠁿', 1],
    ['नमस्ते', 3],
    ['Zoe\u0308', 3],
  ])('is what people count: %s', (text, length) => {
    expect(lengthOf(text)).toBe(length);
  });

  it('never lets a pile of marks pass for one character', () => {
    expect(lengthOf(`e${'\u0301'.repeat(1_000)}`)).toBeGreaterThan(NICKNAME_LENGTH);
    expect(lengthOf('👩\u200d'.repeat(500))).toBeGreaterThan(NICKNAME_LENGTH);
  });
});
