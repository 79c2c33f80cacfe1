import {
  getClass,
  listBreaks,
  localTimeAt,
  removeBreak,
  type TeacherScope,
} from '../../db/index.ts';
import { type BreakNews, breaksScreen } from '../screens/break-screens.ts';
import type { Screen } from '../screens/screen.ts';
import { breakRemoved } from '../texts/breaks.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { turn } from './turn.ts';

/** A class's breaks ahead, page by page, and removing one. */
export const breakTaps: TapHandlers<'breaks' | 'breaksAt' | 'removeBreak'> = {
  breaks: (tap, { classId }) => turn(tap, classId, (scope) => readBreaks(tap, scope, 0)),
  breaksAt: (tap, { classId, page }) => turn(tap, classId, (scope) => readBreaks(tap, scope, page)),
  removeBreak: (tap, { classId, index, first }) =>
    turn(tap, classId, async (scope) => {
      const { store, clock } = tap.deps;
      const chosen = (await breaksAhead(tap, scope))[index];
      // A list that has changed since: nothing is removed, and it is shown as it stands.
      if (chosen?.first !== first) return readBreaks(tap, scope, 0);
      const actId = await removeBreak(store, scope, { breakId: chosen.id, now: clock.now() });
      return readBreaks(tap, scope, 0, { said: breakRemoved(chosen), actId });
    }),
};

/** A page of the breaks ahead as they stand, under what was just done. */
export async function readBreaks(
  tap: Pick<Tap, 'deps'>,
  scope: TeacherScope,
  page: number,
  news: BreakNews | null = null,
): Promise<Screen> {
  const schoolClass = await getClass(tap.deps.store, scope);
  return breaksScreen(schoolClass, await breaksAhead(tap, scope), page, news);
}

async function breaksAhead({ deps }: Pick<Tap, 'deps'>, scope: TeacherScope) {
  const schoolClass = await getClass(deps.store, scope);
  const { day } = localTimeAt(deps.clock.now(), schoolClass.zone);
  return listBreaks(deps.store, schoolClass.id, day);
}
