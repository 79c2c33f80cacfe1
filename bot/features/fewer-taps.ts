import {
  getClass,
  listPaceStands,
  localTimeAt,
  setKeptDaily,
  type TeacherScope,
} from '../../db/index.ts';
import { paceStand } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { fewerScreen } from '../screens/fewer-screen.ts';
import type { Screen } from '../screens/screen.ts';
import { keptLine } from '../texts/fewer.ts';
import type { TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** To which families the drill comes less often, and keeping it daily all the same; for the class's teachers. */
export const fewerTaps: TapHandlers<'fewerEvenings' | 'keepDaily'> = {
  fewerEvenings: (tap, { classId, page }) =>
    turn(tap, classId, (scope) => readFewer(tap.deps, scope, page)),
  keepDaily: (tap, { classId, number, on, page }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const now = clock.now();
      const pace = await setKeptDaily(store, scope, { number, on: on === 1, now });
      const { weekdays, zone } = await getClass(store, scope);
      const stand = paceStand(pace, localTimeAt(now, zone).day, weekdays);
      await tap.answer(keptLine(stand));
      return readFewer(tap.deps, scope, page);
    }),
};

async function readFewer(
  { store, clock }: BotDeps,
  scope: TeacherScope,
  page: number,
): Promise<Screen> {
  const schoolClass = await getClass(store, scope);
  return fewerScreen(schoolClass, await listPaceStands(store, scope, clock.now()), page);
}
