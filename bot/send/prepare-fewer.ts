import { type Delivery, getRunningClass, paceStandsOf } from '../../db/index.ts';
import { postScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import { fewerScreen } from '../screens/fewer-screen.ts';

/**
 * The word to a teacher that fewer evenings are announced, with what stands on that screen anyway. Null when nothing is announced
 * any more: the families have answered meanwhile, or somebody keeps it daily.
 */
export async function prepareFewer(
  deps: BotDeps,
  { chatId, classId, day }: Delivery,
): Promise<(() => Promise<number>) | null> {
  const schoolClass = await getRunningClass(deps.store, classId);
  const stands = await paceStandsOf(deps.store, schoolClass, day);
  if (!stands.some(({ stand }) => stand.kind === 'announced')) return null;
  return () => postScreen(deps, chatId, fewerScreen(schoolClass, stands, 0));
}
