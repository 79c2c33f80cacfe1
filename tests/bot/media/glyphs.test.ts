import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { hasGlyphs, pictureWords } from '../../../bot/media/index.ts';
import { PAPER_WORDS } from '../../../bot/texts/paper.ts';
import { rungTitle, strandName } from '../../../bot/texts/part-title.ts';
import {
  CARD_WORDS,
  clockPhraseVariants,
  type FactId,
  faceOf,
  isLanguage,
  LANGUAGES,
  numberWordVariants,
  RUNGS,
  STRANDS,
} from '../../../drills/index.ts';
import { run } from './faces.ts';
import { SAMPLES } from './samples.ts';
import { textBoxes } from './text-boxes.ts';

const missing = (texts: readonly string[]) => texts.filter((text) => !hasGlyphs(text));
const FACTS: readonly FactId[] = [
  'add:3+4',
  'gap:7+10',
  'lead:7+10',
  'sub:9-4',
  'less:10-7',
  'from:3-7',
  'times:3x5',
  'double:7',
  'half:14',
  'next:95+5',
  'next:100-1',
];

describe.each(Object.keys(LANGUAGES).filter(isLanguage))('the font in "%s"', (language) => {
  it('has every number word, in every spelling accepted', () => {
    expect(missing(run(0, 1, 1001).flatMap((n) => [...numberWordVariants(n, language)]))).toEqual(
      [],
    );
  });

  it('has every time of the clock, in every wording accepted', () => {
    const times = run(0, 1, 144).flatMap((i) => [
      ...clockPhraseVariants(Math.floor(i / 12) + 1, 5 * (i % 12), language),
    ]);
    expect(missing(times)).toEqual([]);
  });

  it('has every wording of a card', () => {
    const faces = FACTS.map((fact) => faceOf(fact, language));
    const texts = faces.flatMap((face) => (face.kind === 'text' ? [face.text] : []));
    expect(texts).toHaveLength(FACTS.length);
    expect(missing([...texts, CARD_WORDS[language].clock, LANGUAGES[language]])).toEqual([]);
  });

  it('has every word that pictures and paper add', () => {
    const said = (words: object) =>
      Object.values(words).map((word: string | ((a: number, b: number) => string)) =>
        typeof word === 'string' ? word : `${word(1, 1)} ${word(-20, 20)}`,
      );
    const words = readIn(language, () => [...said(pictureWords()), ...said(PAPER_WORDS[language])]);
    expect(words.length).toBeGreaterThan(30);
    expect(missing(words)).toEqual([]);
  });

  it('has the title of every strand and rung', () => {
    const titles = readIn(language, () => [
      ...RUNGS.map(({ id }) => rungTitle(id)),
      ...STRANDS.map(strandName),
    ]);
    expect(missing(titles)).toEqual([]);
  });
});

it('no sample has a text the font lacks, whatever names it was given', () => {
  const drawn = Object.values(SAMPLES).flatMap((each) => textBoxes(each));
  expect(drawn.length).toBeGreaterThan(1000);
  expect(missing(drawn.map(({ content }) => content))).toEqual([]);
});
