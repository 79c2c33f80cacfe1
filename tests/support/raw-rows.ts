import { getTableName, is, sql } from 'drizzle-orm';
import { PgTable } from 'drizzle-orm/pg-core';
import { z } from 'zod';
import type { Store } from '../../db/index.ts';
import * as schema from '../../db/schema/index.ts';

/** A row as the database spells it in JSON: column names as stored, instants as ISO text. */
export type RawRow = Readonly<Record<string, unknown>>;

/** The names of all tables of ours. */
export const TABLES: readonly string[] = Object.values(schema)
  .filter((value) => is(value, PgTable))
  .map((table) => getTableName(table))
  .sort();

const answer = z.array(z.object({ name: z.string(), rows: z.string() }));
const rawRows = z.array(z.record(z.string(), z.unknown()));

/** Every row of a table, past the verbs and the schema's own mapping. */
export async function readTable(store: Store, table: string): Promise<RawRow[]> {
  const [found] = answer.parse(await runSql(store, dumpSql(table, 'jsonb_agg(to_jsonb(t))')));
  return rawRows.parse(JSON.parse(found?.rows || '[]'));
}

/** Everything stored, as text by table: two equal dumps mean that nothing changed. */
export async function dumpAll(store: Store): Promise<ReadonlyMap<string, string>> {
  const parts = TABLES.map((table) =>
    dumpSql(table, `string_agg(${rowText(table)}, E'\\n' order by t::text)`),
  );
  const found = answer.parse(await runSql(store, parts.join(' union all ')));
  return new Map(found.map((row) => [row.name, row.rows]));
}

/** Runs one statement past the verbs and returns its rows. */
export async function runSql(store: Store, statement: string): Promise<RawRow[]> {
  const result: unknown = await store.db.execute(sql.raw(statement));
  // One driver answers with the rows, the other wraps them.
  return rawRows.parse(
    Array.isArray(result)
      ? [...result]
      : z.object({ rows: z.array(z.unknown()) }).parse(result).rows,
  );
}

/** When the planner looks at a class next is its own affair: it follows from what is stored about the class. */
function rowText(table: string): string {
  return table === 'class' ? "(to_jsonb(t) - 'look_at' - 'looked_at')::text" : 't::text';
}

function dumpSql(table: string, rows: string): string {
  return `select '${table}' as name, coalesce(${rows}::text, '') as rows from "${table}" t`;
}
