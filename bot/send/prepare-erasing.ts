import { type Delivery, readErasing } from '../../db/index.ts';
import { postScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import * as texts from '../texts/rights.ts';

/**
 * The word that a child is being erased, or is kept after all, to its other helpers and to its teachers. Null when it is no
 * longer true.
 */
export async function prepareErasing(
  deps: BotDeps,
  { chatId, subjectId, to }: Delivery,
  kind: 'erasing' | 'kept_after_all',
): Promise<(() => Promise<number>) | null> {
  const child = await readErasing(deps.store, subjectId);
  if (!child || child.isErasing !== (kind === 'erasing')) return null;
  const isErasing = kind === 'erasing';
  const text =
    to === 'teacher'
      ? (isErasing ? texts.erasingForTeacher : texts.keptForTeacher)(child)
      : (isErasing ? texts.erasingForHelper : texts.keptForHelper)(child);
  return () => postScreen(deps, chatId, { text, buttons: [] });
}
