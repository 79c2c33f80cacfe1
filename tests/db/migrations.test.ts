import { readFile } from 'node:fs/promises';
import { type DrizzleSnapshotJSON, generateDrizzleJson, generateMigration } from 'drizzle-kit/api';
import { is } from 'drizzle-orm';
import { getTableConfig, PgTable, pgTable, text } from 'drizzle-orm/pg-core';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { MIGRATIONS_FOLDER } from '../../db/connection/migrations-folder.ts';
import type { Store } from '../../db/index.ts';
import * as schema from '../../db/schema/index.ts';
import { runSql, TABLES } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { backends } from '../support/stores.ts';

// The generator adds a method to every array. Out of the way of `for...in`, or a reader of PDF files refuses to start in the same
// process.
Object.defineProperty(Array.prototype, 'random', { enumerable: false });

const TABLE_OBJECTS = Object.values(schema).filter((value) => is(value, PgTable));
const CONFIGS = TABLE_OBJECTS.map((table) => getTableConfig(table));

const journal = z.object({ entries: z.array(z.object({ idx: z.number() })) });

async function latestSnapshot(): Promise<DrizzleSnapshotJSON> {
  const meta = `${MIGRATIONS_FOLDER}/meta`;
  const { entries } = journal.parse(JSON.parse(await readFile(`${meta}/_journal.json`, 'utf8')));
  const name = String(entries.at(-1)?.idx).padStart(4, '0');
  return JSON.parse(await readFile(`${meta}/${name}_snapshot.json`, 'utf8'));
}

describe('the migrations as files', () => {
  it('leave nothing of the schema to migrate', async () => {
    const latest = await latestSnapshot();
    const now = generateDrizzleJson(schema, latest.id);
    expect(await generateMigration(latest, now)).toEqual([]);
  });

  it('would not do for a schema with one more table', async () => {
    const latest = await latestSnapshot();
    const more = { ...schema, extra: pgTable('extra', { name: text('name') }) };
    const statements = await generateMigration(latest, generateDrizzleJson(more, latest.id));
    expect(statements).toHaveLength(1);
  });
});

describe.each(backends)('the migrated schema on $name', (backend) => {
  const opened = sharedStore(backend);

  it('has the tables of the schema and no others', async () => {
    const rows = await runSql(
      opened(),
      `select table_name from information_schema.tables where table_schema = 'public'`,
    );
    expect(rows.map((row) => row.table_name).sort()).toEqual(TABLES);
  });

  describe.each(CONFIGS)('table $name', (config) => tableMatches(opened, config));
});

type Config = (typeof CONFIGS)[number];

function tableMatches(opened: () => Store, config: Config) {
  it('has the columns, types, nullability and defaults of the schema', async () => {
    const rows = await runSql(
      opened(),
      `select a.attname as name, format_type(a.atttypid, a.atttypmod) as type, a.attnotnull as required,
        pg_get_expr(d.adbin, d.adrelid) as "default"
        from pg_attribute a left join pg_attrdef d on d.adrelid = a.attrelid and d.adnum = a.attnum
        where a.attrelid = '"${config.name}"'::regclass and a.attnum > 0 and not a.attisdropped
        order by a.attnum`,
    );
    expect(rows).toEqual(
      config.columns.map((column) => ({
        name: column.name,
        type: column.getSQLType(),
        required: column.notNull || column.primary,
        default: defaultOf(column),
      })),
    );
  });

  it('has the primary, unique and foreign keys and checks of the schema', async () => {
    const rows = await runSql(
      opened(),
      `select c.contype::text || ' ' || coalesce((select string_agg(a.attname, ',' order by k.at)
        from unnest(c.conkey) with ordinality k(num, at)
        join pg_attribute a on a.attrelid = c.conrelid and a.attnum = k.num), '')
        || coalesce(' -> ' || f.relname, '') as key
        from pg_constraint c left join pg_class f on f.oid = c.confrelid
        where c.conrelid = '"${config.name}"'::regclass and c.contype in ('p', 'u', 'f', 'c')`,
    );
    expect(rows.map((row) => row.key).sort()).toEqual(keysOf(config));
  });

  it('has the indexes of the schema', async () => {
    const rows = await runSql(
      opened(),
      `select c.relname as name, i.indisunique as "unique", i.indnatts::int as columns,
        i.indpred is not null as partial
        from pg_index i join pg_class c on c.oid = i.indexrelid
        where i.indrelid = '"${config.name}"'::regclass
        and not exists (select 1 from pg_constraint k where k.conindid = i.indexrelid and k.contype in ('p', 'u'))
        order by c.relname`,
    );
    const wanted = config.indexes.map(({ config: index }) => ({
      name: index.name,
      unique: index.unique,
      columns: index.columns.length,
      partial: index.where !== undefined,
    }));
    expect(rows).toEqual(wanted.sort((a, b) => (String(a.name) < String(b.name) ? -1 : 1)));
  });
}

/** A default as the database spells it: a text or an instant in quotes with its type, anything else plainly. */
function defaultOf(column: Config['columns'][number]): string | null {
  if (column.default === undefined) return null;
  if (column.default instanceof Date) {
    const [day, time] = column.default.toISOString().split(/[T.]/);
    return `'${day} ${time}+00'::${column.getSQLType()}`;
  }
  const plain = String(column.default);
  return typeof column.default === 'string' ? `'${plain}'::${column.getSQLType()}` : plain;
}

function keysOf(config: Config): string[] {
  const names = (columns: readonly { name: string }[]) => columns.map((c) => c.name).join(',');
  return [
    ...config.primaryKeys.map((key) => `p ${names(key.columns)}`),
    ...config.columns.filter((column) => column.primary).map((column) => `p ${column.name}`),
    ...config.uniqueConstraints.map((key) => `u ${names(key.columns)}`),
    ...config.columns.filter((column) => column.isUnique).map((column) => `u ${column.name}`),
    ...config.foreignKeys.map((key) => {
      const { columns, foreignTable } = key.reference();
      return `f ${names(columns)} -> ${getTableConfig(foreignTable).name}`;
    }),
    ...config.checks.map(() => 'c status'),
  ].sort();
}
