import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { schoolClass } from '../schema/index.ts';
import { lookAgain } from './look-again.ts';

/**
 * Has changes to what belongs to a class (its list, plans, term, books, greeting) wait for each other until the caller's
 * transaction ends. Rows that only refer to the class go on being written meanwhile: families join, evenings are planned.
 *
 * Lock the class before anything of it; two classes in the order of their ids. Whatever is changed under the lock, the planner
 * looks at the class again.
 */
export async function lockClass(inner: Store, classId: string): Promise<void> {
  await lookAgain(inner, eq(schoolClass.id, classId));
}
