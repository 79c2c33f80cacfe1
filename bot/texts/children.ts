import {
  type AdjustedChild,
  LEFT_DAYS,
  type ListedChild,
  type RosterChild,
  type SchoolClass,
} from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import { BUTTONS } from './buttons.ts';
import { ownWayLine } from './own-way.ts';
import { quote } from './quote.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** Children that a line names before it counts the others. */
const NAMED = 3;
/** Before a child with a helper, and before one whose family no message reaches: signs, not colours. */
const JOINED_SIGN = '✓';
const SILENT_SIGN = '!';

/** Who has joined and who has not, however many children there are. */
export function childList(schoolClass: SchoolClass, children: readonly ListedChild[]): Text {
  const title = name(schoolClass.title);
  if (children.length === 0) return lines(bold(`${title}: no children yet`));
  const joined = children.filter(({ helpers }) => helpers > 0);
  const left = children.filter((child) => child.left);
  const waiting = children.filter((child) => child.helpers === 0 && !child.left);
  const silent = joined.filter(({ reachable }) => reachable === 0);
  return lines(
    bold(`${title}: ${joined.length} of ${children.length} joined`),
    waiting.length > 0 ? `Not yet: ${someOf(waiting)}` : null,
    left.length > 0 ? `Helper has left: ${someOf(left)}` : null,
    silent.length > 0 ? `Messages no longer arrive: ${someOf(silent)}` : null,
    `${JOINED_SIGN} has a helper. Tap a child to rename or move it, or for a new link.`,
  );
}

/**
 * The first `most` by nickname, the others as a number.
 *
 * @example
 * someOf([{ nickname: 'Wren' }, { nickname: 'Otter' }]); // 'Wren and Otter'
 */
export function someOf(
  children: readonly Pick<RosterChild, 'nickname'>[],
  most: number = NAMED,
): string {
  const [first, ...names] = children.map(({ nickname }) => name(nickname));
  const last = names.at(-1);
  if (first === undefined || last === undefined) return first ?? '';
  const others = names.length + 1 - most;
  if (others <= 1) return `${[first, ...names.slice(0, -1)].join(', ')} and ${last}`;
  return `${[first, ...names.slice(0, most - 1)].join(', ')} and ${others} more`;
}

/** A child's button on the list. */
export function childLabel(child: ListedChild): string {
  const label = numbered(child);
  if (child.helpers === 0) return label;
  return `${child.reachable > 0 ? JOINED_SIGN : SILENT_SIGN} ${label}`;
}

/** A child as on the class's list: `3. Wren`. */
export function numbered({ number, nickname }: Pick<RosterChild, 'number' | 'nickname'>): string {
  return `${number}. ${name(nickname)}`;
}

/** One child at a glance. */
export function childHome(
  schoolClass: SchoolClass,
  child: ListedChild & Partial<Pick<AdjustedChild, 'adjustment'>>,
): Text {
  const { eveningTime } = child;
  return lines(
    bold(`${numbered(child)} · ${name(schoolClass.title)}`),
    helpersOf(child),
    eveningTime === null
      ? `Drill at ${schoolClass.eveningTime}`
      : `Drill at ${eveningTime}, the family’s own time`,
    child.adjustment ? ownWayLine(child.adjustment) : null,
  );
}

function helpersOf(child: ListedChild): string {
  if (child.left) return 'Its helper has left.';
  if (child.helpers === 0) return 'Not joined yet.';
  const helpers = count(child.helpers, 'helper', 'helpers');
  if (child.reachable === child.helpers) return helpers;
  if (child.reachable === 0) return `${helpers}: messages no longer arrive`;
  return `${helpers}, ${child.reachable} of them within reach`;
}

/** Before a new link is made for one child. */
export function askToMakeLink(child: RosterChild): Text {
  return lines(
    bold(`A new link for ${name(child.nickname)}?`),
    'The link or slip given out before stops working. Helpers who have joined stay.',
  );
}

/** Asks for another nickname. */
export function askNickname({ nickname }: RosterChild): Text {
  return lines(
    `What shall ${name(nickname)} be called? At most ${NICKNAME_LENGTH} characters, no surname.`,
  );
}

/** A nickname that cannot be used. `length` is in characters, 0 when there is nothing to see. */
export function badNickname(typed: string, length: number): Text {
  return lines(
    length === 0
      ? 'I see no nickname in that.'
      : `${quote(typed, 20)} has ${length} characters, at most ${NICKNAME_LENGTH}.`,
    `Send a nickname of 1 to ${NICKNAME_LENGTH} characters.`,
  );
}

/** After a child is renamed. */
export function renamed(before: string, now: string): Text {
  return lines(`${name(before)} is called ${name(now)} now, in everything from here on.`);
}

/** Asks which class a child moves to. `others` is how many classes there are to choose from. */
export function askWhichClass({ nickname }: RosterChild, others: number): Text {
  const child = name(nickname);
  if (others === 0) {
    return lines('You have no other class. Make one with /newclass, then move the child there.');
  }
  return lines(
    bold(`Which class does ${child} move to?`),
    'Helpers, marks and slips go along. A drill that was sent today stays; from the next evening on it is the other class’s plan, time and workbook. Each helper is told once.',
  );
}

/** After a child was moved. `hasPlan` is whether drills go out in the class it came to. */
export function childMoved(
  nickname: string,
  { to, number, hasPlan }: { to: SchoolClass; number: number; hasPlan: boolean },
): Text {
  return lines(
    bold(`${name(nickname)} is in ${name(to.title)} now, with the number ${number}.`),
    'Each helper is told.',
    hasPlan ? null : 'That class has no week plan yet: nothing goes out there.',
  );
}

/** After a child was archived. */
export function childArchived({ nickname }: RosterChild): Text {
  return lines(
    bold(`${name(nickname)} is archived.`),
    `No drill goes out any more and the join slips are dead. Marks and number are kept: ${BUTTONS.archivedChildren} brings ${name(nickname)} back within ${LEFT_DAYS} days. Then all of it is deleted.`,
  );
}

/** The archived children. */
export function archivedList(schoolClass: SchoolClass, archived: readonly RosterChild[]): Text {
  return lines(
    bold(
      `${name(schoolClass.title)}: ${count(archived.length, 'archived child', 'archived children')}`,
    ),
    archived.length > 0
      ? 'Tap one to bring it back, with its number, helpers and marks. Its drills start with the next evening.'
      : null,
  );
}

/** After a child was brought back. */
export function broughtBack(nickname: string): string {
  return `${name(nickname)} is on the list again.`;
}
