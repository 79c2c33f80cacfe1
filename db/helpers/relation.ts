import { and, count, eq, isNull } from 'drizzle-orm';
import type { TimeOfDay } from '../../drills/index.ts';
import { type SchoolClass, storedTime, toSchoolClass } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { child, helperChild, schoolClass } from '../schema/index.ts';

/** Who a helper can be to a child: a parent or guardian, an older brother or sister, another adult. */
export const RELATIONS = ['parent', 'sibling', 'adult'] as const;

/** One of {@link RELATIONS}. */
export type Relation = (typeof RELATIONS)[number];

/** A helper and one of its children, as the family sees it. */
export interface Tie {
  readonly childId: string;
  readonly nickname: string;
  readonly number: number;
  /** Null while the helper has not said. */
  readonly relation: Relation | null;
  /** How many helpers the child has now, this one among them. */
  readonly helpers: number;
  readonly eveningTime: TimeOfDay;
  readonly schoolClass: SchoolClass;
  /** From which age on a brother or sister may help, by the school's choice. */
  readonly siblingAge: number;
}

/** Names a child and the helper who asks. */
export interface FamilyScope {
  readonly helperId: string;
  readonly childId: string;
}

/** A helper's tie to a child that practises and that it sits beside now; `not_found` otherwise. */
export async function readTie(store: Store, scope: FamilyScope): Promise<Tie> {
  const [row] = await store.db
    .select({ child, schoolClass, relation: helperChild.relation })
    .from(helperChild)
    .innerJoin(child, eq(child.id, helperChild.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, child.classId))
    .where(
      and(
        eq(helperChild.helperId, scope.helperId),
        eq(helperChild.childId, scope.childId),
        isNull(helperChild.leftAt),
        isNull(child.archivedAt),
        isNull(schoolClass.archivedAt),
      ),
    );
  if (!row) throw new AppError('not_found', 'child');
  return {
    childId: scope.childId,
    nickname: row.child.nickname,
    number: row.child.number,
    relation: RELATIONS.find((relation) => relation === row.relation) ?? null,
    helpers: await countHelpers(store, scope.childId),
    eveningTime: storedTime(row.child.eveningTime ?? row.schoolClass.eveningTime),
    schoolClass: toSchoolClass(row.schoolClass),
    siblingAge: row.schoolClass.siblingAge,
  };
}

/** How many helpers a child has now. For verbs that have checked whose child it is. */
export async function countHelpers(store: Store, childId: string): Promise<number> {
  const [row] = await store.db
    .select({ helpers: count() })
    .from(helperChild)
    .where(and(eq(helperChild.childId, childId), isNull(helperChild.leftAt)));
  return row?.helpers ?? 0;
}

/**
 * Keeps who a helper is to a child, as the helper says; it is shown to nobody else and decides nothing but who may pass a
 * link on. What is no relation of ours is `invalid`, a child the helper does not sit beside now `not_found`.
 *
 * @example
 * await setRelation(store, { helperId, childId, relation: 'parent' }); // 'parent'
 */
export async function setRelation(
  store: Store,
  { helperId, childId, relation: said }: FamilyScope & { relation: string },
): Promise<Relation> {
  const relation = RELATIONS.find((each) => each === said);
  if (!relation) throw new AppError('invalid', 'relation');
  const changed = await store.db
    .update(helperChild)
    .set({ relation })
    .where(
      and(
        eq(helperChild.helperId, helperId),
        eq(helperChild.childId, childId),
        isNull(helperChild.leftAt),
      ),
    )
    .returning({ childId: helperChild.childId });
  if (changed.length === 0) throw new AppError('not_found', 'child');
  return relation;
}
