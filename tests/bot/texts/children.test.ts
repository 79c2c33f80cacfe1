import { describe, expect, it } from 'vitest';
import * as texts from '../../../bot/texts/children.ts';
import { columnLabel, listProblems } from '../../../bot/texts/class-file.ts';
import { fullNameCaution } from '../../../bot/texts/roster.ts';
import { kingfisher, listed } from '../support/kingfisher.ts';
import { childrenTexts } from './children-texts.ts';

describe('the class’s list', () => {
  it('says how many have joined and names the first of the others', () => {
    const children = Array.from({ length: 24 }, (_, at) =>
      listed(at + 1, ['Wren', 'Otter', 'Robin'][at] ?? `Finch ${at}`, at < 7 ? 0 : 1),
    );
    expect(texts.childList(kingfisher, children).text).toBe(
      'Kingfisher class: 17 of 24 joined\nNot yet: Wren, Otter, Robin and 4 more\n✓ has a helper. Tap a child to rename or move it, or for a new link.',
    );
  });

  it('tells a family that never joined from one that left and one no message reaches', () => {
    const { text } = texts.childList(kingfisher, [
      listed(1, 'Wren'),
      listed(2, 'Otter', 0),
      { ...listed(3, 'Juniper', 2), reachable: 0 },
      { ...listed(4, 'Tamarind', 2), reachable: 1 },
      { ...listed(5, 'Sorrel', 0), left: true },
    ]);
    expect(text.split('\n').slice(0, 4)).toEqual([
      'Kingfisher class: 3 of 5 joined',
      'Not yet: Otter',
      'Helper has left: Sorrel',
      'Messages no longer arrive: Juniper',
    ]);
  });

  it('marks who has joined by a sign in front of the number, not by a colour', () => {
    const silent = { ...listed(3, 'Juniper'), reachable: 0 };
    expect([listed(1, 'Wren'), listed(2, 'Otter', 0), silent].map(texts.childLabel)).toEqual([
      '✓ 1. Wren',
      '2. Otter',
      '! 3. Juniper',
    ]);
  });
});

it('the first few of many are named as the docstring says', () => {
  const children = ['Wren', 'Otter', 'Robin', 'Finch', 'Owl'].map((nickname) => ({ nickname }));
  expect(texts.someOf(children.slice(0, 2))).toBe('Wren and Otter');
  expect(texts.someOf(children.slice(0, 4))).toBe('Wren, Otter, Robin and Finch');
  expect(texts.someOf(children)).toBe('Wren, Otter, Robin and 2 more');
  expect(texts.someOf([])).toBe('');
});

it('no text about children or class lists has more than nine lines', () => {
  for (const text of Object.values(childrenTexts()).flat()) {
    expect(String(text).split('\n').length).toBeLessThanOrEqual(9);
  }
});

it('a column is called as spreadsheets call it', () => {
  const column = (at: number) => columnLabel({ column: at, heading: null, sample: 'Wren' });
  expect([0, 25, 26, 39].map(column)).toEqual(['A: Wren', 'Z: Wren', 'AA: Wren', 'AN: Wren']);
});

it('a problem in a file names its row, and the row it clashes with', () => {
  const from = { column: 1, heading: 'Nickname', sample: 'Wren' };
  const twice = { kind: 'twice', line: 7, value: 'wren', firstLine: 2 } as const;
  expect(listProblems([twice], from).text).toContain('Row 7: “wren” is also on row 2.');
});

it('a caution names one nickname that may hold a surname, and counts the others', () => {
  expect(fullNameCaution(['Wren', 'Otto B'])).toBeNull();
  expect(fullNameCaution(['Wren', 'Otto Baker'])).toContain('“Otto Baker”.');
  expect(fullNameCaution(['Otto Baker', 'Robin Cook'])).toContain('“Otto Baker” and 1 more.');
});
