import { getTableName, is } from 'drizzle-orm';
import { getTableConfig, PgTable } from 'drizzle-orm/pg-core';
import * as schema from '../schema/index.ts';

/**
 * The names of all tables of ours, each after those it refers to, so that rows can be put in with every constraint kept. The
 * job engine's tables are not ours: its jobs are made anew from the ledger.
 *
 * @throws {Error} when tables refer to each other in a circle; the schema has none.
 */
export function tablesInOrder(): string[] {
  const waiting = new Map<string, readonly string[]>(
    Object.values(schema)
      .filter((value) => is(value, PgTable))
      .map((table) => [getTableName(table), refersTo(table)] as const),
  );
  const ordered: string[] = [];
  while (waiting.size > 0) {
    const free = [...waiting].filter(([, others]) => !others.some((other) => waiting.has(other)));
    if (free.length === 0) throw new Error('tables refer to each other in a circle');
    for (const [name] of free.sort(([a], [b]) => (a < b ? -1 : 1))) {
      ordered.push(name);
      waiting.delete(name);
    }
  }
  return ordered;
}

function refersTo(table: PgTable): string[] {
  const { name, foreignKeys } = getTableConfig(table);
  return foreignKeys
    .map((key) => getTableName(key.reference().foreignTable))
    .filter((other) => other !== name);
}
