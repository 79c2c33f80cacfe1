import { addRoster, getPlans, issueSlips, type TeacherScope } from '../../db/index.ts';
import { apiProblem } from '../chat/api-error.ts';
import { back } from '../screens/class-screens.ts';
import { type Button, button } from '../screens/screen.ts';
import { undoButton } from '../screens/undo.ts';
import { BUTTONS } from '../texts/buttons.ts';
import * as texts from '../texts/roster.ts';
import { fulfilled } from './expectations.ts';
import type { Typed } from './say.ts';
import { sendLinks } from './send-links.ts';

/** Adds children to a class, all of them or none, and sends a link for each. The nicknames were checked. */
export async function addToClass(
  { deps, userId, reply }: Omit<Typed, 'text'>,
  scope: TeacherScope,
  nicknames: readonly string[],
): Promise<void> {
  const now = deps.clock.now();
  const { added, actId } = await addRoster(deps.store, scope, { nicknames, now });
  // The children are stored: a failure from here on must not have them added again.
  await fulfilled(deps, userId);
  const childIds = added.map((child) => child.id);
  const { classId } = scope;
  try {
    await sendLinks(deps, userId, await issueSlips(deps.store, scope, { childIds, now }));
  } catch (error) {
    deps.log.warn({ classId, ...apiProblem(error) }, 'links_failed');
    const toChildren = button(BUTTONS.children, { kind: 'children', classId, page: 0 });
    await reply(texts.rosterAddedWithoutLinks(added.length), [[toChildren], [undoButton(actId)]]);
    return;
  }
  await reply(texts.rosterAdded(nicknames), [
    [button(BUTTONS.print, { kind: 'print', classId, paper: 0 })],
    ...(await firstPlanRow(deps, scope)),
    [undoButton(actId), back(classId)],
  ]);
}

/** The way to a first plan, while there is none. */
async function firstPlanRow({ store }: Typed['deps'], scope: TeacherScope): Promise<Button[][]> {
  const { active } = await getPlans(store, scope);
  const { classId } = scope;
  return active
    ? []
    : [[button(BUTTONS.firstPlan, { kind: 'firstPlan', classId, curriculum: 'guess' })]];
}
