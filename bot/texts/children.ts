import {
  type AdjustedChild,
  LEFT_DAYS,
  type ListedChild,
  type RosterChild,
  type SchoolClass,
} from '../../db/index.ts';
import { NICKNAME_LENGTH } from '../input/nickname.ts';
import { say } from '../language/index.ts';
import { BUTTONS } from './buttons.ts';
import { ownWayLine } from './own-way.ts';
import { quote } from './quote.ts';
import { bold, lines, listOf, name, type Text } from './words.ts';

/** Children that a line names before it counts the others. */
const NAMED = 3;
/** Before a child with a helper, and before one whose family no message reaches: signs, not colours. */
const JOINED_SIGN = '✓';
const SILENT_SIGN = '!';

/** Who has joined and who has not, however many children there are. */
export function childList(schoolClass: SchoolClass, children: readonly ListedChild[]): Text {
  const title = name(schoolClass.title);
  if (children.length === 0) return lines(bold(say('children-none', { class: title })));
  const joined = children.filter(({ helpers }) => helpers > 0);
  const left = children.filter((child) => child.left);
  const waiting = children.filter((child) => child.helpers === 0 && !child.left);
  const silent = joined.filter(({ reachable }) => reachable === 0);
  return lines(
    bold(say('children-joined', { class: title, joined: joined.length, all: children.length })),
    waiting.length > 0 ? say('children-waiting', { names: someOf(waiting) }) : null,
    left.length > 0 ? say('children-left', { names: someOf(left) }) : null,
    silent.length > 0 ? say('children-unreached', { names: someOf(silent) }) : null,
    say('children-legend', { sign: JOINED_SIGN }),
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
  const names = children.map(({ nickname }) => name(nickname));
  const others = names.length - most;
  if (others <= 1) return listOf(names);
  return listOf([...names.slice(0, most), say('children-more', { more: others })]);
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
      ? say('children-drill', { time: schoolClass.eveningTime })
      : say('children-drill-own', { time: eveningTime }),
    child.adjustment ? ownWayLine(child.adjustment) : null,
  );
}

function helpersOf({ left, helpers, reachable }: ListedChild): string {
  if (left) return say('children-helper-left');
  if (helpers === 0) return say('children-not-joined');
  if (reachable === helpers) return say('children-helpers', { helpers });
  if (reachable === 0) return say('children-helpers-unreached', { helpers });
  return say('children-helpers-some', { helpers, reachable });
}

/** Before a new link is made for one child. */
export function askToMakeLink(child: RosterChild): Text {
  return lines(
    bold(say('children-link-title', { child: name(child.nickname) })),
    say('children-link-note'),
  );
}

/** Asks for another nickname. */
export function askNickname({ nickname }: RosterChild): Text {
  return lines(say('children-nickname', { child: name(nickname), most: NICKNAME_LENGTH }));
}

/** A nickname that cannot be used. `length` is in characters, 0 when there is nothing to see. */
export function badNickname(typed: string, length: number): Text {
  return lines(
    length === 0
      ? say('children-nickname-empty')
      : say('children-nickname-long', { typed: quote(typed, 20), length, most: NICKNAME_LENGTH }),
    say('children-nickname-again', { most: NICKNAME_LENGTH }),
  );
}

/** After a child is renamed. */
export function renamed(before: string, now: string): Text {
  return lines(say('children-renamed', { before: name(before), now: name(now) }));
}

/** Asks which class a child moves to. `others` is how many classes there are to choose from. */
export function askWhichClass({ nickname }: RosterChild, others: number): Text {
  if (others === 0) return lines(say('children-move-no-class'));
  return lines(
    bold(say('children-move-title', { child: name(nickname) })),
    say('children-move-note'),
  );
}

/** After a child was moved. `hasPlan` is whether drills go out in the class it came to. */
export function childMoved(
  nickname: string,
  { to, number, hasPlan }: { to: SchoolClass; number: number; hasPlan: boolean },
): Text {
  return lines(
    bold(say('children-moved', { child: name(nickname), class: name(to.title), number })),
    say('children-moved-told'),
    hasPlan ? null : say('children-moved-no-plan'),
  );
}

/** After a child was archived. */
export function childArchived({ nickname }: RosterChild): Text {
  const child = name(nickname);
  return lines(
    bold(say('children-archived', { child })),
    say('children-archived-note', { button: BUTTONS.archivedChildren, child, days: LEFT_DAYS }),
  );
}

/** The archived children. */
export function archivedList(schoolClass: SchoolClass, archived: readonly RosterChild[]): Text {
  return lines(
    bold(say('children-archive-list', { class: name(schoolClass.title), count: archived.length })),
    archived.length > 0 ? say('children-archive-tap') : null,
  );
}

/** After a child was brought back. */
export function broughtBack(nickname: string): string {
  return say('children-back', { child: name(nickname) });
}
