import { asc, eq } from 'drizzle-orm';
import { z } from 'zod';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { child, helper, helperChild, schoolClass } from '../schema/index.ts';
import { heldData } from './held-data.ts';
import { readAboutChild, readAboutHelper } from './read-held-data.ts';

/**
 * Everything that is kept about one child, as the operator may have to give it to the school: what a helper gets
 * (see {@link heldData}) and the same about every helper, those who left with it. The shape of a version never changes.
 */
export const childRecord = heldData.omit({ format: true, you: true }).extend({
  format: z.literal('suppersums-child-record'),
  childId: z.uuid(),
  helpers: z.array(heldData.shape.you.extend({ leftAt: z.iso.datetime().nullable() })),
});

/** See {@link childRecord}. */
export type ChildRecord = z.infer<typeof childRecord>;

/**
 * Reads everything kept about a child, archived and being erased or not. An unknown one is `not_found`. No owner's scope: for
 * the operator.
 */
export async function readChildRecord(
  store: Store,
  { childId, now }: { childId: string; now: Date },
): Promise<ChildRecord> {
  return inTransaction(store, async (inner) => {
    const [row] = await inner.db
      .select({ child, schoolClass })
      .from(child)
      .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
      .where(eq(child.id, childId));
    if (!row) throw new AppError('not_found', 'child');
    const ties = await inner.db
      .select({ tie: helperChild, helper })
      .from(helperChild)
      .innerJoin(helper, eq(helper.id, helperChild.helperId))
      .where(eq(helperChild.childId, childId))
      .orderBy(asc(helperChild.joinedAt), asc(helper.id));
    const helpers: ChildRecord['helpers'] = [];
    for (const own of ties) {
      const leftAt = own.tie.leftAt?.toISOString() ?? null;
      helpers.push({ ...(await readAboutHelper(inner, own, childId)), leftAt });
    }
    return childRecord.parse({
      format: 'suppersums-child-record',
      version: 1,
      madeAt: now.toISOString(),
      childId,
      ...(await readAboutChild(inner, row)),
      helpers,
    });
  });
}
