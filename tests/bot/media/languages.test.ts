import { describe, expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import {
  classMap,
  type Drawing,
  digestPicture,
  endFrame,
  progressPicture,
  readyFrame,
  resultCard,
  runAnswerSheet,
} from '../../../bot/media/index.ts';
import { rungTitle, strandColumn, strandName } from '../../../bot/texts/part-title.ts';
import { isLanguage, LANGUAGES, RUNGS, STRANDS, strandTitle } from '../../../drills/index.ts';
import { layoutFaults } from './layout-faults.ts';
import { textBoxes } from './text-boxes.ts';

const score = { right: 8, asked: 10 };

/** Every picture whose words depend on the reader, with the names of all strands where strands are named. */
function pictures(): Record<string, Drawing> {
  const strands = STRANDS.map((strand) => ({ label: strandName(strand), weeks: [score] }));
  const columns = { strandLabels: STRANDS.map(strandColumn), footer: '', title: '' };
  const child = { number: 1, name: 'Wren' };
  return {
    run: runAnswerSheet({ title: '', numbers: [50, 40, 30], limit: 100 }),
    ready: readyFrame({ title: rungTitle('bonds.bridging'), cards: 15, seconds: 3 }),
    end: endFrame(),
    result: resultCard({
      title: 'Wren',
      lines: [{ label: rungTitle('halves.to10'), ...score, note: '' }],
      sayAgain: [{ face: { kind: 'text', text: '7 + 8' }, answer: '15' }],
      footer: '',
    }),
    term: progressPicture({ title: 'Wren', evenings: 12, weekLabels: ['1'], strands, footer: '' }),
    map: classMap({
      ...columns,
      rows: [{ ...child, cells: STRANDS.map(() => ({ ...score, standing: 'growing' as const })) }],
    }),
    digest: digestPicture({
      ...columns,
      subtitle: '',
      dayLabels: ['1'],
      rows: [{ ...child, days: ['practised'], strands: STRANDS.map(() => score) }],
    }),
  };
}

describe.each(Object.keys(LANGUAGES).filter(isLanguage))('a picture in "%s"', (language) => {
  const drawn = readIn(language, () => Object.entries(pictures()));

  it.each(drawn)('has room for its words: %s', (_, drawing) => {
    expect(layoutFaults(drawing)).toEqual([]);
    const cut = textBoxes(drawing).filter(({ content }) => content.endsWith('…'));
    expect(cut.map(({ content }) => content)).toEqual([]);
  });

  it('has another name for each strand and each step', () => {
    const names = readIn(language, () => ({
      steps: RUNGS.map(({ id }) => rungTitle(id)),
      strands: STRANDS.map(strandName),
      columns: STRANDS.map(strandColumn),
    }));
    for (const each of Object.values(names)) expect(new Set(each).size).toBe(each.length);
  });
});

it('a step and a strand are called in English what the ladder calls them', () => {
  expect(RUNGS.map(({ id }) => rungTitle(id))).toEqual(RUNGS.map(({ title }) => title));
  expect(STRANDS.map(strandName)).toEqual(STRANDS.map(strandTitle));
});
