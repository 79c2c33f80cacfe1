import { z } from 'zod';
import type { Store } from '../../db/index.ts';
import { runSql } from './raw-rows.ts';

const tables = z.array(z.object({ schema: z.string(), name: z.string() }));
const dump = z.array(z.object({ rows: z.string() }));

/** Every row of every table in the database as text, by `schema.table`: ours, the job engine's and the migrations'. */
export async function dumpDatabase(store: Store): Promise<ReadonlyMap<string, string>> {
  const found = tables.parse(
    await runSql(
      store,
      `select table_schema as schema, table_name as name from information_schema.tables
         where table_type = 'BASE TABLE' and table_schema not in ('pg_catalog', 'information_schema')`,
    ),
  );
  const dumps = new Map<string, string>();
  for (const { schema, name } of found) {
    const [row] = dump.parse(
      await runSql(
        store,
        `select coalesce(string_agg(t::text, E'\\n'), '') as rows from "${schema}"."${name}" t`,
      ),
    );
    dumps.set(`${schema}.${name}`, row?.rows ?? '');
  }
  return dumps;
}

/** Where in the whole database a text stands, in capitals or not: `schema.table`, sorted. */
export async function tablesWith(store: Store, text: string): Promise<string[]> {
  const dumps = await dumpDatabase(store);
  const wanted = text.toLowerCase();
  return [...dumps]
    .flatMap(([table, rows]) => (rows.toLowerCase().includes(wanted) ? [table] : []))
    .sort();
}
