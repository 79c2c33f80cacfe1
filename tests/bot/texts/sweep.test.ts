import { describe, expect, it } from 'vitest';
import { BUTTONS } from '../../../bot/texts/buttons.ts';
import { DAY_WORDS } from '../../../bot/texts/digest-table.ts';
import { ALL_TEXTS, MODULES } from './all-texts.ts';

const said = Object.entries(ALL_TEXTS).map(([name, texts]) => ({ name, texts }));
const formatted = said.map(({ name, texts }) => ({
  name,
  texts: texts.filter((text) => text !== null && typeof text !== 'string'),
}));

it('no function that makes words is left out of this sweep', () => {
  const functions = MODULES.flatMap((module) => Object.entries(module))
    .filter(([, value]) => typeof value === 'function')
    .map(([name]) => name);
  expect(functions.toSorted()).toEqual(said.map(({ name }) => name).toSorted());
});

describe('a text', () => {
  it.each(said)('never shows the insides of the program: $name', ({ texts }) => {
    for (const text of texts) {
      if (text !== null) expect(String(text)).not.toMatch(/undefined|null|NaN|\[object/);
    }
  });

  it.each(said)('is never empty and has no stray blanks or lines: $name', ({ texts }) => {
    for (const text of texts) {
      if (text === null) continue;
      expect(String(text)).not.toMatch(/ {2}|^\s|\s$|[ \t]\n|\n[ \t]|\n{3}|^$/);
    }
  });

  it.each(said)('has no empty quotation marks and no doubled stops: $name', ({ texts }) => {
    for (const text of texts) {
      if (text !== null) expect(String(text)).not.toMatch(/“”|\.\.|: ?\.|, ?\.|\( *\)/);
    }
  });

  it.each(formatted.filter(({ texts }) => texts.length > 0))(
    'makes whole lines bold and nothing else: $name',
    ({ texts }) => {
      for (const { text, entities } of texts) {
        let end = 0;
        for (const { type, offset, length } of entities) {
          expect(type).toBe('bold');
          expect(offset).toBeGreaterThanOrEqual(end);
          end = offset + length;
          const line = text.slice(offset, end);
          expect(line).toMatch(/^[^\n]+$/);
          expect(text.split('\n')).toContain(line);
          expect([undefined, '\n']).toContain(text[offset - 1]);
          expect([undefined, '\n']).toContain(text[end]);
        }
      }
    },
  );
});

it('buttons say six short words at most, and no two say the same', () => {
  const labels = Object.values(BUTTONS);
  expect(new Set(labels).size).toBe(labels.length);
  for (const label of labels) {
    expect(label).toMatch(/^[A-Z]\S*(?: \S+){0,5}$/);
    expect(label.length).toBeLessThanOrEqual(30);
  }
});

it('a day without an evening is said by saying nothing', () => {
  expect(DAY_WORDS.none).toBe('');
  const { none: _, ...others } = DAY_WORDS;
  expect(new Set(Object.values(others)).size).toBe(4);
});
