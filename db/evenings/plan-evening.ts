import { and, eq, isNull } from 'drizzle-orm';
import { isPaused, type SchoolDay } from '../../drills/index.ts';
import { nextPages } from '../books/next-pages.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { oweGreeting } from '../greetings/owe-greeting.ts';
import { oweHelpers } from '../ledger/owe.ts';
import { pacesOf } from '../pace/read-pace.ts';
import type { StoredPlan } from '../plans/week-plans.ts';
import { child, evening } from '../schema/index.ts';
import { previewDrill, seedOf } from './compose-drill.ts';

/** Everything an evening is made from. */
export interface EveningInput {
  readonly childId: string;
  readonly classId: string;
  readonly day: SchoolDay;
  readonly plan: StoredPlan;
  readonly expiresAt: Date;
  readonly now: Date;
}

/**
 * Composes a child's evening and owes it to each helper, after the class's greeting where that is due, in one transaction. A
 * child whose latest evenings went unmarked gets one to catch up with. Returns how many messages are owed: 0 when the evening
 * was there already, whoever planned it, and when the child was archived or moved to another class, or its family paused, meanwhile.
 */
export async function planEvening(store: Store, input: EveningInput): Promise<number> {
  return inTransaction(store, async (inner) => {
    if (!(await isPresent(inner, input))) return 0;
    const id = await insertEvening(inner, input);
    if (!id) return 0;
    const { owed: greetings, waiting } = await oweGreeting(inner, input);
    const evenings = await oweHelpers(
      inner,
      {
        kind: 'evening',
        subjectId: input.childId,
        classId: input.classId,
        day: input.day,
        eveningId: id,
        notBefore: input.now,
        expiresAt: input.expiresAt,
        follows: waiting,
      },
      input.now,
    );
    return greetings + evenings;
  });
}

/** Locked, so that an archiving or a pause of this moment either finds the messages and calls them off or has none written after it. */
async function isPresent(inner: Store, { childId, classId, day }: EveningInput): Promise<boolean> {
  const rows = await inner.db
    .select({ id: child.id })
    .from(child)
    .where(and(eq(child.id, childId), eq(child.classId, classId), isNull(child.archivedAt)))
    .for('key share');
  return rows.length > 0 && !isPaused((await pacesOf(inner, [childId]))(childId).pace, day);
}

async function insertEvening(store: Store, input: EveningInput): Promise<string | null> {
  const { childId, day } = input;
  const drill = await previewDrill(store, { childId, day, plan: input.plan.plan });
  const pages = await nextPages(store, input);
  const [row] = await store.db
    .insert(evening)
    .values({
      id: newId(input.now),
      childId: input.childId,
      classId: input.classId,
      day: input.day,
      planId: input.plan.id,
      seed: seedOf(input),
      drill,
      bookId: pages?.book.id ?? null,
      pageFrom: pages?.from ?? null,
      pageTo: pages?.to ?? null,
      createdAt: input.now,
    })
    .onConflictDoNothing()
    .returning({ id: evening.id });
  return row?.id ?? null;
}
