import type { StepUp, WeekSummary } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { headline, howEnded, wobbleList } from './digest.ts';
import { callList } from './digest-calls.ts';
import { secureMeans, strandList } from './digest-strands.ts';
import { proposals } from './proposals.ts';
import { lines, type Text } from './words.ts';

/** A printed passage: its heading and its lines. */
interface Passage {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Beside the heads of the grid: what its figures are. */
export function gridNote(): string {
  return say('digest-page-grid-note');
}

/**
 * The digest's words as they are printed: the first two lines of the message without class and days, which stand at the head
 * of the page, then what stands behind its buttons.
 */
export function digestPageWords(summary: WeekSummary, steps: readonly StepUp[] | null) {
  const { strands, wobbling, rungs, calls } = summary;
  return {
    answer: say('digest-page-answer', { headline: headline(summary) }),
    under:
      summary.days.length > 0
        ? say('digest-page-evenings', { ended: howEnded(summary) })
        : say('digest-no-days'),
    strands: withoutLegend(passage(strandList(strands))),
    wobbling: passage(wobbleList(wobbling)),
    proposals: passage(proposals({ rungs, steps, said: null })),
    families: passage(callList({ shown: calls, page: 0, pages: 1 })),
  };
}

/** With the page to print. */
export function digestPrinted(): Text {
  return lines(say('digest-page-sent'));
}

/** On paper the proposals beside it say what secure means. */
function withoutLegend({ title, lines: rows }: Passage): Passage {
  return { title, lines: rows.filter((row) => row !== secureMeans()) };
}

function passage(text: Text): Passage {
  const [title = '', ...rest] = linesOf(text);
  return { title, lines: rest };
}

function linesOf(text: Text): string[] {
  return text.text.split('\n');
}
