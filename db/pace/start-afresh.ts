import { and, eq, isNull } from 'drizzle-orm';
import { familyJoins, familyStops } from '../../drills/index.ts';
import { localTimeAt } from '../calendar/zone.ts';
import type { Store } from '../connection/db.ts';
import { child, helperChild, schoolClass } from '../schema/index.ts';
import { changePace } from './change-pace.ts';

/**
 * Has a family that had stopped start afresh, before its new helper is tied to the child: nothing is left of an earlier silence,
 * pause or choice of days. With a helper there, or nobody ever before, nothing changes. Inside the caller's transaction.
 */
export async function startAfresh(
  inner: Store,
  { childId, now }: { childId: string; now: Date },
): Promise<void> {
  const of = eq(helperChild.childId, childId);
  const ties = inner.db.select({ id: helperChild.helperId }).from(helperChild);
  const ever = await ties.where(of).limit(1);
  if (ever.length === 0) return;
  const there = await inner.db
    .select({ id: helperChild.helperId })
    .from(helperChild)
    .where(and(of, isNull(helperChild.leftAt)))
    .limit(1);
  if (there.length > 0) return;
  const [row] = await inner.db
    .select({ zone: schoolClass.zone })
    .from(child)
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(eq(child.id, childId));
  const { day } = localTimeAt(now, row?.zone ?? 'UTC');
  await changePace(inner, { childId, day, now, isWord: true }, (pace) =>
    familyJoins(familyStops(pace), day),
  );
}
