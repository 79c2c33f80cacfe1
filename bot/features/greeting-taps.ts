import {
  AppError,
  changeGreeting,
  findTeacherByChat,
  type GreetingWords,
  getClass,
  getGreeting,
  removeGreeting,
  type TeacherScope,
} from '../../db/index.ts';
import { type GreetingTimes, greetingChoices } from '../../drills/index.ts';
import { daysOf } from '../screens/greeting-screens.ts';
import { greetingRemoved, notUsed, recordingGone, used } from '../texts/greeting.ts';
import { expected, fulfilled } from './expectations.ts';
import {
  previewGreeting,
  readGreetingScreen,
  sendGreetingHome,
  useAsGreeting,
  wordsOf,
} from './greetings.ts';
import { nextEvening } from './next-evening.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { teacherScope } from './teacher-scope.ts';
import { turn } from './turn.ts';

/** Everything a teacher can tap about the class's greeting. */
export const greetingTaps: TapHandlers<
  'greeting' | 'timeGreeting' | 'showGreeting' | 'removeGreeting' | 'useRecording' | 'dropRecording'
> = {
  greeting: (tap, { classId }) =>
    turn(tap, classId, (scope) => readGreetingScreen(tap.deps, scope)),
  timeGreeting: (tap, { classId, greeting, to }) =>
    turn(tap, classId, async (scope) => {
      const change = await changeOf(tap, scope, to);
      await changeGreeting(tap.deps.store, scope, { greetingId: greeting, change });
      return readGreetingScreen(tap.deps, scope);
    }),
  showGreeting: async (tap, { classId, greeting }) => {
    const { deps, userId } = tap;
    const scope = await teacherScope(deps.store, userId, classId);
    const found = await getGreeting(deps.store, scope);
    if (found?.id !== greeting) throw new AppError('not_found', 'greeting');
    await tap.answer();
    await previewGreeting(deps, userId, found.words, await getClass(deps.store, scope));
  },
  removeGreeting: (tap, { classId, greeting }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const actId = await removeGreeting(store, scope, { greetingId: greeting, now: clock.now() });
      return readGreetingScreen(tap.deps, scope, { actId, news: greetingRemoved() });
    }),
  useRecording: async (tap, { classId, message }) => {
    const { deps, userId } = tap;
    const scope = await teacherScope(deps.store, userId, classId);
    const words = await waitingWords(tap, message);
    if (!words) return tap.answer(recordingGone(), 'alert');
    const actId = await useAsGreeting(deps, scope, words);
    await fulfilled(deps, userId);
    await tap.answer();
    await tap.show({ text: used(await getClass(deps.store, scope)), buttons: [] });
    await sendGreetingHome(deps, userId, scope, actId);
  },
  dropRecording: async (tap, { message }) => {
    const teacher = await findTeacherByChat(tap.deps.store, tap.userId);
    if (!teacher) throw new AppError('not_found', 'class');
    if (await waitingWords(tap, message)) await fulfilled(tap.deps, tap.userId);
    await tap.answer();
    await tap.show({ text: notUsed(), buttons: [] });
  },
};

/** What a choice means today. One that is chosen already, or a week that is over, changes nothing. */
async function changeOf(
  { deps }: Tap,
  scope: TeacherScope,
  to: string,
): Promise<Partial<GreetingTimes>> {
  if (to === 'first' || to === 'every') return { evenings: to };
  const schoolClass = await getClass(deps.store, scope);
  const { next, calendar } = await nextEvening(deps.store, schoolClass, deps.clock.now());
  const days = daysOf(to, greetingChoices(next, calendar));
  const now = await getGreeting(deps.store, scope);
  if (!days || !now || days.last === now.last) return {};
  // While it goes out already its first day stays: families who have got it this week do not get it again.
  const isRunning = now.first <= days.first && days.first <= now.last;
  return isRunning && days.first === next ? { last: days.last } : days;
}

/** The recording that waits to be used, if it is the one that came in this message. */
async function waitingWords({ deps, userId }: Tap, message: string): Promise<GreetingWords | null> {
  const wish = await expected(deps, userId);
  if (wish?.kind !== 'recording' || String(wish.data.messageId) !== message) return null;
  return wordsOf(deps, wish.data);
}
