import {
  adjustmentOf,
  currentBook,
  getPlans,
  type IssuedSlip,
  type ListedChild,
  listBreaks,
  localTimeAt,
  nextPages,
  readMemory,
  type SchoolClass,
  SLIP_LIMITS,
  type Store,
  type TeacherScope,
} from '../../db/index.ts';
import {
  addDays,
  adjustPlan,
  composeEvening,
  type Drill,
  type FactId,
  type FactMemory,
  type SchoolDay,
  type WeekPlan,
  weekdayOf,
} from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { writeCode } from '../input/written-code.ts';
import { readIn } from '../language/index.ts';
import {
  answerPages,
  cardPages,
  classDrill,
  drillCards,
  drillTasks,
  type Page,
  type PaperSize,
  type PracticeSheet,
  practicePages,
  printWeek,
  slipPages,
} from '../paper/index.ts';
import { longDate, PAPER_WORDS } from '../texts/paper.ts';
import { dayRange, shortDate } from '../texts/words.ts';

/** What every paper about a class is made from. What hangs in a classroom or goes home is in the class's language. */
export interface PaperOrder {
  readonly schoolClass: SchoolClass;
  readonly paper: PaperSize;
  readonly today: SchoolDay;
}

/** The last day on which slips made now work from morning to night, in the class's own zone. */
export function lastDayOfSlips({ zone }: SchoolClass, now: Date): SchoolDay {
  const end = new Date(now.getTime() + SLIP_LIMITS.days * 86_400_000);
  return addDays(localTimeAt(end, zone).day, -1);
}

/** Join slips as they were written. */
export function slipPapers(
  { schoolClass, paper }: PaperOrder,
  slips: readonly IssuedSlip[],
  { until, linkOf }: { readonly until: SchoolDay } & Pick<BotDeps, 'linkOf'>,
): Page[] {
  const { host, pathname } = new URL(linkOf(''));
  return slipPages({
    classTitle: schoolClass.title,
    slips: slips.map(({ child: { number, nickname }, code }) => ({
      number,
      nickname,
      link: linkOf(code),
      code: writeCode(code),
    })),
    place: `${host}${pathname}`,
    until: longDate(until, schoolClass.language),
    paper,
    words: PAPER_WORDS[schoolClass.language],
  });
}

/** The cards of the plan in force, the same all week, with all answers at the end; null without a plan. */
export async function cardPapers(
  store: Store,
  scope: TeacherScope,
  order: PaperOrder,
): Promise<Page[] | null> {
  const { active } = await getPlans(store, scope);
  if (!active) return null;
  const { schoolClass, paper, today } = order;
  const monday = addDays(today, 1 - weekdayOf(today));
  const seed = `${schoolClass.id} ${monday} cards`;
  const { language } = schoolClass;
  return readIn(language, () => {
    const cards = drillCards(classDrill(active.plan, monday, seed), language);
    const right = shortDate(monday);
    const words = PAPER_WORDS[language];
    const answers = { title: schoolClass.title, right, cards, paper, words };
    return [...cardPages({ cards, paper }), ...answerPages(answers)];
  });
}

/** Why there is no practice sheet. */
export type NoSheets = 'no_plan' | 'no_days';

/**
 * A practice sheet for each child given, adjusted as its evenings are and composed from the child's own past where there is
 * one, and one without a name.
 */
export async function sheetPapers(
  store: Store,
  scope: TeacherScope,
  order: PaperOrder & { readonly children: readonly ListedChild[] },
): Promise<Page[] | NoSheets> {
  const { schoolClass, paper, today, children } = order;
  const { active } = await getPlans(store, scope);
  if (!active) return 'no_plan';
  const breaks = await listBreaks(store, schoolClass.id, today);
  const days = printWeek(today, { weekdays: schoolClass.weekdays, breaks });
  const [first, last] = [days.at(0), days.at(-1)];
  if (!first || !last) return 'no_days';
  const sheets: PracticeSheet[] = [];
  for (const child of children) {
    const memory = await readMemory(store, child.id);
    const plan = adjustPlan(active.plan, await adjustmentOf(store, child.id));
    const next = await nextPages(store, { childId: child.id, classId: schoolClass.id });
    const workbook = next && { title: next.book.title, page: next.from };
    sheets.push({ child, days: paperDays(plan, schoolClass, days, child.id, memory), workbook });
  }
  const book = await currentBook(store, scope);
  sheets.push({
    child: null,
    days: paperDays(active.plan, schoolClass, days, schoolClass.id),
    workbook: book && { title: book.title, page: null },
  });
  return readIn(schoolClass.language, () =>
    practicePages({
      sheets,
      right: `${schoolClass.title} · ${dayRange(first, last)}`,
      paper,
      words: PAPER_WORDS[schoolClass.language],
    }),
  );
}

function paperDays(
  plan: WeekPlan,
  { language }: SchoolClass,
  days: readonly SchoolDay[],
  whose: string,
  memory?: ReadonlyMap<FactId, FactMemory>,
): PracticeSheet['days'] {
  return readIn(language, () =>
    days.map((day) => ({
      label: shortDate(day),
      tasks: drillTasks(drillFor(plan, day, `${whose} ${day} paper`, memory), language),
    })),
  );
}

function drillFor(
  plan: WeekPlan,
  today: SchoolDay,
  seed: string,
  memory: ReadonlyMap<FactId, FactMemory> = new Map(),
): Drill {
  if (memory.size === 0) return classDrill(plan, today, seed);
  return composeEvening({ plan, memory, lastStarts: new Map(), today, seed });
}
