import type { StepUp, WeekSummary } from '../../drills/index.ts';
import { digest, wobbleList } from './digest.ts';
import { callList } from './digest-calls.ts';
import { SECURE_MEANS, strandList } from './digest-strands.ts';
import { proposals } from './proposals.ts';
import { lines, type Text } from './words.ts';

/** A printed passage: its heading and its lines. */
interface Passage {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Beside the heads of the grid: what its figures are. */
export const GRID_NOTE = 'figures: share right, in %';

/** The digest's words as they are printed: the first two lines of the message, then what stands behind its buttons. */
export function digestPageWords(
  title: string,
  summary: WeekSummary,
  steps: readonly StepUp[] | null,
) {
  const [answer = '', under = ''] = linesOf(digest(title, summary));
  const { strands, wobbling, rungs, calls } = summary;
  return {
    answer: answer.slice(answer.indexOf(': ') + 2),
    under: under.slice(under.indexOf(': ') + 2),
    strands: withoutLegend(passage(strandList(strands))),
    wobbling: passage(wobbleList(wobbling)),
    proposals: passage(proposals({ rungs, steps, said: null })),
    families: passage(callList({ shown: calls, page: 0, pages: 1 })),
  };
}

/** With the page to print. */
export function digestPrinted(): Text {
  return lines('The week on one page. Names of children are on it: print it for yourself.');
}

/** On paper the proposals beside it say what secure means. */
function withoutLegend({ title, lines: rows }: Passage): Passage {
  return { title, lines: rows.filter((row) => row !== SECURE_MEANS) };
}

function passage(text: Text): Passage {
  const [title = '', ...rest] = linesOf(text);
  return { title, lines: rest };
}

function linesOf(text: Text): string[] {
  return text.text.split('\n');
}
