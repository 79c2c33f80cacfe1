import { eq } from 'drizzle-orm';
import type { FactId, FactMemory } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { Store } from '../connection/db.ts';
import { storedFact } from '../evenings/drill-json.ts';
import { factMemory } from '../schema/index.ts';

/** All that is known about a child's facts, for the composer. */
export async function readMemory(store: Store, childId: string): Promise<Map<FactId, FactMemory>> {
  const rows = await store.db.select().from(factMemory).where(eq(factMemory.childId, childId));
  return new Map(
    rows.map((row) => [
      storedFact(row.fact),
      {
        asked: row.asked,
        right: row.right,
        streak: row.streak,
        lastDay: storedDay(row.lastDay),
        lastRight: row.lastRight,
      },
    ]),
  );
}
