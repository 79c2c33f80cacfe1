import { getAdjustment, getPlans, setAdjustment, type TeacherScope } from '../../db/index.ts';
import type { BotDeps } from '../deps.ts';
import { OWN_WAYS, ownWayScreen } from '../screens/own-way-screen.ts';
import type { Screen } from '../screens/screen.ts';
import { staleButton } from '../texts/errors.ts';
import type { TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** How one child's evenings differ from the class's. */
export const ownWayTaps: TapHandlers<'ownWay' | 'setOwnWay'> = {
  ownWay: (tap, { classId, number }) =>
    turn(tap, classId, (scope) => readOwnWay(tap.deps, scope, number)),
  setOwnWay: async (tap, { classId, number, to }) => {
    const change = OWN_WAYS[to];
    if (!change) return tap.answer(staleButton(), 'alert');
    await turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      await setAdjustment(store, scope, { number, change, now: clock.now() });
      return readOwnWay(tap.deps, scope, number);
    });
  },
};

async function readOwnWay(
  { store }: BotDeps,
  scope: TeacherScope,
  number: number,
): Promise<Screen> {
  const child = await getAdjustment(store, scope, number);
  const { active } = await getPlans(store, scope);
  return ownWayScreen(scope.classId, child, active?.plan ?? null);
}
