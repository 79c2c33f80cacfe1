import {
  estimateMinutes,
  type SchoolDay,
  type WeekPlan,
  type WeekSummary,
} from '../../drills/index.ts';
import type { Page } from '../screens/pages.ts';
import { stoppedLine } from './digest-calls.ts';
import { factInWords } from './facts.ts';
import { partInList } from './part-title.ts';
import { bold, count, lines, listOf, name, shortDate, type Text } from './words.ts';

const MOST_NAMES = 6;
const MOST_WOBBLES = 3;

/** A class today. `statuses` has an entry for each child that was sent an evening; `evening` says what today has in store. */
export interface ClassNow {
  readonly title: string;
  readonly day: SchoolDay;
  readonly practised: readonly string[];
  readonly notToday: number;
  readonly waiting: number;
  readonly unsent: number;
  readonly evening:
    | { readonly kind: 'ahead'; readonly time: string }
    | { readonly kind: 'past'; readonly time: string }
    | { readonly kind: 'none'; readonly next: SchoolDay | null };
  readonly plan: WeekPlan | null;
  readonly children: number;
  readonly week: WeekSummary;
}

/** A class's standing today, nine lines at most. */
export function classNow(now: ClassNow): Text {
  const { week, plan } = now;
  return lines(
    bold(`${name(now.title)} now, ${shortDate(now.day)}`),
    ...tonight(now),
    plan === null ? 'No week plan in use: nothing goes out.' : planWords(plan),
    week.wobbling.length > 0 ? `Wobbling this week: ${wobbles(week)}.` : null,
    `${week.joined} of ${count(now.children, 'child', 'children')} with a helper.`,
    stoppedLine(week.calls),
  );
}

function tonight(now: ClassNow): (string | null)[] {
  const { evening, practised, notToday, waiting, unsent } = now;
  const sent = practised.length + notToday + waiting + unsent;
  if (sent === 0) return [nothingYet(evening)];
  const rest = [
    ...(waiting > 0 ? [`${waiting} not marked yet`] : []),
    ...(notToday > 0 ? [`${notToday} said not today`] : []),
    ...(unsent > 0 ? [`${unsent} not delivered`] : []),
  ];
  return [
    `Practised today: ${practised.length} of ${sent}${practised.length > 0 ? `: ${someOf(practised)}` : ''}.`,
    rest.length > 0 ? `${listOf(rest)}.` : null,
  ];
}

function nothingYet(evening: ClassNow['evening']): string {
  if (evening.kind === 'ahead') return `Tonight’s drill goes out from ${evening.time} on.`;
  if (evening.kind === 'past') return `No drill went out today at ${evening.time}.`;
  return evening.next === null
    ? 'No drill today.'
    : `No drill today. The next school day is ${shortDate(evening.next)}.`;
}

function someOf(nicknames: readonly string[]): string {
  const shown = nicknames.slice(0, MOST_NAMES).map(name);
  const more = nicknames.length - shown.length;
  return listOf([...shown, ...(more > 0 ? [`${more} more`] : [])]);
}

function planWords(plan: WeekPlan): string {
  const titles = plan.parts.map(partInList).join('; ');
  return `In the plan: ${titles}. About ${count(estimateMinutes(plan), 'minute', 'minutes')}.`;
}

function wobbles({ wobbling }: WeekSummary): string {
  return wobbling
    .slice(0, MOST_WOBBLES)
    .map(({ facts }) => listOf(facts.map(factInWords)))
    .join('; ');
}

/** Choosing a child. A sign stands before who has practised today. */
export function chooseChild(
  title: string,
  { page, pages }: Pick<Page<unknown>, 'page' | 'pages'>,
): Text {
  return lines(
    bold(`${name(title)}: whose page?`),
    `✓ has practised today.${pages > 1 ? ` Page ${page + 1} of ${pages}.` : ''}`,
  );
}

/** A child on its button. */
export function childButton(
  { number, nickname }: { readonly number: number; readonly nickname: string },
  hasPractised: boolean,
): string {
  return `${hasPractised ? '✓ ' : ''}${number}. ${name(nickname)}`;
}

/** The digest that came last. */
export function digestButton(day: SchoolDay): string {
  return `Digest of ${shortDate(day)}`;
}
