import { and, eq } from 'drizzle-orm';
import type { SchoolDay } from '../../drills/index.ts';
import type { Store } from '../connection/db.ts';
import { inTransaction } from '../connection/transaction.ts';
import { oweTeachers } from '../ledger/owe.ts';
import { ledger } from '../schema/index.ts';

/** Owes each teacher of a class the digest of `day`: its text, then its picture, then its table. Returns how many messages. */
export async function oweDigest(
  store: Store,
  input: { classId: string; day: SchoolDay; expiresAt: Date; now: Date },
): Promise<number> {
  return inTransaction(store, async (inner) => {
    let owed = 0;
    for (const kind of ['digest', 'digest_picture', 'digest_table'] as const) {
      owed += await oweTeachers(
        inner,
        {
          kind,
          subjectId: input.classId,
          classId: input.classId,
          day: input.day,
          eveningId: null,
          ...(kind === 'digest' ? {} : { follows: 'all' as const }),
          notBefore: input.now,
          expiresAt: input.expiresAt,
        },
        input.now,
      );
    }
    return owed;
  });
}

/** Whether the digest of `day` is owed, on its way or done. */
export async function isDigestOwed(
  store: Store,
  input: { classId: string; day: SchoolDay },
): Promise<boolean> {
  const rows = await store.db
    .select({ id: ledger.id })
    .from(ledger)
    .where(
      and(
        eq(ledger.subjectId, input.classId),
        eq(ledger.day, input.day),
        eq(ledger.kind, 'digest'),
      ),
    )
    .limit(1);
  return rows.length > 0;
}
