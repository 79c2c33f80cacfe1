import {
  type ClassSettings,
  getBook,
  getClass,
  listBreaks,
  localTimeAt,
  removeBreak,
  retireBook,
  type TeacherScope,
  updateClass,
} from '../../db/index.ts';
import { WEEKDAYS, type Weekday } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { bookScreen, breaksScreen, timesScreen } from '../screens/class-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { STALE_BUTTON } from '../texts/errors.ts';
import * as texts from '../texts/teacher.ts';
import { readHome } from './class-home.ts';
import { sendDigest } from './digest-now.ts';
import { CLASS_QUESTIONS, expect } from './expectations.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about a class, the week plan and the children apart. */
export const classTaps: TapHandlers<
  | 'openClass'
  | 'times'
  | 'schoolDay'
  | 'digestDay'
  | 'askFor'
  | 'breaks'
  | 'removeBreak'
  | 'book'
  | 'retireBook'
  | 'digestNow'
> = {
  openClass: (tap, { classId }) => turn(tap, classId, (scope) => readHome(tap.deps.store, scope)),
  times: (tap, { classId }) =>
    turn(tap, classId, async (scope) => timesScreen(await getClass(tap.deps.store, scope))),
  schoolDay: (tap, { classId, weekday, on }) =>
    turn(tap, classId, async (scope) => {
      const { weekdays } = await getClass(tap.deps.store, scope);
      const others = weekdays.filter((each) => each !== weekday);
      const day = weekdayOf(weekday);
      return changeTimes(tap, scope, { weekdays: on === 1 && day ? [...others, day] : others });
    }),
  digestDay: (tap, { classId, weekday }) =>
    turn(tap, classId, async (scope) => {
      const day = weekdayOf(weekday);
      return changeTimes(tap, scope, day ? { digestWeekday: day } : {});
    }),
  askFor: async (tap, { classId, what }) => {
    const { deps, userId } = tap;
    await getClass(deps.store, await teacherScope(deps.store, userId, classId));
    const question = CLASS_QUESTIONS.find((each) => each === what);
    if (!question) return tap.answer(STALE_BUTTON, 'alert');
    await expect(deps, userId, { kind: 'class', data: { classId, question } });
    await tap.answer();
    await sendScreen(deps, userId, { text: texts.ask(question), buttons: [] });
  },
  breaks: (tap, { classId }) => turn(tap, classId, (scope) => readBreaks(tap, scope)),
  removeBreak: (tap, { classId, index, first }) =>
    turn(tap, classId, async (scope) => {
      const breaks = await breaksAhead(tap, scope);
      const chosen = breaks[index];
      if (chosen?.first === first) {
        const now = tap.deps.clock.now();
        await removeBreak(tap.deps.store, scope, { breakId: chosen.id, now });
      }
      return readBreaks(tap, scope);
    }),
  book: (tap, { classId }) => turn(tap, classId, (scope) => readBook(tap, scope)),
  retireBook: (tap, { classId }) =>
    turn(tap, classId, async (scope) => {
      await retireBook(tap.deps.store, scope, tap.deps.clock.now());
      return readBook(tap, scope);
    }),
  digestNow: async (tap, { classId }) => {
    const { deps, userId } = tap;
    const scope = await teacherScope(deps.store, userId, classId);
    const schoolClass = await getClass(deps.store, scope);
    await tap.answer();
    await sendDigest(deps, userId, schoolClass);
  },
};

async function changeTimes(
  tap: Tap,
  scope: TeacherScope,
  changes: Partial<ClassSettings>,
): Promise<Screen> {
  return timesScreen(
    await updateClass(tap.deps.store, scope, { changes, now: tap.deps.clock.now() }),
  );
}

async function readBook(tap: Tap, scope: TeacherScope): Promise<Screen> {
  const { store } = tap.deps;
  return bookScreen(await getClass(store, scope), await getBook(store, scope));
}

async function readBreaks(tap: Tap, scope: TeacherScope): Promise<Screen> {
  const schoolClass = await getClass(tap.deps.store, scope);
  return breaksScreen(schoolClass, await breaksAhead(tap, scope));
}

async function breaksAhead(tap: Tap, scope: TeacherScope) {
  const { store, clock } = tap.deps;
  const schoolClass = await getClass(store, scope);
  const { day } = localTimeAt(clock.now(), schoolClass.zone);
  return listBreaks(store, schoolClass.id, day);
}

function weekdayOf(number: number): Weekday | undefined {
  return WEEKDAYS.find((weekday) => weekday === number);
}
