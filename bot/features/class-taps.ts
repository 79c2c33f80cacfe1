import { type ClassSettings, getClass, type TeacherScope, updateClass } from '../../db/index.ts';
import { WEEKDAYS, type Weekday } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { timesScreen } from '../screens/class-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { cancelButton, zoneScreen } from '../screens/set-up-screens.ts';
import { staleButton } from '../texts/errors.ts';
import * as texts from '../texts/teacher.ts';
import { readHome } from './class-home.ts';
import { CLASS_QUESTIONS, expect } from './expectations.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about a class, the week plan and the children apart. */
export const classTaps: TapHandlers<'openClass' | 'times' | 'schoolDay' | 'digestDay' | 'askFor'> =
  {
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
      if (!question) return tap.answer(staleButton(), 'alert');
      await expect(deps, userId, { kind: 'class', data: { classId, question } });
      await tap.answer();
      if (question === 'zone') return askZone(tap, classId);
      await sendScreen(deps, userId, { text: texts.ask(question), buttons: [[cancelButton()]] });
    },
  };

async function askZone({ deps, userId }: Tap, classId: string): Promise<void> {
  const screen = zoneScreen({ own: [], now: deps.clock.now() }, (zone) => ({
    kind: 'chooseZone',
    classId,
    zone,
  }));
  await sendScreen(deps, userId, screen);
}

async function changeTimes(
  tap: Tap,
  scope: TeacherScope,
  changes: Partial<ClassSettings>,
): Promise<Screen> {
  return timesScreen(
    await updateClass(tap.deps.store, scope, { changes, now: tap.deps.clock.now() }),
  );
}

function weekdayOf(number: number): Weekday | undefined {
  return WEEKDAYS.find((weekday) => weekday === number);
}
