import type { Scheme, SchoolClass } from '../../db/index.ts';
import {
  PLAN_LIMITS,
  type SchoolDay,
  TERM_WEEKS,
  YEAR_SHARES,
  type YearShare,
} from '../../drills/index.ts';
import { packPlace } from '../callback/plan-place.ts';
import { BUTTONS, choiceButton, gradeButton } from '../texts/buttons.ts';
import * as texts from '../texts/term.ts';
import { pageRow } from './page-row.ts';
import { pageOf } from './pages.ts';
import { partRows } from './plan-screens.ts';
import { type Button, button, rows, type Screen } from './screen.ts';
import { undoButton } from './undo.ts';

/** Weeks one page of a term shows: as many lines as a phone shows at a glance. */
export const WEEKS_A_PAGE = 5;
/** How long a new term can be made. Any other length comes by adding weeks or taking them out. */
export const NEW_TERM_WEEKS = [6, 8, 10, 12, 14] as const;
/** Letters of a term's id that stand for it in a button. */
const SIGN_LENGTH = 12;

/** A class's term as its screens see it. */
export interface TermView extends texts.TermWords {
  readonly schoolClass: SchoolClass;
  readonly scheme: Scheme;
}

/** The page of a term on which a week is. */
export function pageWith(week: number): number {
  return Math.floor((week - 1) / WEEKS_A_PAGE);
}

/** Stands for a term in a button; `none` for no term. */
export function signOf(scheme: Scheme | null): string {
  return scheme ? scheme.id.slice(-SIGN_LENGTH) : 'none';
}

/** The term, week by week. `act` is what was just done and can be taken back. */
export function termScreen(view: TermView, at: number, act: string | null = null): Screen {
  const { schoolClass, scheme } = view;
  const { id: classId } = schoolClass;
  const { shown, page, pages } = pageOf(scheme.weeks, at, WEEKS_A_PAGE);
  const first = page * WEEKS_A_PAGE + 1;
  const weeks = shown.map((_, index) =>
    button(texts.termWeekButton(first + index), {
      kind: 'termWeek',
      classId,
      week: first + index,
    }),
  );
  const shift = (label: string, later: number) =>
    button(label, { kind: 'termShift', classId, from: scheme.firstDay, later });
  return {
    text: texts.termScreen(schoolClass, view, { first, shown: shown.length }),
    buttons: [
      ...rows(weeks, 3),
      ...pageRow({ page, pages }, (to) => ({ kind: 'term', classId, page: to })),
      [shift(BUTTONS.termEarlier, 0), shift(BUTTONS.termLater, 1)],
      [
        button(BUTTONS.anewTerm, { kind: 'termNew', classId, weeks: 10, share: 0 }),
        button(BUTTONS.endTerm, { kind: 'termEnd', classId, was: signOf(scheme) }),
      ],
      ...(act ? [[undoButton(act)]] : []),
      [toWeekPlan(classId)],
    ],
  };
}

/** One week of the term: its parts, and whether it stays, comes twice or goes. */
export function termWeekScreen(view: TermView, week: number): Screen {
  const { schoolClass, scheme } = view;
  const { id: classId } = schoolClass;
  const plan = scheme.weeks[week - 1] ?? { parts: [] };
  const of = scheme.weeks.length;
  const part = packPlace({ week, part: plan.parts.length, slot: 0 });
  const add = button(BUTTONS.addPart, { kind: 'planStrand', classId, part, strand: 'all' });
  return {
    text: texts.termWeek(view, week),
    buttons: [
      ...partRows(classId, plan, week),
      ...(plan.parts.length < PLAN_LIMITS.parts.max ? [[add]] : []),
      [
        ...(of < TERM_WEEKS.max
          ? [button(BUTTONS.repeatWeek, { kind: 'termRepeat', classId, week, of })]
          : []),
        ...(of > TERM_WEEKS.min
          ? [button(BUTTONS.removeWeek, { kind: 'termRemove', classId, week, of })]
          : []),
      ],
      [button(BUTTONS.back, { kind: 'term', classId, page: pageWith(week) })],
    ],
  };
}

/** What a new term is made from. */
export interface TermChoice {
  readonly weeks: number;
  readonly share: YearShare;
  /** The days it can begin on, and how many steps it would have. */
  readonly starts: readonly SchoolDay[];
  readonly steps: number;
  /** The class's grade in words. */
  readonly grade: string;
  /** The term that it would take the place of. */
  readonly current: Scheme | null;
}

/** How long a new term is, which of the year's steps it has, and from when. */
export function newTermScreen(schoolClass: SchoolClass, choice: TermChoice): Screen {
  const { id: classId } = schoolClass;
  const { weeks, share, starts, steps, grade, current } = choice;
  const shareAt = YEAR_SHARES.indexOf(share);
  const lengths = NEW_TERM_WEEKS.map((each) =>
    button(choiceButton(texts.weeksButton(each), each === weeks), {
      kind: 'termNew',
      classId,
      weeks: each,
      share: shareAt,
    }),
  );
  const shares = YEAR_SHARES.map((each, at) =>
    button(choiceButton(texts.shareButton(each), each === share), {
      kind: 'termNew',
      classId,
      weeks,
      share: at,
    }),
  );
  const was = signOf(current);
  return {
    text: texts.newTerm(schoolClass, grade, steps),
    buttons: [
      ...rows(lengths, 3),
      ...rows(shares, 2),
      ...starts.map((from) => [
        button(texts.makeTermButton(from), {
          kind: 'termMake',
          classId,
          weeks,
          share: shareAt,
          from,
          was,
        }),
      ]),
      [button(gradeButton(grade), { kind: 'curriculum', classId })],
      [current ? button(BUTTONS.back, { kind: 'term', classId, page: 0 }) : toWeekPlan(classId)],
    ],
  };
}

/** A class without a grade is asked for it first. */
export function termNeedsGradeScreen(schoolClass: SchoolClass): Screen {
  const { id: classId } = schoolClass;
  return {
    text: texts.termNeedsGrade(schoolClass),
    buttons: [[button(gradeButton(null), { kind: 'curriculum', classId })], [toWeekPlan(classId)]],
  };
}

function toWeekPlan(classId: string): Button {
  return button(BUTTONS.back, { kind: 'plan', classId });
}
