import { and, eq, isNull, lt, or } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { helperChild } from '../schema/index.ts';
import type { FamilyScope } from './relation.ts';

/**
 * Notes that a helper is given the picture of a month, which holds `day`. False when it was given already, or one of a later
 * month was: a picture comes once, and a lost one is not sent again. False, too, for a child that is not the helper's.
 */
export async function claimPicture(
  store: Store,
  { helperId, childId, day }: FamilyScope & { day: SchoolDay },
): Promise<boolean> {
  const month = day.slice(0, 7);
  const claimed = await store.db
    .update(helperChild)
    .set({ pictureMonth: month })
    .where(
      and(
        eq(helperChild.helperId, helperId),
        eq(helperChild.childId, childId),
        isNull(helperChild.leftAt),
        or(isNull(helperChild.pictureMonth), lt(helperChild.pictureMonth, month)),
      ),
    )
    .returning({ childId: helperChild.childId });
  return claimed.length > 0;
}
