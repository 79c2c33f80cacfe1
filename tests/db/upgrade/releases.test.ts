import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readMigrationFiles } from 'drizzle-orm/migrator';
import { drizzle } from 'drizzle-orm/postgres-js';
import { migrate } from 'drizzle-orm/postgres-js/migrator';
import postgres from 'postgres';
import { expect, it } from 'vitest';
import { MIGRATIONS_FOLDER } from '../../../db/connection/migrations-folder.ts';
import {
  checkBackup,
  openServer,
  rebuildAll,
  restoreBackup,
  writeBackup,
} from '../../../db/index.ts';
import { aClass, aFamily } from '../../support/people.ts';
import { dumpAll, readTable, runSql } from '../../support/raw-rows.ts';
import { createEmptyDatabase, server } from '../../support/stores.ts';
import { MORNING } from '../../support/term.ts';

const RELEASES = join(import.meta.dirname, '..', '..', 'fixtures', 'releases');
const releases = (await readdir(RELEASES)).filter((name) => name.endsWith('.gz'));
const NOW = new Date('2026-09-15T08:00:00Z');

it.each(releases)('a backup of release %s comes up to this one whole', async (name) => {
  const file = join(RELEASES, name);
  const { schema, tables, madeAt } = await checkBackup(file);
  const released = readMigrationFiles({ migrationsFolder: MIGRATIONS_FOLDER })[
    schema.migrations - 1
  ];
  expect(
    released?.hash,
    'A released migration was changed: add a new one. Before the first release: npx tsx tests/db/upgrade/keep-release.ts',
  ).toBe(schema.hash);
  const store = await server.open();
  await restoreBackup(store, { file, now: NOW, ranUntil: new Date(madeAt) });
  for (const table of ['class', 'child', 'evening', 'mark', 'erasure', 'scheme', 'note', 'pace']) {
    const rows = tables.find((each) => each.name === table)?.rows;
    expect(rows, table).toBeGreaterThan(0);
    expect((await readTable(store, table)).length, table).toBe(rows);
  }
  const before = await dumpAll(store);
  await rebuildAll(store);
  expect(await dumpAll(store)).toEqual(before);
  await store.close();
});

/** This release's migrations and one more, which has something to do with the rows that are there. */
async function migrationsToCome(folder: string): Promise<string> {
  const to = join(folder, 'migrations');
  await cp(MIGRATIONS_FOLDER, to, { recursive: true });
  const file = join(to, 'meta', '_journal.json');
  const journal = JSON.parse(await readFile(file, 'utf8'));
  const last = journal.entries.at(-1);
  const next = { ...last, idx: last.idx + 1, when: last.when + 1, tag: '9999_next' };
  await writeFile(file, JSON.stringify({ ...journal, entries: [...journal.entries, next] }));
  const statements = [
    'alter table "child" add column "shouted" text',
    'update "child" set "shouted" = upper("nickname")',
    'alter table "child" alter column "shouted" set not null',
  ];
  await writeFile(join(to, '9999_next.sql'), statements.join(';\n--> statement-breakpoint\n'));
  return to;
}

it('a backup of an earlier release goes through the migrations made since, with its rows', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'suppersums-upgrade-'));
  const file = join(folder, 'old.gz');
  const old = await server.open();
  await aFamily(old, await aClass(old), { nickname: 'Wren' });
  await writeBackup(old, { file, madeAt: MORNING });
  await old.close();
  const migrationsFolder = await migrationsToCome(folder);
  const url = await createEmptyDatabase();
  const client = postgres(url, { max: 1, onnotice: () => {} });
  await migrate(drizzle(client), { migrationsFolder });
  await client.end();
  const store = await openServer(url, () => {});
  const { upgraded, backup } = await restoreBackup(store, { file, now: NOW, migrationsFolder });
  expect(upgraded).toBe(true);
  const children = await runSql(store, 'select nickname, shouted from child');
  expect(children).toEqual([{ nickname: 'Wren', shouted: 'WREN' }]);
  expect(backup.madeAt).toBe(MORNING.toISOString());
  await store.close();
  await rm(folder, { recursive: true, force: true });
});
