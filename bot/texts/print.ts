import type { SchoolClass } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { WRITTEN_LENGTH } from '../input/written-code.ts';
import { say } from '../language/index.ts';
import type { PaperSize } from '../paper/index.ts';
import { BUTTONS } from './buttons.ts';
import { bold, lines, name, shortDate, type Text } from './words.ts';

/** A paper's name, as on its button. */
export function paperName(paper: PaperSize): string {
  return say(`print-${paper}`);
}

/** A button that prints at once: `Print A4`. */
export function printButton(paper: PaperSize): string {
  return say('print-on', { paper: paperName(paper) });
}

/** What can be printed. `missing` is how many children have no helper, `offline` how many get no messages. */
export function printScreen(
  schoolClass: SchoolClass,
  { missing, offline }: { readonly missing: number; readonly offline: number },
): Text {
  return lines(
    bold(say('print-title', { title: name(schoolClass.title) })),
    missing === 0 ? say('print-slips-none') : say('print-slips', { missing }),
    say('print-cards'),
    offline === 0 ? say('print-sheets-none') : say('print-sheets', { offline }),
    say('print-squares'),
  );
}

/** With the join slips. `until` is the last day they work. */
export function slipsSent(children: number, until: SchoolDay): Text {
  return lines(
    say('print-slips-sent', { children }),
    say('print-slips-work', { until: shortDate(until) }),
  );
}

/** With the cards. */
export function cardsSent(): Text {
  return lines(say('print-cards-sent'));
}

/** With the practice sheets. `children` is how many have one with their name. */
export function sheetsSent(children: number): Text {
  return lines(children === 0 ? say('print-sheet-sent') : say('print-sheets-sent', { children }));
}

/** With the number squares. */
export function squaresSent(): Text {
  return lines(say('print-squares-sent'));
}

/** For join slips when nobody needs one. */
export function noSlips(): string {
  return say('print-no-slips');
}

/** For what is made from the week plan when there is none. */
export function noPlan(): string {
  return say('print-no-plan', { button: BUTTONS.plan });
}

/** For a practice sheet when no school day is near. */
export function noDays(): string {
  return say('print-no-days');
}

/** A join code typed with a mistake. `letters` is how many letters and figures were read. */
export function mistypedCode(letters: number): Text {
  return lines(
    letters === WRITTEN_LENGTH
      ? say('print-code-wrong')
      : say('print-code-length', { letters, length: WRITTEN_LENGTH }),
    say('print-code-again'),
  );
}
