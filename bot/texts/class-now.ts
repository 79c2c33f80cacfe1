import {
  estimateMinutes,
  type SchoolDay,
  type WeekPlan,
  type WeekSummary,
} from '../../drills/index.ts';
import { say } from '../language/index.ts';
import type { Page } from '../screens/pages.ts';
import { clauses } from './clauses.ts';
import { stoppedLine } from './digest-calls.ts';
import { factInWords } from './facts.ts';
import { partInList } from './part-title.ts';
import { bold, lines, listOf, name, shortDate, type Text } from './words.ts';

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
    bold(say('class-now-title', { title: name(now.title), day: shortDate(now.day) })),
    ...tonight(now),
    plan === null ? say('class-now-no-plan') : planWords(plan),
    week.wobbling.length > 0 ? say('class-now-wobbling', { facts: wobbles(week) }) : null,
    say('class-now-helpers', { joined: week.joined, children: now.children }),
    stoppedLine(week.calls),
  );
}

function tonight(now: ClassNow): (string | null)[] {
  const { evening, practised, notToday, waiting, unsent } = now;
  const sent = practised.length + notToday + waiting + unsent;
  if (sent === 0) return [nothingYet(evening)];
  const rest = [
    ...(waiting > 0 ? [say('class-now-waiting', { count: waiting })] : []),
    ...(notToday > 0 ? [say('class-now-not-today', { count: notToday })] : []),
    ...(unsent > 0 ? [say('digest-undelivered', { count: unsent })] : []),
  ];
  const tally = { practised: practised.length, sent };
  return [
    practised.length > 0
      ? say('class-now-practised', { ...tally, names: someOf(practised) })
      : say('class-now-practised-none', tally),
    rest.length > 0 ? say('class-now-rest', { rest: listOf(rest) }) : null,
  ];
}

function nothingYet(evening: ClassNow['evening']): string {
  if (evening.kind !== 'none') return say(`class-now-${evening.kind}`, { time: evening.time });
  return evening.next === null
    ? say('class-now-no-drill')
    : say('class-now-next-day', { day: shortDate(evening.next) });
}

function someOf(nicknames: readonly string[]): string {
  const shown = nicknames.slice(0, MOST_NAMES).map(name);
  const more = nicknames.length - shown.length;
  return listOf([...shown, ...(more > 0 ? [say('class-now-more-names', { count: more })] : [])]);
}

function planWords(plan: WeekPlan): string {
  const parts = clauses(plan.parts.map(partInList));
  return say('class-now-plan', { parts, minutes: estimateMinutes(plan) });
}

function wobbles({ wobbling }: WeekSummary): string {
  const worst = wobbling.slice(0, MOST_WOBBLES);
  return clauses(worst.map(({ facts }) => listOf(facts.map((fact) => factInWords(fact)))));
}

/** Choosing a child. A sign stands before who has practised today. */
export function chooseChild(
  title: string,
  { page, pages }: Pick<Page<unknown>, 'page' | 'pages'>,
): Text {
  return lines(
    bold(say('class-now-choose-child', { title: name(title) })),
    pages > 1 ? say('class-now-sign-paged', { page: page + 1, pages }) : say('class-now-sign'),
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
  return say('class-now-digest-of', { day: shortDate(day) });
}
