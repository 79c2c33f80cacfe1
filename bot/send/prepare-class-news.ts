import { type Delivery, readClassNews } from '../../db/index.ts';
import { postScreen } from '../chat/show.ts';
import type { BotDeps } from '../deps.ts';
import * as texts from '../texts/class-news.ts';
import type { Text } from '../texts/words.ts';

type NewsKind = 'class_stopped' | 'class_resumed' | 'handed_over';

/**
 * A message about a whole class, as things are when it is sent. Null when it is no longer true, or when a helper has nobody in
 * that class any more.
 */
export async function prepareClassNews(
  deps: BotDeps,
  { chatId, classId, to }: Delivery,
  kind: NewsKind,
): Promise<(() => Promise<number>) | null> {
  const news = await readClassNews(deps.store, { classId, chatId });
  if (!news || news.isArchived !== (kind === 'class_stopped')) return null;
  if (to === 'helper' && news.nicknames.length === 0) return null;
  const text = WORDS[to][kind](news);
  return () => postScreen(deps, chatId, { text, buttons: [] });
}

const WORDS: Readonly<
  Record<
    Delivery['to'],
    Readonly<Record<NewsKind, (news: Parameters<typeof texts.handedOver>[0]) => Text>>
  >
> = {
  helper: {
    class_stopped: texts.classStopped,
    class_resumed: texts.classResumed,
    handed_over: texts.handedOver,
  },
  teacher: {
    class_stopped: texts.classStoppedForTeacher,
    class_resumed: texts.classResumedForTeacher,
    handed_over: texts.handedOver,
  },
};
