import { and, asc, eq, isNull, lte } from 'drizzle-orm';
import { UNDO_MS } from '../acts/list-acts.ts';
import type { Store } from '../connection/db.ts';
import { LEFT_DAYS } from '../retention/keep-for.ts';
import { child, helper, helperChild, schoolClass } from '../schema/index.ts';

const DAY_MS = 24 * 60 * 60_000;

/**
 * Children whose rows are to be deleted now: those whose family wished it a day ago, and those that left thirty days ago, by
 * themselves or with their whole class. At most `limit`.
 */
export async function listErasable(
  store: Store,
  { now, limit }: { now: Date; limit: number },
): Promise<string[]> {
  const wished = new Date(now.getTime() - UNDO_MS);
  const left = new Date(now.getTime() - LEFT_DAYS * DAY_MS);
  const one = { id: child.id };
  // Three looks into three small indexes: one condition over both tables would read every child there is.
  const rows = await store.db
    .select(one)
    .from(child)
    .where(lte(child.erasingSince, wished))
    .union(store.db.select(one).from(child).where(lte(child.archivedAt, left)))
    .union(
      store.db
        .select(one)
        .from(schoolClass)
        .innerJoin(child, eq(child.classId, schoolClass.id))
        .where(and(lte(schoolClass.archivedAt, left), isNull(child.archivedAt))),
    )
    .orderBy(asc(child.id))
    .limit(limit);
  return rows.map(({ id }) => id);
}

/** A child as a message about its erasure names it. Null when it is gone. For the engine's own work on ledger rows. */
export interface ErasingChild {
  readonly nickname: string;
  readonly number: number;
  readonly classTitle: string;
  readonly isErasing: boolean;
}

/** Reads {@link ErasingChild}. */
export async function readErasing(store: Store, childId: string): Promise<ErasingChild | null> {
  const [row] = await store.db
    .select({ child, classTitle: schoolClass.title })
    .from(child)
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(eq(child.id, childId));
  if (!row) return null;
  const { nickname, number, erasingSince } = row.child;
  return { nickname, number, classTitle: row.classTitle, isErasing: erasingSince !== null };
}

/** A child that a helper can have erased, or whose erasure it can take back. */
export interface OwnChild {
  readonly id: string;
  readonly nickname: string;
  /** `mine` is being erased at this helper's own wish, `other` at another's. */
  readonly erasing: 'no' | 'mine' | 'other';
}

/** All children a helper sits beside, archived and being erased or not: what is held of them is its business. */
export async function listOwnChildren(store: Store, helperId: string): Promise<OwnChild[]> {
  const rows = await store.db
    .select({ child })
    .from(helperChild)
    .innerJoin(helper, eq(helper.id, helperChild.helperId))
    .innerJoin(child, eq(child.id, helperChild.childId))
    .where(and(eq(helperChild.helperId, helperId), isNull(helperChild.leftAt)))
    .orderBy(asc(helperChild.joinedAt), asc(child.number));
  return rows.map(({ child: { id, nickname, erasingSince, erasingBy } }) => ({
    id,
    nickname,
    erasing: !erasingSince ? 'no' : erasingBy === helperId ? 'mine' : 'other',
  }));
}
