import { and, eq, inArray, isNull } from 'drizzle-orm';
import type { TimeOfDay } from '../../drills/index.ts';
import { isEveningTime } from '../classes/check-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { child, helperChild } from '../schema/index.ts';

/** Sets the family's own evening time for all children of this helper, from the next evening on. Returns how many children. */
export async function setEveningTime(
  store: Store,
  input: { helperId: string; time: TimeOfDay },
): Promise<number> {
  if (!isEveningTime(input.time)) throw new AppError('invalid', 'evening time');
  const own = store.db
    .select({ id: helperChild.childId })
    .from(helperChild)
    .where(and(eq(helperChild.helperId, input.helperId), isNull(helperChild.leftAt)));
  const changed = await store.db
    .update(child)
    .set({ eveningTime: input.time })
    .where(inArray(child.id, own))
    .returning({ id: child.id });
  return changed.length;
}
