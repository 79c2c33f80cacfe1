import { and, asc, eq, isNull } from 'drizzle-orm';
import { BOOK_COLUMNS } from '../books/book-settings.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { readChildRecord } from '../rights/read-child-record.ts';
import { book, child, classBreak, classTeacher, schoolClass, weekPlan } from '../schema/index.ts';
import { schemeInUse } from '../schemes/read-scheme.ts';
import { type ClassExport, classExport } from './class-file.ts';

/**
 * Reads everything about a class and its children, archived or not. An unknown one is `not_found`. `onChild` hears how many of
 * all children are done. No owner's scope: for the operator.
 */
export async function exportClass(
  store: Store,
  wanted: { classId: string; now: Date },
  onChild: (done: number, all: number) => void = () => {},
): Promise<ClassExport> {
  const { classId, now } = wanted;
  return inTransaction(store, async (inner) => {
    const [row] = await inner.db.select().from(schoolClass).where(eq(schoolClass.id, classId));
    if (!row) throw new AppError('not_found', 'class');
    const children = await readChildren(inner, classId);
    const records: ClassExport['records'] = [];
    for (const { childId } of children) {
      onChild(records.length, children.length);
      records.push(await readChildRecord(inner, { childId, now }));
    }
    onChild(records.length, children.length);
    return classExport.parse({
      format: 'suppersums-class',
      version: 1,
      madeAt: now.toISOString(),
      classId,
      class: { ...row, archivedAt: iso(row.archivedAt) },
      teachers: await readTeachers(inner, classId),
      plan: await readPlan(inner, classId, 'active'),
      draft: await readPlan(inner, classId, 'draft'),
      term: await schemeInUse(inner, classId),
      books: await readBooks(inner, classId),
      breaks: await readBreaks(inner, classId),
      children,
      records,
    });
  });
}

async function readChildren({ db }: Store, classId: string) {
  const rows = await db
    .select()
    .from(child)
    .where(eq(child.classId, classId))
    .orderBy(asc(child.number));
  return rows.map(({ id, number, nickname, archivedAt }) => ({
    childId: id,
    number,
    nickname,
    archivedAt: iso(archivedAt),
  }));
}

async function readTeachers({ db }: Store, classId: string) {
  const rows = await db
    .select()
    .from(classTeacher)
    .where(eq(classTeacher.classId, classId))
    .orderBy(asc(classTeacher.createdAt));
  return rows.map(({ role, createdAt }) => ({ role, since: createdAt.toISOString() }));
}

async function readPlan({ db }: Store, classId: string, status: 'active' | 'draft') {
  const [row] = await db
    .select({ plan: weekPlan.plan })
    .from(weekPlan)
    .where(and(eq(weekPlan.classId, classId), eq(weekPlan.status, status)));
  return row?.plan ?? null;
}

/** The class's own line; a child's own books stand in its record. */
async function readBooks({ db }: Store, classId: string) {
  return db
    .select(BOOK_COLUMNS)
    .from(book)
    .where(and(eq(book.classId, classId), isNull(book.childId), isNull(book.retiredAt)))
    .orderBy(asc(book.place));
}

async function readBreaks({ db }: Store, classId: string) {
  return db
    .select({ first: classBreak.firstDay, last: classBreak.lastDay, title: classBreak.title })
    .from(classBreak)
    .where(eq(classBreak.classId, classId))
    .orderBy(asc(classBreak.firstDay), asc(classBreak.id));
}

function iso(instant: Date | null): string | null {
  return instant === null ? null : instant.toISOString();
}
