import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { unpack } from '../../bot/callback/codec.ts';
import { Phone } from '../../bot/roots/phone.ts';
import { storableJson } from '../../db/inbox/storable-json.ts';
import { ACTION_KINDS } from '../support/action-rules.ts';
import { createCallWatch } from '../support/call-watch.ts';
import { FUZZ_RUNS } from '../support/fuzz-runs.ts';
import { type HostileUpdate, hostileUpdate } from '../support/hostile-update.ts';
import { leaksIn, leaksOf, secretsOf } from '../support/leaks.ts';
import { ask, newPhone } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { buttonOf, changedRows, storedRows } from '../support/trying.ts';
import { openWrongedSchool, PEOPLE, type WrongedSchool } from '../support/wronged-school.ts';

/** The same updates in every run. */
const SEED = 20_260_918;
const BATCH = 100;
const STRANGERS = Array.from({ length: 40 }, (_, at) => 700_001 + at);
const KNOWN = [PEOPLE['the lead teacher'], PEOPLE['the child’s helper']];

const watch = createCallWatch();
let school: WrongedSchool;
let before: ReadonlySet<string>;
const taps: { readonly queryId: string; readonly update: HostileUpdate }[] = [];

/** The query of a tap, if it has one that can be answered. */
function queryOf(update: HostileUpdate): string | null {
  const query: unknown = update.callback_query;
  if (typeof query !== 'object' || query === null) return null;
  const { id } = query as { id?: unknown };
  // As it comes back from the inbox.
  return typeof id === 'string' && id !== '' ? String(storableJson(id)) : null;
}

async function send(updates: readonly HostileUpdate[]): Promise<void> {
  const { world } = school;
  for (let at = 0; at < updates.length; at += BATCH) {
    const batch = updates.slice(at, at + BATCH);
    await Promise.all(batch.map((update) => world.client.injectUpdate({ ...update })));
    await world.settle();
  }
}

beforeAll(async () => {
  school = await openWrongedSchool({ gate: watch.gate });
  const { world, things } = school;
  for (const id of STRANGERS) await (await newPhone(world, id)).world.client.say(id, '/start');
  await world.settle();
  before = await storedRows(world);
  watch.forget();
  // Whoever holds a right code may come in: nobody does here.
  const codeless = { ...things, code: `${'B'.repeat(21)}A` };
  const buttons = ACTION_KINDS.map((kind) => buttonOf(kind, codeless));
  const hostile = hostileUpdate({ strangers: STRANGERS, known: KNOWN, buttons });
  const updates = fc.sample(hostile, { numRuns: FUZZ_RUNS, seed: SEED });
  for (const update of updates) {
    const queryId = queryOf(update);
    if (queryId !== null) taps.push({ queryId, update });
  }
  await send(updates);
}, 600_000);
afterAll(() => school.world.close());

describe(`${FUZZ_RUNS} malformed and hostile updates`, () => {
  it('leave no tap unanswered', () => {
    expect(taps.length).toBeGreaterThan(FUZZ_RUNS / 3);
    const answered = new Set(watch.answered());
    expect(taps.filter(({ queryId }) => !answered.has(queryId))).toEqual([]);
  });

  it('change nothing, but for what the bot waits for a stranger to type', async () => {
    const changed = changedRows(before, await storedRows(school.world));
    expect(changed.filter((row) => !row.startsWith('expectation '))).toEqual([]);
  });

  it('are told nothing of the school', () => {
    const said = watch.said();
    expect(said.length).toBeGreaterThan(100);
    expect(school.secrets.filter((secret) => said.some((text) => text.includes(secret)))).toEqual(
      [],
    );
  });

  it('had right buttons among them, and others that only look right', () => {
    const data = taps.map(({ update }) => (update.callback_query as { data?: unknown }).data);
    const read = data.map((each) => typeof each === 'string' && unpack(each) !== null);
    expect(read.filter(Boolean).length).toBeGreaterThan(FUZZ_RUNS / 20);
    expect(read.filter((each) => !each).length).toBeGreaterThan(FUZZ_RUNS / 20);
  });

  it('stop nobody: each is at its end after one try, none is an error, and the next person is answered', async () => {
    const { world } = school;
    const rows = await readTable(world.store, 'inbox');
    expect(new Set(rows.map(({ status, tries }) => `${status} ${tries}`))).toEqual(
      new Set(['done 1']),
    );
    expect(rows.length).toBeGreaterThanOrEqual(FUZZ_RUNS);
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
    expect(world.logged.filter(({ event }) => event === 'updates_left_out')).toEqual([]);
    const phone = new Phone(world, PEOPLE['another family’s helper']);
    expect(await ask(phone, '/help')).toContain('You help Wren2');
  });

  it('tell the log no name, no code and no text', async () => {
    const { world, things } = school;
    expect(world.logged.length).toBeGreaterThan(FUZZ_RUNS / 3);
    expect(await secretsOf(world)).toEqual(
      expect.arrayContaining([world.rehearsal.token, 'Wren1']),
    );
    expect(leaksIn(world.logged, [things.code, ...school.secrets])).toEqual([]);
    expect(await leaksOf(world)).toEqual([]);
  });
});
