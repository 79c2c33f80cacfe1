import { checkPlan } from '../../drills/index.ts';
import { addBook } from '../books/add-book.ts';
import { localTimeAt } from '../calendar/zone.ts';
import { addChildren } from '../children/add-children.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { activatePlan } from '../plans/activate-plan.ts';
import { saveDraftPlan } from '../plans/week-plans.ts';
import { addBreaks } from './breaks.ts';
import type { ClassFile } from './class-file.ts';
import { MOST_BREAKS_AT_ONCE } from './class-limits.ts';
import { createClass } from './create-class.ts';
import type { TeacherScope } from './get-class.ts';
import { setHolidayPlace } from './holiday-place.ts';
import { setSiblingAge } from './sibling-age.ts';

/** A class to be made from a file, for a teacher and a bot. */
export interface ClassWanted {
  readonly file: ClassFile;
  readonly teacherId: string;
  readonly botId: number;
  readonly now: Date;
}

/** What was made. */
export interface ImportedClass {
  readonly classId: string;
  readonly children: number;
  readonly books: number;
  /** Those that are over are left out. */
  readonly breaks: number;
  readonly hasPlan: boolean;
}

/**
 * Makes a new class from a file: its settings, children, plan, workbooks and breaks, all or none. Nobody's family comes with it:
 * each agrees and joins anew. What is out of range is `invalid`, as where a teacher sets it. No owner's scope: for the operator.
 */
export async function importClass(store: Store, wanted: ClassWanted): Promise<ImportedClass> {
  const { file, teacherId, botId, now } = wanted;
  if (file.plan && checkPlan(file.plan).length > 0) throw new AppError('invalid', 'week plan');
  return inTransaction(store, async (inner) => {
    const { country, siblingAge, ...settings } = file.class;
    const { id: classId, zone } = await createClass(inner, { teacherId, settings, botId, now });
    const scope: TeacherScope = { teacherId, classId };
    if (country !== null) await setHolidayPlace(inner, scope, country);
    if (siblingAge !== null) await setSiblingAge(inner, scope, siblingAge);
    const nicknames = file.children.flatMap((each) => (each.archivedAt ? [] : [each.nickname]));
    const children = await addChildren(inner, scope, { nicknames, now });
    for (const book of file.books) await addBook(inner, scope, { book, now });
    const today = localTimeAt(now, zone).day;
    const breaks = file.breaks
      .filter(({ last }) => last >= today)
      .map(({ title, first, last }) => ({ title, break: { first, last } }));
    for (let at = 0; at < breaks.length; at += MOST_BREAKS_AT_ONCE) {
      const some = breaks.slice(at, at + MOST_BREAKS_AT_ONCE);
      await addBreaks(inner, scope, { breaks: some, now });
    }
    if (file.plan) {
      await saveDraftPlan(inner, scope, { plan: file.plan, now });
      await activatePlan(inner, scope, now);
    }
    return {
      classId,
      children: children.length,
      books: file.books.length,
      breaks: breaks.length,
      hasPlan: file.plan !== null,
    };
  });
}
