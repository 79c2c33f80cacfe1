import {
  AppError,
  bringBackDaily,
  type ChildPace,
  findHelperByChat,
  type PaceWord,
  pauseDrills,
  readFamilyPaces,
  setDrillDay,
  setEveryDay,
  startDrillsAgain,
} from '../../db/index.ts';
import { parseSchoolDay, pauseProblem, WEEKDAYS } from '../../drills/index.ts';
import { sendScreen } from '../chat/show.ts';
import { drillDaysScreen, pauseScreen } from '../screens/pace-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { cancelButton } from '../screens/set-up-screens.ts';
import { staleButton } from '../texts/errors.ts';
import * as texts from '../texts/pace.ts';
import { act } from './evening-taps.ts';
import { expect, fulfilled } from './expectations.ts';
import type { Tap, TapHandlers } from './tap.ts';

/**
 * How often the drill comes, as a family says: a pause, its days, every school day again. What is said counts for all of a
 * helper's children, and from "Every school day" on an evening for that evening's child.
 */
export const paceTaps: TapHandlers<
  | 'pauseOpen'
  | 'pauseUntil'
  | 'pauseAsk'
  | 'pauseEnd'
  | 'drillDays'
  | 'drillDay'
  | 'everyDay'
  | 'everyDayNow'
> = {
  pauseOpen: (tap) => show(tap, pauseScreen),
  pauseUntil: async (tap, { day }) => {
    const until = parseSchoolDay(day);
    const { word, children } = await familyOf(tap);
    const isStale = children.some(({ today }) => !until || pauseProblem(until, today));
    if (!until || isStale) return tap.answer(staleButton(), 'alert');
    await pauseDrills(tap.deps.store, { ...word, until });
    // Another day may have been asked for before.
    await fulfilled(tap.deps, tap.userId);
    await tap.answer(texts.pausedUntil(until));
    await show(tap, pauseScreen);
  },
  pauseAsk: async (tap) => {
    await familyOf(tap);
    await expect(tap.deps, tap.userId, { kind: 'pause', data: {} });
    await tap.answer();
    const buttons = [[cancelButton()]];
    await sendScreen(tap.deps, tap.userId, { text: texts.askPauseDay(), buttons });
  },
  pauseEnd: async (tap) => {
    const { word } = await familyOf(tap);
    await startDrillsAgain(tap.deps.store, word);
    await tap.answer(texts.startedAgain());
    await show(tap, pauseScreen);
  },
  drillDays: (tap) => show(tap, drillDaysScreen),
  drillDay: async (tap, { weekday: number, on }) => {
    const { word } = await familyOf(tap);
    const weekday = WEEKDAYS.find((candidate) => candidate === number);
    if (!weekday) return tap.answer(staleButton(), 'alert');
    if (await isLast(setDrillDay(tap.deps.store, { ...word, weekday, on: on === 1 }))) {
      return tap.answer(texts.lastDrillDay(), 'alert');
    }
    await show(tap, drillDaysScreen);
  },
  everyDay: async (tap) => {
    const { word } = await familyOf(tap);
    await setEveryDay(tap.deps.store, word);
    await tap.answer(texts.everyDayAgain());
    await show(tap, drillDaysScreen);
  },
  everyDayNow: (tap, { evening }) =>
    act(tap, evening, async (scope, now) => {
      await bringBackDaily(tap.deps.store, scope, now);
      await tap.answer(texts.everyDayAgain());
    }),
};

/** Whether a change was refused because it would have left a child without any day. */
async function isLast(change: Promise<void>): Promise<boolean> {
  try {
    await change;
    return false;
  } catch (error) {
    if (error instanceof AppError && error.what === 'drill days') return true;
    throw error;
  }
}

async function show(tap: Tap, screenOf: (children: readonly ChildPace[]) => Screen): Promise<void> {
  const { children } = await familyOf(tap);
  await tap.answer();
  await tap.show(screenOf(children));
}

/** Who taps, and the children they help now. Somebody without any gets the same answer as a stranger. */
async function familyOf({
  deps: { store, clock },
  userId,
}: Tap): Promise<{ word: PaceWord; children: ChildPace[] }> {
  const helper = await findHelperByChat(store, userId);
  const word = { helperId: helper?.id ?? '', now: clock.now() };
  const children = helper ? await readFamilyPaces(store, word) : [];
  if (children.length === 0) throw new AppError('not_found', 'child');
  return { word, children };
}
