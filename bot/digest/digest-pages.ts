import { type StepUp, strandTitle, type WeekSummary } from '../../drills/index.ts';
import { type Page, type PaperSize, weekPage } from '../paper/index.ts';
import { DIGEST_CAUTION } from '../texts/digest.ts';
import { digestPageWords, GRID_NOTE } from '../texts/digest-page.ts';
import { dayRange, shortDate } from '../texts/words.ts';
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
  const words = digestPageWords(title, summary, input.steps);
  return weekPage({
    title,
    right: first && last ? dayRange(first, last) : '',
    answer: words.answer,
    under: words.under,
    left: [words.strands, words.proposals],
    beside: [words.wobbling, words.families],
    grid: {
      note: GRID_NOTE,
      dayLabels: days.map((day) => shortDate(day).slice(0, 3)),
      strandLabels: strands.map(({ strand }) => strandTitle(strand)),
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
    footer: DIGEST_CAUTION,
    paper,
  });
}
