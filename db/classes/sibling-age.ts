import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { schoolClass } from '../schema/index.ts';
import { getClass, type TeacherScope } from './get-class.ts';

/** The ages from which on a brother or sister may help, to choose from. Where nobody chose it is 12; ours, no source. */
export const SIBLING_AGES = [8, 10, 11, 12, 13, 14, 16, 18] as const;

/** From which age on a brother or sister may help in a class, for its teacher. */
export async function getSiblingAge(store: Store, scope: TeacherScope): Promise<number> {
  await getClass(store, scope);
  const [row] = await store.db
    .select({ age: schoolClass.siblingAge })
    .from(schoolClass)
    .where(eq(schoolClass.id, scope.classId));
  if (!row) throw new AppError('not_found', 'class');
  return row.age;
}

/**
 * Sets from which age on a brother or sister may help; it is said to whoever joins from now on and turns nobody out. An age
 * that is not among {@link SIBLING_AGES} is `invalid` (`sibling age`).
 */
export async function setSiblingAge(
  store: Store,
  scope: TeacherScope,
  age: number,
): Promise<number> {
  await getClass(store, scope);
  if (!SIBLING_AGES.some((each) => each === age)) throw new AppError('invalid', 'sibling age');
  await store.db
    .update(schoolClass)
    .set({ siblingAge: age })
    .where(and(eq(schoolClass.id, scope.classId), isNull(schoolClass.archivedAt)));
  return age;
}
