import { and, eq, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { schoolClass } from '../schema/index.ts';
import { getClass, type TeacherScope } from './get-class.ts';

/** A country, or a country and its region, by their ISO 3166 codes: `ZA`, `GB-SCT`. */
const PLACE = /^[A-Z]{2}(?:-[A-Z0-9]{1,3})?$/;

/** Whose public holidays a class is offered; null while nobody has chosen. */
export async function getHolidayPlace(store: Store, scope: TeacherScope): Promise<string | null> {
  await getClass(store, scope);
  const [row] = await store.db
    .select({ country: schoolClass.country })
    .from(schoolClass)
    .where(eq(schoolClass.id, scope.classId));
  return row?.country ?? null;
}

/** Chooses whose public holidays a class is offered. What is no ISO 3166 code (`country`) is `invalid`. */
export async function setHolidayPlace(
  store: Store,
  scope: TeacherScope,
  place: string,
): Promise<void> {
  await getClass(store, scope);
  if (!PLACE.test(place)) throw new AppError('invalid', 'country');
  await store.db
    .update(schoolClass)
    .set({ country: place })
    .where(and(eq(schoolClass.id, scope.classId), isNull(schoolClass.archivedAt)));
}
