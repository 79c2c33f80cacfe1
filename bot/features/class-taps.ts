import {
  AppError,
  type ClassSettings,
  getBook,
  getClass,
  issueSlips,
  type ListedChild,
  listBreaks,
  listChildren,
  localTimeAt,
  removeBreak,
  retireBook,
  type TeacherScope,
  updateClass,
  wereSlipsIssuedSince,
} from '../../db/index.ts';
import { WEEKDAYS, type Weekday } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import {
  bookScreen,
  breaksScreen,
  childrenScreen,
  pickChildScreen,
  timesScreen,
} from '../screens/class-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { STALE_BUTTON } from '../texts/errors.ts';
import * as roster from '../texts/roster.ts';
import * as texts from '../texts/teacher.ts';
import { readHome } from './class-home.ts';
import { sendDigest } from './digest-now.ts';
import { CLASS_QUESTIONS, expect } from './expectations.ts';
import { sendLinks } from './send-links.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';

/** Everything a teacher can tap about a class, the week plan apart. */
export const classTaps: TapHandlers<
  | 'openClass'
  | 'times'
  | 'schoolDay'
  | 'digestDay'
  | 'askFor'
  | 'children'
  | 'missingLinks'
  | 'pickChild'
  | 'childLink'
  | 'breaks'
  | 'removeBreak'
  | 'book'
  | 'retireBook'
  | 'digestNow'
> = {
  openClass: (tap, { classId }) => turn(tap, classId, (scope) => readHome(tap.deps.store, scope)),
  times: (tap, { classId }) =>
    turn(tap, classId, async (scope) => timesScreen(await getClass(tap.deps.store, scope))),
  schoolDay: (tap, { classId, weekday }) =>
    turn(tap, classId, async (scope) => {
      const { weekdays } = await getClass(tap.deps.store, scope);
      const changed = weekdays.filter((each) => each !== weekday);
      const day = weekdayOf(weekday);
      const next = changed.length < weekdays.length || !day ? changed : [...weekdays, day];
      return changeTimes(tap, scope, { weekdays: next });
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
  children: (tap, { classId }) => turn(tap, classId, (scope) => readChildren(tap, scope)),
  missingLinks: async (tap, { classId }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    const missing = (await listChildren(tap.deps.store, scope)).filter((c) => c.helpers === 0);
    if (missing.length > 0) return freshLinks(tap, scope, missing);
    await tap.answer();
    await sendScreen(tap.deps, tap.userId, { text: roster.allJoined(), buttons: [] });
  },
  pickChild: (tap, { classId }) =>
    turn(tap, classId, async (scope) =>
      pickChildScreen(
        await getClass(tap.deps.store, scope),
        await listChildren(tap.deps.store, scope),
      ),
    ),
  childLink: async (tap, { classId, number }) => {
    const scope = await teacherScope(tap.deps.store, tap.userId, classId);
    const children = await listChildren(tap.deps.store, scope);
    const chosen = children.filter((child) => child.number === number);
    if (chosen.length === 0) throw new AppError('not_found', 'child');
    await freshLinks(tap, scope, chosen);
  },
  breaks: (tap, { classId }) => turn(tap, classId, (scope) => readBreaks(tap, scope)),
  removeBreak: (tap, { classId, index, first }) =>
    turn(tap, classId, async (scope) => {
      const breaks = await breaksAhead(tap, scope);
      const chosen = breaks[index];
      if (chosen?.first === first) await removeBreak(tap.deps.store, scope, chosen.id);
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

/** Two taps within this time are one wish. */
const TWICE_MS = 10_000;

/** Sends new links, unless they were sent a moment ago: a second list would kill the first, and look the same. */
async function freshLinks(
  tap: Tap,
  scope: TeacherScope,
  children: readonly ListedChild[],
): Promise<void> {
  const { deps, userId } = tap;
  const now = deps.clock.now();
  const childIds = children.map((child) => child.id);
  const since = new Date(now.getTime() - TWICE_MS);
  if (await wereSlipsIssuedSince(deps.store, scope, { childIds, since })) {
    return tap.answer(roster.LINKS_JUST_SENT, 'alert');
  }
  const slips = await issueSlips(deps.store, scope, { childIds, now });
  await tap.answer();
  await sendLinks(deps, userId, slips);
}

/** Answers a tap and turns its message into the screen that a read or change leads to. */
async function turn(
  tap: Tap,
  classId: string,
  read: (scope: TeacherScope) => Promise<Screen>,
): Promise<void> {
  const scope = await teacherScope(tap.deps.store, tap.userId, classId);
  const screen = await read(scope);
  await tap.answer();
  await tap.show(screen);
}

async function changeTimes(
  tap: Tap,
  scope: TeacherScope,
  changes: Partial<ClassSettings>,
): Promise<Screen> {
  return timesScreen(await updateClass(tap.deps.store, scope, changes));
}

async function readChildren(tap: Tap, scope: TeacherScope): Promise<Screen> {
  const { store } = tap.deps;
  return childrenScreen(await getClass(store, scope), await listChildren(store, scope));
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
