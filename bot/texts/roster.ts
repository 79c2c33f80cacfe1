import { type IssuedSlip, MAX_CHILDREN } from '../../db/index.ts';
import { maybeFullName } from '../input/full-name.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import type { RosterProblem } from '../input/roster.ts';
import { BUTTONS } from './buttons.ts';
import { quote } from './quote.ts';
import { ask } from './teacher.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** What is wrong with a pasted roster. Nothing has been stored. */
export function rosterProblems(problems: readonly RosterProblem[]): Text {
  const shown = problems.slice(0, 8);
  return lines(
    bold('Nothing was added yet. Please mend this and send the whole list again:'),
    ...shown.map((problem) => rosterProblem(problem)),
    problems.length > shown.length ? `and ${problems.length - shown.length} more` : null,
  );
}

/** One problem with its place: a line of a message, or a row of a spreadsheet. */
export function rosterProblem(problem: RosterProblem, place: 'Line' | 'Row' = 'Line'): string {
  const at = place.toLowerCase();
  const value = quote(problem.value, 20);
  switch (problem.kind) {
    case 'long':
      return `${place} ${problem.line}: ${value} has ${problem.length} characters, at most ${NICKNAME_LENGTH}. Shorten it.`;
    case 'twice':
      return `${place} ${problem.line}: ${value} is also on ${at} ${problem.firstLine}. Add a letter to one of them.`;
    case 'present':
      return `${place} ${problem.line}: ${value} is in the class already. Leave it out or add a letter.`;
  }
}

/** An empty roster. */
export function rosterEmpty(): Text {
  return lines('I found no nicknames in that.', ask('roster'));
}

/** Too many at once. */
export function rosterTooMany(sent: number, present: number): Text {
  return lines(
    `That is ${sent} nicknames; with the ${present} already there it is more than ${MAX_CHILDREN}.`,
    'Nothing was added. Send fewer, or make a second class.',
  );
}

/**
 * Join links, to be copied to each family. The one message that may be longer than ten lines: each child needs its own, and
 * nobody reads it as a whole.
 */
export function joinLinks(slips: readonly IssuedSlip[], linkOf: (code: string) => string): Text {
  return lines(
    bold('One link for each child. Give each family only its own.'),
    ...slips.flatMap(({ child, code }) => [
      `${child.number}. ${name(child.nickname)}`,
      linkOf(code),
    ]),
    'A link works for up to four helpers, for 60 days. I keep no copy: a new link replaces the old one.',
  );
}

/** Before links are made for the children without a helper. */
export function askToMakeLinks(children: number): Text {
  if (children === 0) {
    return lines('Every child has a helper. To add one, make a new link for that child.');
  }
  return lines(
    bold(`${count(children, 'child has', 'children have')} no helper.`),
    'Make new links for them? Links given out before for these children stop working.',
  );
}

/** After a roster is stored. No link is made yet: what is made later would end it, and the teacher may want the other way. */
export function rosterAdded(nicknames: readonly string[]): Text {
  return lines(
    `${count(nicknames.length, 'child', 'children')} added. How will the families join?`,
    `${BUTTONS.slipsToPrint}: a join slip for each child, on paper.`,
    `${BUTTONS.missingLinks}: a link for each child, to send on.`,
    'Nothing is made until you ask. What you make later ends what you made before.',
    fullNameCaution(nicknames),
  );
}

/** A caution when some nicknames may hold a surname; null when none does. */
export function fullNameCaution(nicknames: readonly string[]): string | null {
  const [first, ...others] = nicknames.filter(maybeFullName);
  if (first === undefined) return null;
  const which =
    others.length === 0 ? quote(first, 30) : `${quote(first, 30)} and ${others.length} more`;
  return `More than one word: ${which}. Nicknames only, please, no surnames.`;
}

/** For a tap on a button that makes links when links were made since it was shown. */
export const LINKS_MADE =
  'Links were made since this was shown; they are further down. If no list came, tap once more.';
