import { drizzle } from 'drizzle-orm/postgres-js';
import postgres from 'postgres';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { z } from 'zod';
import { type OpenStore, openServer, type Store } from '../../db/index.ts';
import * as schema from '../../db/schema/index.ts';
import { tick } from '../../jobs/tick.ts';
import { makeQuickSchool } from '../support/quick-school.ts';
import { FRIDAY } from '../support/quick-stage.ts';
import { createDatabase } from '../support/stores.ts';
import { openWorld, type World } from '../support/world.ts';

/** Tables that stay small however many children there are: bots, and codes that the operator issued. */
const SMALL = new Set(['bot', 'rate', 'upkeep', 'teacher_invite']);

interface Asked {
  readonly query: string;
  readonly params: readonly unknown[];
}

interface Node {
  readonly 'Node Type': string;
  readonly 'Relation Name'?: string;
  readonly 'Index Name'?: string;
  readonly 'Index Cond'?: string;
  readonly Plans?: readonly Node[];
}

const node: z.ZodType<Node> = z.lazy(() =>
  z.looseObject({
    'Node Type': z.string(),
    'Relation Name': z.string().exactOptional(),
    'Index Name': z.string().exactOptional(),
    'Index Cond': z.string().exactOptional(),
    Plans: z.array(node).readonly().exactOptional(),
  }),
);
const explained = z.array(z.object({ 'QUERY PLAN': z.array(z.object({ Plan: node })) }));

let world: World;
let opened: OpenStore;
let client: postgres.Sql;
let store: Store;
/** Every statement of the planner since it was last emptied. */
let asked: Asked[] = [];
/** Indexes that hold a part of their table only: to read all of one is to read what is open or due. */
let partial: ReadonlySet<string>;

beforeAll(async () => {
  const url = await createDatabase();
  const backend = { name: 'plans', open: () => openServer(url, () => {}) };
  world = await openWorld({ start: FRIDAY.morning, backend });
  await makeQuickSchool(world, { families: 3 });
  opened = await openServer(url, () => {});
  client = postgres(url, { max: 2, onnotice: () => {} });
  const logger = {
    logQuery: (query: string, params: unknown[]) => {
      asked.push({ query, params });
    },
  };
  store = { ...opened, db: drizzle(client, { schema, logger }) };
  const rows = await client`select indexname from pg_indexes where indexdef like '% WHERE %'`;
  partial = new Set(rows.map((row) => String(row.indexname)));
});

afterAll(async () => {
  await client.end();
  await opened.close();
  await world.close();
});

async function tickAt(instant: string): Promise<void> {
  const log = { info: () => {}, warn: () => {}, error: () => {} };
  await tick({ store, clock: { now: () => new Date(instant) }, log });
}

/** The parts of a plan that read a whole table although reading one through was made as dear as can be. */
async function wholeReads({ query, params }: Asked): Promise<string[]> {
  if (!/^(select|update|delete|\(select|with)/i.test(query)) return [];
  const rows = await client.begin(async (own) => {
    await own`set local enable_seqscan = off`;
    // Which are better for two small tables, and for these are read through.
    await own`set local enable_hashjoin = off`;
    await own`set local enable_mergejoin = off`;
    return own.unsafe(`explain (format json) ${query}`, params.map(plain));
  });
  const [found] = explained.parse([...rows]);
  return nodesOf(found?.['QUERY PLAN'][0]?.Plan)
    .filter(readsAll)
    .map((each) => `${each['Node Type']} ${each['Relation Name'] ?? each['Index Name']}: ${query}`);
}

function plain(value: unknown): string | number | boolean | null {
  if (value === null || typeof value === 'number' || typeof value === 'boolean') return value;
  return typeof value === 'string' ? value : JSON.stringify(value);
}

function nodesOf(plan: Node | undefined): Node[] {
  return plan ? [plan, ...(plan.Plans ?? []).flatMap(nodesOf)] : [];
}

function readsAll(each: Node): boolean {
  const { 'Node Type': type, 'Relation Name': table = '', 'Index Name': index = '' } = each;
  if (SMALL.has(table)) return false;
  if (type === 'Seq Scan') return true;
  return type.includes('Index') && each['Index Cond'] === undefined && !partial.has(index);
}

async function allWholeReads(): Promise<string[]> {
  const found: string[] = [];
  for (const each of asked) found.push(...(await wholeReads(each)));
  return [...new Set(found)];
}

it('a tick that plans evenings reads no table through, nor any index from end to end', async () => {
  asked = [];
  await tickAt(FRIDAY.evening);
  expect(asked.some(({ query }) => query.startsWith('insert into "evening"'))).toBe(true);
  expect(await allWholeReads()).toEqual([]);
});

it('a tick with nothing due asks nothing about any class, and reads nothing through', async () => {
  await tickAt(FRIDAY.evening);
  asked = [];
  await tickAt(FRIDAY.evening);
  expect(asked.filter(({ query }) => /from "(child|evening)"/.test(query)).length).toBeLessThan(4);
  expect(asked.some(({ query }) => query.includes('"part_score"'))).toBe(false);
  expect(await allWholeReads()).toEqual([]);
});

it('nor do the nudges, the digest and the retention', async () => {
  asked = [];
  await tickAt(FRIDAY.nudge);
  await tickAt(FRIDAY.digest);
  expect(asked.some(({ query }) => query.includes('"part_score"'))).toBe(true);
  expect(await allWholeReads()).toEqual([]);
});

it('what would read a table through is found', async () => {
  const query = 'select * from "mark" where "right" = $1';
  expect(await wholeReads({ query, params: [true] })).toHaveLength(1);
});
