import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { sql } from 'drizzle-orm';
import { z } from 'zod';
import type { Store } from '../connection/db.ts';
import { MIGRATIONS_FOLDER } from '../connection/migrations-folder.ts';

const journal = z.object({ entries: z.array(z.object({ when: z.number() })) });

/** What the migration tool keeps, as either driver gives it: the rows themselves, or the rows beside other things. */
const applied = z.union([
  z.array(z.object({ last: z.coerce.number().nullable() })),
  z
    .looseObject({ rows: z.array(z.object({ last: z.coerce.number().nullable() })) })
    .transform(({ rows }) => rows),
]);

/**
 * Whether all migrations that this release brings have been applied. Newer ones are no trouble of ours. Rejects when the
 * database cannot be reached.
 */
export async function isMigrated({ db }: Store): Promise<boolean> {
  const file = await readFile(join(MIGRATIONS_FOLDER, 'meta', '_journal.json'), 'utf8');
  const { entries } = journal.parse(JSON.parse(file));
  const rows: unknown = await db.execute(
    sql`select max(created_at) as last from drizzle.__drizzle_migrations`,
  );
  const last = applied.parse(rows)[0]?.last ?? 0;
  return entries.every(({ when }) => when <= last);
}
