import {
  followTerm,
  getClass,
  moveScheme,
  removeSchemeWeek,
  repeatSchemeWeek,
  retireScheme,
  startScheme,
  type TeacherScope,
} from '../../db/index.ts';
import { parseSchoolDay, shiftedStart, YEAR_SHARES, type YearShare } from '../../drills/index.ts';
import { NEW_TERM_WEEKS, pageWith, signOf } from '../screens/term-screens.ts';
import { termMovedOn } from '../texts/term.ts';
import { readPlanScreen } from './read-plan.ts';
import { newTerm, plansOf, readTerm, readTermWeek, startsOf, USUAL_TERM } from './read-term.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { readTermStand } from './term-stand.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about the term, the parts of its weeks apart. */
export const termTaps: TapHandlers<
  | 'term'
  | 'termNew'
  | 'termMake'
  | 'termWeek'
  | 'termRepeat'
  | 'termRemove'
  | 'termShift'
  | 'termEnd'
> = {
  term: (tap, { classId, page }) =>
    turn(tap, classId, (scope) => readTerm(tap.deps.store, scope, { page, now: nowOf(tap) })),
  termNew: (tap, { classId, weeks, share }) =>
    turn(tap, classId, async (scope) =>
      newTerm(await readTermStand(tap.deps.store, scope, nowOf(tap)), wishOf(weeks, share)),
    ),
  termMake: make,
  termWeek: (tap, { classId, week }) =>
    turn(tap, classId, (scope) => readTermWeek(tap.deps.store, scope, { week, now: nowOf(tap) })),
  termRepeat: async (tap, { classId, week, of }) => {
    const { store } = tap.deps;
    const scope = await teacherScope(store, tap.userId, classId);
    const now = nowOf(tap);
    const isDone = await repeatSchemeWeek(store, scope, { week, of, now });
    await tap.answer(isDone ? undefined : termMovedOn(), 'alert');
    await follow(tap, scope);
    const page = pageWith(week + 1);
    await tap.show(await readTerm(store, scope, { page, now }));
  },
  termRemove: async (tap, { classId, week, of }) => {
    const { store } = tap.deps;
    const scope = await teacherScope(store, tap.userId, classId);
    const now = nowOf(tap);
    const act = await removeSchemeWeek(store, scope, { week, of, now });
    await tap.answer(act === null ? termMovedOn() : undefined, 'alert');
    await follow(tap, scope);
    await tap.show(await readTerm(store, scope, { page: pageWith(week), now, act }));
  },
  termShift: shift,
  termEnd: end,
};

/** Makes the term that the button stands for, unless another one is in use by now. */
async function make(
  tap: Tap,
  action: { classId: string; weeks: number; share: number; from: string; was: string },
): Promise<void> {
  const { store } = tap.deps;
  const scope = await teacherScope(store, tap.userId, action.classId);
  const now = nowOf(tap);
  const stand = await readTermStand(store, scope, now);
  const wish = wishOf(action.weeks, action.share);
  const firstDay = parseSchoolDay(action.from);
  const weeks = plansOf(stand, wish);
  if (!firstDay || !startsOf(stand).includes(firstDay) || weeks.length === 0) {
    await tap.answer(termMovedOn(), 'alert');
    return tap.show(newTerm(stand, wish));
  }
  const instead = stand.scheme?.id ?? null;
  const isAsThought = signOf(stand.scheme) === action.was;
  const act = isAsThought
    ? await startScheme(store, scope, { firstDay, weeks, instead, now })
    : null;
  await tap.answer(act === null ? termMovedOn() : undefined, 'alert');
  await follow(tap, scope);
  await tap.show(await readTerm(store, scope, { page: 0, now, act }));
}

/** Moves the whole term, from the week it begins in to the one after or before. */
async function shift(
  tap: Tap,
  { classId, from, later }: { classId: string; from: string; later: number },
): Promise<void> {
  const { store } = tap.deps;
  const scope = await teacherScope(store, tap.userId, classId);
  const now = nowOf(tap);
  const { calendar } = await readTermStand(store, scope, now);
  const first = parseSchoolDay(from);
  const to = first && shiftedStart(first, calendar, later === 1 ? 1 : -1);
  const isDone = first && to ? await moveScheme(store, scope, { from: first, to, now }) : false;
  await tap.answer(isDone ? undefined : termMovedOn(), 'alert');
  await follow(tap, scope);
  await tap.show(await readTerm(store, scope, { page: 0, now }));
}

/** Takes the term out of use. */
async function end(tap: Tap, { classId, was }: { classId: string; was: string }): Promise<void> {
  const { store } = tap.deps;
  const scope = await teacherScope(store, tap.userId, classId);
  const now = nowOf(tap);
  const { scheme } = await readTermStand(store, scope, now);
  if (!scheme || signOf(scheme) !== was) {
    await tap.answer(termMovedOn(), 'alert');
    return tap.show(await readTerm(store, scope, { page: 0, now }));
  }
  const act = await retireScheme(store, scope, now);
  await tap.answer();
  await tap.show(await readPlanScreen(store, scope, now, act));
}

/** Brings the plan in use in line with the term at once, so that the teacher need not wait for the clock's next look. */
async function follow({ deps }: Tap, scope: TeacherScope): Promise<void> {
  await followTerm(deps.store, await getClass(deps.store, scope), deps.clock.now());
}

function wishOf(weeks: number, share: number): { weeks: number; share: YearShare } {
  return {
    weeks: NEW_TERM_WEEKS.find((each) => each === weeks) ?? USUAL_TERM.weeks,
    share: YEAR_SHARES[share] ?? USUAL_TERM.share,
  };
}

function nowOf({ deps }: Tap): Date {
  return deps.clock.now();
}
