import {
  AppError,
  type FamilyScope,
  getWay,
  leaveChild,
  readTie,
  setEveningTime,
  setRelation,
  setWay,
} from '../../db/index.ts';
import { parseTimeOfDay, type TimeOfDay } from '../../drills/index.ts';
import * as screens from '../screens/joining-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { leftOne } from '../texts/joining.ts';
import { asItComes, pacesByChild } from './as-it-comes.ts';
import { familyScope } from './family-scope.ts';
import { readFamily } from './read-family.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { untimedChildren } from './untimed-children.ts';

/**
 * The three choices after agreeing, each of which may be left as it is, and leaving one child of several. A button that is
 * tapped later still sets what it says.
 */
export const joiningTaps: TapHandlers<
  'joinAs' | 'joinTime' | 'joinWay' | 'joinNext' | 'leaveChild'
> = {
  joinAs: async (tap, { child, to }) => {
    const scope = await familyScope(tap, child);
    await setRelation(tap.deps.store, { ...scope, relation: to });
    await next(tap, scope, 'time');
  },
  joinTime: async (tap, { child, to }) => {
    const scope = await familyScope(tap, child);
    await readTie(tap.deps.store, scope);
    await setTime(tap, scope.helperId, to);
    await next(tap, scope, 'way');
  },
  joinWay: async (tap, { child, way }) => {
    const scope = await familyScope(tap, child);
    await readTie(tap.deps.store, scope);
    await setWay(tap.deps.store, { helperId: scope.helperId, way });
    await next(tap, scope, 'end');
  },
  joinNext: async (tap, { child, to }) => next(tap, await familyScope(tap, child), to),
  leaveChild: async (tap, { child }) => {
    const { store, clock } = tap.deps;
    const nickname = await leaveChild(store, {
      ...(await familyScope(tap, child)),
      now: clock.now(),
    });
    await tap.answer();
    const family = await readFamily(store, tap.userId);
    const others = family ? family.children.map((other) => other.nickname) : [];
    await tap.show({ text: leftOne(nickname, others), buttons: [] });
  },
};

async function next(tap: Tap, scope: FamilyScope, to: string): Promise<void> {
  const screen = await screenOf(tap, scope, to);
  await tap.answer();
  await tap.show(screen);
}

async function screenOf({ deps }: Tap, scope: FamilyScope, to: string): Promise<Screen> {
  const { store } = deps;
  const tie = await readTie(store, scope);
  if (to === 'time') return screens.joinTimeScreen(tie);
  if (to !== 'way') {
    const of = (await pacesByChild(deps, scope.helperId)).get(scope.childId);
    return screens.allSetScreen(of ? { ...tie, ...asItComes(of.child, of) } : tie);
  }
  const untimed = await untimedChildren(store, scope.helperId);
  return screens.joinWayScreen(tie, await getWay(store, scope.helperId), untimed);
}

/** Sets the family's evening time from what a button carries, a time with a dot. */
export async function setTime({ deps }: Tap, helperId: string, carried: string): Promise<void> {
  await setEveningTime(deps.store, { helperId, time: timeIn(carried), now: deps.clock.now() });
}

function timeIn(carried: string): TimeOfDay {
  const time = parseTimeOfDay(carried.replace('.', ':'));
  if (!time) throw new AppError('invalid', 'evening time');
  return time;
}
