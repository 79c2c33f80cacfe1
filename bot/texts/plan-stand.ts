import type { PlanSource, SchoolClass } from '../../db/index.ts';
import { estimateMinutes, PLAN_LIMITS, type WeekPlan } from '../../drills/index.ts';
import { say } from '../language/index.ts';
import { partLines } from './plan.ts';
import { shorten } from './quote.ts';
import { bold, lines, name, type Text } from './words.ts';

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
  const full = isFull ? say('plan-stand-full', { max: PLAN_LIMITS.parts.max }) : '';
  const state = [planState(stand), full].filter((words) => words !== '').join(' ');
  return lines(
    bold(say('plan-stand-title', { class: name(schoolClass.title) })),
    ...partLines(plan),
    plan.parts.length === 0 ? say('plan-stand-nothing') : eveningOf(plan, stand),
    stand.draft ? bold(state) : state || null,
  );
}

const BOOK_TITLE_LENGTH = 24;

function eveningOf(plan: WeekPlan, { book }: PlanStand): string {
  const minutes = say('words-minutes', { count: estimateMinutes(plan) });
  if (!book) return say('plan-stand-evening', { minutes });
  const title = shorten(book.title, BOOK_TITLE_LENGTH);
  return say('plan-stand-evening-pages', { minutes, pages: book.pagesADay, book: title });
}

function planState({ draft, active, term }: PlanStand): string {
  if (draft) return say(`plan-stand-draft-${draft}`);
  if (!active) return '';
  if (!term) {
    return active === 'proposal' ? say('plan-stand-proposed') : say('plan-stand-in-use');
  }
  const { week, of } = term;
  if (week !== null && week > of) return say('plan-stand-term-over');
  if (active === 'scheme') {
    return week ? say('plan-stand-term-week', { week, of }) : say('plan-stand-term');
  }
  return week === null ? say('plan-stand-until-term') : say('plan-stand-instead', { week, of });
}
