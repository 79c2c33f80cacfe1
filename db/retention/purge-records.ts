import { and, eq, inArray, lt, or, type SQL, sql } from 'drizzle-orm';
import type { PgTable } from 'drizzle-orm/pg-core';
import { keepTopNumber } from '../children/class-places.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { monthOf } from '../helpers/data-used.ts';
import { forgetHelpers } from '../rights/forget-helper.ts';
import {
  act,
  consent,
  dataUsed,
  erasure,
  expectation,
  helperChild,
  ledger,
  mark,
  media,
  runResult,
  slip,
  teacherInvite,
} from '../schema/index.ts';
import { CODES_DAYS, NOTES_DAYS, RECORD_DAYS } from './keep-for.ts';

const DAY_MS = 24 * 60 * 60_000;

/**
 * Deletes what was kept long enough: codes that open nothing, acts past their day, questions without an answer, the record of
 * what was sent, of who left and of what was erased. At most `limit` rows of each kind. Returns how many rows.
 */
export async function purgeRecords(
  store: Store,
  { now, limit }: { now: Date; limit: number },
): Promise<number> {
  const ago = (days: number) => new Date(now.getTime() - days * DAY_MS);
  const [codes, notes, record] = [ago(CODES_DAYS), ago(NOTES_DAYS), ago(RECORD_DAYS)];
  return inTransaction(store, async (inner) => {
    const drop = (table: PgTable, where: SQL | undefined) => dropSome(inner, table, where, limit);
    let rows = await dropActs(inner, notes, limit);
    rows += await drop(slip, or(lt(slip.expiresAt, codes), lt(slip.revokedAt, codes)));
    rows += await drop(
      teacherInvite,
      or(
        lt(teacherInvite.expiresAt, codes),
        lt(teacherInvite.usedAt, codes),
        lt(teacherInvite.revokedAt, codes),
      ),
    );
    rows += await drop(expectation, lt(expectation.createdAt, notes));
    rows += await drop(
      ledger,
      and(lt(ledger.expiresAt, record), sql`${ledger.status} <> 'planned'`),
    );
    rows += await drop(media, lt(media.createdAt, record));
    rows += await drop(dataUsed, lt(dataUsed.month, monthOf(record)));
    rows += await drop(erasure, lt(erasure.erasedAt, record));
    return rows + (await dropTies(inner, record, now, limit));
  });
}

/** By the row's place in its table, which every table has, whatever its key. */
async function dropSome(
  { db }: Store,
  table: PgTable,
  where: SQL | undefined,
  limit: number,
): Promise<number> {
  const some = sql`ctid = any(array(select ctid from ${table} where ${where} limit ${limit}))`;
  return (await db.delete(table).where(some).returning({ one: sql`1` })).length;
}

/** Acts of moved children say which numbers were given: the classes remember that by themselves first. */
async function dropActs(inner: Store, before: Date, limit: number): Promise<number> {
  const rows = await inner.db
    .select({
      id: act.id,
      classId: act.classId,
      to: sql<string | null>`${act.before}->>'toClassId'`,
    })
    .from(act)
    .where(lt(act.createdAt, before))
    .orderBy(act.id)
    .limit(limit);
  if (rows.length === 0) return 0;
  const classes = rows.flatMap(({ classId, to }) => (to === null ? [] : [classId, to]));
  for (const classId of [...new Set(classes)].sort()) await keepTopNumber(inner, classId);
  const ids = rows.map(({ id }) => id);
  await inner.db.delete(act).where(inArray(act.id, ids));
  return ids.length;
}

/** Helpers who left a child so long ago that no mark of theirs is kept, and their withdrawn agreement. */
async function dropTies(inner: Store, before: Date, now: Date, limit: number): Promise<number> {
  const rows = await inner.db
    .select({ helperId: helperChild.helperId, childId: helperChild.childId })
    .from(helperChild)
    .where(
      and(
        lt(helperChild.leftAt, before),
        sql`not exists (select 1 from ${mark} where ${mark.helperId} = ${helperChild.helperId})`,
        sql`not exists (select 1 from ${runResult} where ${runResult.helperId} = ${helperChild.helperId})`,
      ),
    )
    .limit(limit);
  for (const { helperId, childId } of rows) {
    await inner.db
      .delete(consent)
      .where(and(eq(consent.helperId, helperId), eq(consent.childId, childId)));
    await inner.db
      .delete(helperChild)
      .where(and(eq(helperChild.helperId, helperId), eq(helperChild.childId, childId)));
  }
  const helpers = [...new Set(rows.map(({ helperId }) => helperId))];
  await forgetHelpers(inner, helpers, now);
  return rows.length;
}
