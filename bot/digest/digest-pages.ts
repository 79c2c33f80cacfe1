import { type StepUp, type WeekSummary, weekdayOf } from '../../drills/index.ts';
import { type Page, type PaperSize, weekPage } from '../paper/index.ts';
import { digestCaution } from '../texts/digest.ts';
import { digestPageWords, gridNote } from '../texts/digest-page.ts';
import { strandColumn } from '../texts/part-title.ts';
import { dayRange, weekdayName } from '../texts/words.ts';
import { STANDINGS } from './digest-drawing.ts';

/** A class's week on one page to print. `steps` are what accepting the proposals would change; null without a plan. */
export function digestPages(input: {
  readonly title: string;
  readonly summary: WeekSummary;
  readonly steps: readonly StepUp[] | null;
  readonly paper: PaperSize;
}): Page[] {
  const { title, summary, paper } = input;
  const { days, strands, children } = summary;
  const [first, last] = [days.at(0), days.at(-1)];
  const words = digestPageWords(summary, input.steps);
  return weekPage({
    title,
    right: first && last ? dayRange(first, last) : '',
    answer: words.answer,
    under: words.under,
    left: [words.strands, words.proposals],
    beside: [words.wobbling, words.families],
    grid: {
      note: gridNote(),
      dayLabels: days.map((day) => weekdayName(weekdayOf(day), 'short')),
      strandLabels: strands.map(({ strand }) => strandColumn(strand)),
      rows: children.map((child) => ({
        number: child.number,
        name: child.nickname,
        days: child.days,
        cells: strands.map(({ strand }) => {
          const [tally, level] = [child.strands.get(strand), child.standings.get(strand)];
          return tally && level ? { ...tally, standing: STANDINGS[level] } : null;
        }),
      })),
    },
    footer: digestCaution(),
    paper,
  });
}
