import {
  type IssuedSlip,
  type ListedChild,
  MAX_CHILDREN,
  type SchoolClass,
} from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import type { RosterProblem } from '../input/roster.ts';
import { BUTTONS } from './buttons.ts';
import { quote } from './quote.ts';
import { ask } from './teacher.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** The roster with who has joined. */
export function childList(schoolClass: SchoolClass, children: readonly ListedChild[]): Text {
  const joined = children.filter((child) => child.helpers > 0).length;
  return lines(
    bold(`${name(schoolClass.title)}: ${joined} of ${children.length} have a helper`),
    ...children.map((child) => `${child.number}. ${name(child.nickname)}${helperState(child)}`),
    children.length === 0 ? 'No children yet.' : null,
  );
}

function helperState(child: ListedChild): string {
  if (child.helpers === 0) return child.left ? ': its helper has left' : ': not joined yet';
  return child.reachable === 0 ? ': messages no longer arrive' : '';
}

/** What is wrong with a pasted roster. Nothing has been stored. */
export function rosterProblems(problems: readonly RosterProblem[]): Text {
  const shown = problems.slice(0, 8);
  return lines(
    bold('Nothing was added yet. Please mend this and send the whole list again:'),
    ...shown.map(rosterProblem),
    problems.length > shown.length ? `and ${problems.length - shown.length} more` : null,
  );
}

function rosterProblem(problem: RosterProblem): string {
  const value = quote(problem.value, 20);
  switch (problem.kind) {
    case 'long':
      return `Line ${problem.line}: ${value} has ${problem.length} characters, at most ${NICKNAME_LENGTH}. Shorten it.`;
    case 'twice':
      return `Line ${problem.line}: ${value} is also on line ${problem.firstLine}. Add a letter to one of them.`;
    case 'present':
      return `Line ${problem.line}: ${value} is in the class already. Leave it out or add a letter.`;
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

/** Join links, to be copied to each family. */
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

/** Which child is the new link for? */
export function askWhichChild(): Text {
  return lines('For which child? Links given out before for this child stop working.');
}

/** After a roster is stored. */
export function rosterAdded(added: number): Text {
  return lines(childrenAdded(added));
}

/** After a roster is stored whose links did not all get through. */
export function rosterAddedWithoutLinks(added: number): Text {
  return lines(
    childrenAdded(added),
    `The links could not all be sent: tap ${BUTTONS.children}, then ${BUTTONS.missingLinks}.`,
  );
}

function childrenAdded(added: number): string {
  return `${count(added, 'child', 'children')} added.`;
}

/** For a tap on a button that makes links when links were made since it was shown. */
export const LINKS_MADE =
  'Links were made since this was shown; they are further down. If no list came, tap once more.';
