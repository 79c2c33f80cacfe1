import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { schoolClass } from '../schema/index.ts';
import { type ClassSettings, checkClassSettings } from './check-class.ts';
import { getClass, type TeacherScope } from './get-class.ts';
import type { SchoolClass } from './school-class.ts';

/** Changes some settings of a class. The result as a whole is checked, so that no two settings contradict each other. */
export async function updateClass(
  store: Store,
  scope: TeacherScope,
  changes: Partial<ClassSettings>,
): Promise<SchoolClass> {
  return inTransaction(store, async (inner) => {
    const { id, createdAt, ...before } = await getClass(inner, scope);
    const settings = checkClassSettings({ ...before, ...changes });
    await inner.db
      .update(schoolClass)
      .set({ ...settings, weekdays: [...settings.weekdays] })
      .where(eq(schoolClass.id, id));
    return { ...settings, id, createdAt };
  });
}
