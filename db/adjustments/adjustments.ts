import { eq, getTableColumns } from 'drizzle-orm';
import { type Adjustment, UNADJUSTED } from '../../drills/index.ts';
import type { ListedChild } from '../children/list-children.ts';
import { getChild, lockChild } from '../children/own-child.ts';
import type { TeacherScope } from '../classes/get-class.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { adjustmentJson } from '../evenings/drill-json.ts';
import { adjustment } from '../schema/index.ts';

/** A child and how its evenings differ from the class's. */
export interface AdjustedChild extends ListedChild {
  readonly adjustment: Adjustment;
}

/** The child of this number in the class, for its teachers. One there is not, or is archived, is `not_found`. */
export async function getAdjustment(
  store: Store,
  scope: TeacherScope,
  number: number,
): Promise<AdjustedChild> {
  const child = await getChild(store, scope, number);
  return { ...child, adjustment: await adjustmentOf(store, child.id) };
}

/**
 * Changes how a child's evenings differ from the class's, from the next evening that is planned; what is not named stays.
 * Returns the child as it stands then. Setting what is set already changes nothing.
 */
export async function setAdjustment(
  store: Store,
  scope: TeacherScope,
  input: { number: number; change: Partial<Adjustment>; now: Date },
): Promise<AdjustedChild> {
  return inTransaction(store, async (inner) => {
    // Two teachers who tap together wait for each other, so that neither undoes what only the other has changed.
    await lockChild(inner, scope, { number: input.number, archived: false });
    const found = await getAdjustment(inner, scope, input.number);
    const wanted = { ...found.adjustment, ...input.change };
    if (isSame(found.adjustment, wanted)) return found;
    const values = { ...wanted, since: input.now };
    await inner.db
      .insert(adjustment)
      .values({ childId: found.id, ...values })
      .onConflictDoUpdate({ target: adjustment.childId, set: values });
    return { ...found, adjustment: wanted };
  });
}

/** How a child's evenings differ from the class's, for the planner; without a row they do not. */
export async function adjustmentOf(store: Store, childId: string): Promise<Adjustment> {
  const [row] = await store.db
    .select(getTableColumns(adjustment))
    .from(adjustment)
    .where(eq(adjustment.childId, childId));
  return row ? adjustmentJson.parse(row) : UNADJUSTED;
}

function isSame(one: Adjustment, other: Adjustment): boolean {
  return one.steps === other.steps && one.fewer === other.fewer && one.untimed === other.untimed;
}
