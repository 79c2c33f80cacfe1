import { type IssuedSlip, MAX_CHILDREN } from '../../db/index.ts';
import { maybeFullName } from '../input/full-name.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import type { RosterProblem } from '../input/roster.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { numbered } from './children.ts';
import { quote } from './quote.ts';
import { ask } from './teacher.ts';
import { bold, lines, type Text } from './words.ts';

/** What is wrong with a pasted roster. Nothing has been stored. */
export function rosterProblems(problems: readonly RosterProblem[]): Text {
  const shown = problems.slice(0, 8);
  return lines(
    bold(say('roster-problems')),
    ...shown.map((problem) => rosterProblem(problem)),
    moreProblems(problems.length - shown.length),
  );
}

/** Under the first few problems; null when there are no more. */
export function moreProblems(more: number): string | null {
  return more > 0 ? say('roster-and-more', { more }) : null;
}

/** One problem with its place: a line of a message, or a row of a spreadsheet. */
export function rosterProblem(problem: RosterProblem, place: 'Line' | 'Row' = 'Line'): string {
  const at = place === 'Row' ? 'row' : 'line';
  const { line } = problem;
  const value = quote(problem.value, 20);
  switch (problem.kind) {
    case 'long':
      return say(`roster-${at}-long`, {
        ...{ line, value, length: problem.length, most: NICKNAME_LENGTH },
      });
    case 'twice':
      return say(`roster-${at}-twice`, { line, value, first: problem.firstLine });
    case 'present':
      return say(`roster-${at}-present`, { line, value });
  }
}

/** An empty roster. */
export function rosterEmpty(): Text {
  return lines(say('roster-empty'), ask('roster'));
}

/** Too many at once. */
export function rosterTooMany(sent: number, present: number): Text {
  return lines(
    say('roster-too-many', { sent, present, most: MAX_CHILDREN }),
    say('roster-send-fewer'),
  );
}

/**
 * Join links, to be copied to each family. The one message that may be longer than ten lines: each child needs its own, and
 * nobody reads it as a whole.
 */
export function joinLinks(slips: readonly IssuedSlip[], linkOf: (code: string) => string): Text {
  return lines(
    bold(say('roster-links')),
    ...slips.flatMap(({ child, code }) => [numbered(child), linkOf(code)]),
    say('roster-links-note'),
  );
}

/** Before links are made for the children without a helper. */
export function askToMakeLinks(children: number): Text {
  if (children === 0) return lines(say('roster-all-have'));
  return lines(bold(say('roster-without', { children })), say('roster-make-links'));
}

/** After a roster is stored. No link is made yet: what is made later would end it, and the teacher may want the other way. */
export function rosterAdded(nicknames: readonly string[]): Text {
  return lines(
    say('roster-added', { children: nicknames.length }),
    say('roster-by-slip', { button: BUTTONS.slipsToPrint }),
    say('roster-by-link', { button: BUTTONS.missingLinks }),
    say('roster-not-yet'),
    fullNameCaution(nicknames),
  );
}

/** A caution when some nicknames may hold a surname; null when none does. */
export function fullNameCaution(nicknames: readonly string[]): string | null {
  const [first, ...others] = nicknames.filter(maybeFullName);
  if (first === undefined) return null;
  const nickname = quote(first, 30);
  return others.length === 0
    ? say('roster-surname', { nickname })
    : say('roster-surnames', { nickname, more: others.length });
}

/** For a tap on a button that makes links when links were made since it was shown. */
export function linksMade(): string {
  return say('roster-links-made');
}
