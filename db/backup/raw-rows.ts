import type { SQL } from 'drizzle-orm';
import { z } from 'zod';
import type { Db } from '../connection/db.ts';

// One driver answers with the rows, the other wraps them.
const answer = z.union([
  z.array(z.unknown()),
  z.object({ rows: z.array(z.unknown()) }).transform(({ rows }) => rows),
]);

/** Runs one statement that the query builder has no words for, on either driver, and returns its rows as `shape` reads them. */
export async function rawRows<T>(db: Db, statement: SQL, shape: z.ZodType<T>): Promise<T[]> {
  const result: unknown = await db.execute(statement);
  const rows = answer.parse(Array.isArray(result) ? [...result] : result);
  return rows.map((row) => shape.parse(row));
}
