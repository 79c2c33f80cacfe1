import type { SchoolClass } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { WRITTEN_LENGTH } from '../input/written-code.ts';
import type { PaperSize } from '../paper/index.ts';
import { bold, count, lines, name, shortDate, type Text } from './words.ts';

const PAPER_NAMES: Readonly<Record<PaperSize, string>> = { a4: 'A4', letter: 'Letter' };

/** A paper's name, as on its button. */
export function paperName(paper: PaperSize): string {
  return PAPER_NAMES[paper];
}

/** A button that prints at once: `Print A4`. */
export function printButton(paper: PaperSize): string {
  return `Print ${paperName(paper)}`;
}

/** What can be printed. `missing` is how many children have no helper, `offline` how many get no messages. */
export function printScreen(
  schoolClass: SchoolClass,
  { missing, offline }: { readonly missing: number; readonly offline: number },
): Text {
  return lines(
    bold(`${name(schoolClass.title)}: print`),
    missing === 0
      ? 'Join slips: every child has a helper.'
      : `Join slips: for ${count(missing, 'child', 'children')} without a helper. Links given out before for these children stop working.`,
    'Cards: those of the week plan, to cut out, and all answers.',
    offline === 0
      ? 'Practice sheets: one without a name.'
      : `Practice sheets: for ${count(offline, 'child', 'children')} whose family gets no messages, and one without a name.`,
    'Number squares: 1 to 100 and 101 to 200.',
  );
}

/** With the join slips. `until` is the last day they work. */
export function slipsSent(children: number, until: SchoolDay): Text {
  return lines(
    `Join slips for ${count(children, 'child', 'children')}. Cut them apart and give each family only its own.`,
    `They work for up to four helpers, until ${shortDate(until)}. I keep no copy: new slips replace these.`,
  );
}

/** With the cards. */
export function cardsSent(): Text {
  return lines(
    'Print on both sides and turn over the long edge: each answer is behind its card. The answers together come last.',
  );
}

/** With the practice sheets. `children` is how many have one with their name. */
export function sheetsSent(children: number): Text {
  return lines(
    children === 0
      ? 'A practice sheet without a name.'
      : `Practice sheets for ${count(children, 'child', 'children')}, and one without a name. Give each family only its own.`,
  );
}

/** With the number squares. */
export function squaresSent(): Text {
  return lines('Number squares, 1 to 100 and 101 to 200.');
}

/** For join slips when nobody needs one. */
export const NO_SLIPS = 'Every child has a helper, or there are no children yet. Nothing to print.';

/** For what is made from the week plan when there is none. */
export const NO_PLAN = 'There is no week plan in use yet. Make one under Week plan, then print.';

/** For a practice sheet when no school day is near. */
export const NO_DAYS =
  'There is no school day this week or next. Print when the break is nearly over.';

/** A join code typed with a mistake. `letters` is how many letters and figures were read. */
export function mistypedCode(letters: number): Text {
  return lines(
    letters === WRITTEN_LENGTH
      ? 'That looks like a join code, but one letter or figure is not right.'
      : `That looks like a join code, but I read ${letters} letters and figures; a code has ${WRITTEN_LENGTH}.`,
    'Please compare it with your slip and send it again. The letters O, I, L and U are never used.',
  );
}
