import { addRoster, getPlans, type TeacherScope } from '../../db/index.ts';
import { addedScreen } from '../screens/added-screen.ts';
import { fulfilled } from './expectations.ts';
import type { Typed } from './say.ts';

/** Adds children to a class, all of them or none, and offers ways to have their families join. The nicknames were checked. */
export async function addToClass(
  { deps, userId, reply }: Omit<Typed, 'text'>,
  scope: TeacherScope,
  nicknames: readonly string[],
): Promise<void> {
  const { store, clock } = deps;
  const { actId } = await addRoster(store, scope, { nicknames, now: clock.now() });
  // The children are stored: a failure from here on must not have them added again.
  await fulfilled(deps, userId);
  const { active } = await getPlans(store, scope);
  const hasPlan = active !== null;
  const { text, buttons } = addedScreen({ classId: scope.classId, nicknames, actId, hasPlan });
  await reply(text, buttons);
}
