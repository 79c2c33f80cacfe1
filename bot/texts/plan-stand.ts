import type { PlanSource, SchoolClass } from '../../db/index.ts';
import { estimateMinutes, PLAN_LIMITS, type WeekPlan } from '../../drills/index.ts';
import { partLines } from './plan.ts';
import { shorten } from './quote.ts';
import { bold, count, lines, name, type Text } from './words.ts';

/** What the plan's screen says besides its parts. */
export interface PlanStand {
  /** Where the changes come from that are not in use yet; null while there are none. */
  readonly draft: PlanSource | null;
  /** Where the plan in use comes from; null while there is none. */
  readonly active: PlanSource | null;
  /** The term in use, and which week of it the next evening is in; null before its first week. */
  readonly term: { readonly week: number | null; readonly of: number } | null;
  readonly book: { readonly title: string; readonly pagesADay: number } | null;
}

/** The week plan, or the changes to it. */
export function planScreen(schoolClass: SchoolClass, plan: WeekPlan, stand: PlanStand): Text {
  const isFull = plan.parts.length >= PLAN_LIMITS.parts.max;
  const full = `${PLAN_LIMITS.parts.max} parts are the most: remove one to add another.`;
  const state = [planState(stand), isFull ? full : ''].filter((words) => words !== '').join(' ');
  return lines(
    bold(`${name(schoolClass.title)}: week plan`),
    ...partLines(plan),
    plan.parts.length === 0
      ? 'Nothing yet. Add a part.'
      : `About ${count(estimateMinutes(plan), 'minute', 'minutes')} an evening${pagesOf(stand)}.`,
    stand.draft ? bold(state) : state || null,
  );
}

const BOOK_TITLE_LENGTH = 24;

function pagesOf({ book }: PlanStand): string {
  if (!book) return '';
  const pages = count(book.pagesADay, 'page', 'pages');
  return `, then ${pages} of ${shorten(book.title, BOOK_TITLE_LENGTH)}`;
}

const DRAFT_FROM = {
  teacher: 'Changed, not in use yet.',
  proposal: 'As the digest proposes, not in use yet.',
  scheme: 'As in the term, not in use yet.',
} as const;

function planState({ draft, active, term }: PlanStand): string {
  if (draft) return DRAFT_FROM[draft];
  if (!active) return '';
  if (!term) return active === 'proposal' ? 'In use, as the digest proposed.' : 'In use.';
  const { week, of } = term;
  if (week !== null && week > of) return 'In use. The term is over; its last plan stays.';
  if (active === 'scheme') return `In use, from the term${week ? `: week ${week} of ${of}` : ''}.`;
  return week === null
    ? 'In use until the term begins.'
    : `In use this week instead of the term’s week ${week} of ${of}.`;
}
