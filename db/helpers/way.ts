import { and, eq, exists, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { helper, helperChild } from '../schema/index.ts';

/**
 * How an evening can be shown, dearest in data first: a timed video of each part's cards, one picture of them all, one card at
 * a time with its answer on request, or words, with pictures of clocks only. `clip` is what a helper has who never chose.
 */
export const WAYS = ['clip', 'pictures', 'single', 'words'] as const;

/** One of {@link WAYS}. */
export type Way = (typeof WAYS)[number];

/** How the evening is shown to a helper. A helper there is none of is `not_found`; one who left keeps what they chose. */
export async function getWay(store: Store, helperId: string): Promise<Way> {
  const [row] = await store.db
    .select({ way: helper.way })
    .from(helper)
    .where(eq(helper.id, helperId));
  if (!row) throw new AppError('not_found', 'helper');
  return storedWay(row.way);
}

/** A way as it is stored; anything else there is a fault of ours. */
export function storedWay(stored: string): Way {
  const way = wayOf(stored);
  if (!way) throw new TypeError('stored way is none of ours');
  return way;
}

/**
 * Has the evening shown to a helper in another way, from the next screen on, whichever child it is about; other helpers of
 * the same child keep theirs. Returns the way. Refuses a way there is none of (`invalid`) and a helper who sits beside no
 * child, or not any more (`not_found`).
 *
 * @example
 * await setWay(store, { helperId, way: 'words' }); // 'words'
 */
export async function setWay(store: Store, input: { helperId: string; way: string }): Promise<Way> {
  const way = wayOf(input.way);
  if (!way) throw new AppError('invalid', 'way');
  const children = store.db
    .select({ id: helperChild.childId })
    .from(helperChild)
    .where(and(eq(helperChild.helperId, helper.id), isNull(helperChild.leftAt)));
  const changed = await store.db
    .update(helper)
    .set({ way })
    .where(and(eq(helper.id, input.helperId), exists(children)))
    .returning({ id: helper.id });
  if (changed.length === 0) throw new AppError('not_found', 'helper');
  return way;
}

function wayOf(text: string): Way | undefined {
  return WAYS.find((way) => way === text);
}
