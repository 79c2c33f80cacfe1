import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { BUTTONS } from '../../../bot/texts/buttons.ts';
import { DAY_WORDS } from '../../../bot/texts/digest-table.ts';
import { allTexts, MODULES, type Said } from './all-texts.ts';

const inEnglish = texts('en');

function texts(language: 'en' | 'af' | 'es' | 'de' | 'fr') {
  return readIn(language, () =>
    Object.entries(allTexts()).flatMap(([from, all]) =>
      all.flatMap((text: Said) => (text === null ? [] : [{ from, text, words: String(text) }])),
    ),
  );
}

it('no function that makes words is left out of this sweep', () => {
  const functions = MODULES.flatMap((module) => Object.entries(module))
    .filter(([, value]) => typeof value === 'function')
    .map(([name]) => name);
  expect(functions.toSorted()).toEqual(Object.keys(allTexts()).toSorted());
});

describe.each(['en', 'af', 'es', 'de', 'fr'] as const)('each text in %s', (language) => {
  const said = language === 'en' ? inEnglish : texts(language);
  const breaking = (rule: RegExp) =>
    said.filter(({ words }) => rule.test(words)).map(({ from, words }) => `${from}: ${words}`);

  it('never shows the insides of the program', () => {
    expect(breaking(/undefined|\bnull\b|NaN|\[object|\{ ?\$|\bsay\(/)).toEqual([]);
  });

  it('is never empty and has no stray blanks or lines', () => {
    expect(breaking(/ {2}|^\s|\s$|[ \t]\n|\n[ \t]|\n{3}|^$/)).toEqual([]);
  });

  it('has no empty quotation marks and no doubled stops', () => {
    expect(breaking(/“”|«\s*»|„“|\.\.|: ?\.|, ?\.|\( *\)/)).toEqual([]);
  });

  it('makes whole lines bold and nothing else', () => {
    const odd = said.flatMap(({ from, text }) =>
      typeof text === 'string' || boldIsWholeLines(text) ? [] : [`${from}: ${text}`],
    );
    expect(odd).toEqual([]);
  });

  it('has buttons of six short words at most, and no two say the same', () => {
    const labels = readIn(language, () => Object.values({ ...BUTTONS }));
    expect(labels.filter((label, at) => labels.indexOf(label) !== at)).toEqual([]);
    expect(labels.filter((label) => !/^[\p{Lu}’]\S*(?:[ \u202f]\S+){0,5}$/u.test(label))).toEqual(
      [],
    );
    expect(labels.filter(({ length }) => length > 30)).toEqual([]);
  });
});

describe.each(['af', 'es', 'de', 'fr'] as const)('a text in %s', (language) => {
  it('is not the English one, but for those that hold no sentence', () => {
    const same = texts(language).flatMap(({ from, words }, at) =>
      words === inEnglish[at]?.words && (words.match(/\p{Ll}{2,}/gu)?.length ?? 0) > 3
        ? [`${from}: ${words}`]
        : [],
    );
    expect(same).toEqual([]);
  });
});

function boldIsWholeLines({ text, entities }: Exclude<Said, string | null>): boolean {
  let end = 0;
  return entities.every(({ type, offset, length }) => {
    const startsAfter = offset >= end;
    end = offset + length;
    const line = text.slice(offset, end);
    const isLine =
      /^[^\n]+$/.test(line) &&
      [undefined, '\n'].includes(text[offset - 1]) &&
      [undefined, '\n'].includes(text[end]);
    return type === 'bold' && startsAfter && isLine;
  });
}

it('a day without an evening is said by saying nothing', () => {
  const { none, ...others } = DAY_WORDS;
  expect(none).toBe('');
  expect(new Set(Object.values(others)).size).toBe(4);
});
