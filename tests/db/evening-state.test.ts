import { describe, expect, it } from 'vitest';
import {
  closePart,
  declineEvening,
  recordPages,
  remindLater,
  type Store,
  startEvening,
} from '../../db/index.ts';
import { codeOf } from '../support/code-of.ts';
import { dumpAll, runSql } from '../support/raw-rows.ts';
import { sharedStore } from '../support/shared-store.ts';
import { dearBackends } from '../support/stores.ts';
import { day, evening, MONDAY, TUESDAY } from '../support/term.ts';
import { aMarkableEvening } from './marked-evening.ts';
import { HELPER_VERBS } from './scoped-verbs.ts';
import { stoppingSuite } from './stopping.suite.ts';
import { turnsSuite } from './turns.suite.ts';

const NOW = evening(MONDAY, 10);
/** About how often drills come: that can be said under the evening of any day. */
const ANY_DAY = ['bringBackDaily'];
/** Verbs that only look, which is allowed on any day. */
const READS = ['getEvening', 'listTurns'];
const ALL_RIGHT = { kind: 'all_right' } as const;

describe.each(dearBackends)('an evening on $name', (backend) => {
  const opened = sharedStore(backend);
  describe('and its pages', () => pages(opened));
  describe('and its state', () => states(opened));
  describe('stopped for the day', () => stoppingSuite(opened));
  describe('and the turns of brothers and sisters', () => turnsSuite(opened));
  describe('and the end of its day', () => endOfDay(opened));
});

function pages(opened: () => Store) {
  const record = (scope: Parameters<typeof recordPages>[1], count: number) =>
    recordPages(opened(), scope, { pages: count, now: NOW });

  it('the same number again stores nothing; another is a correction beside it', async () => {
    const { scope, rows, read } = await aMarkableEvening(opened());
    expect((await read()).pages).toBeNull();
    for (const count of [2, 2, 0, 3]) await record(scope, count);
    const log = (await rows('page_log')).map((row) => `${row.revision}:${row.pages}`);
    expect(log.sort()).toEqual(['1:2', '2:0', '3:3']);
    expect((await read()).pages).toBe(3);
  });

  it('two helpers at once with the same number store one row', async () => {
    const { scope, rows, family } = await aMarkableEvening(opened());
    await Promise.all(family.helpers.map(({ id }) => record({ ...scope, helperId: id }, 2)));
    expect(await rows('page_log')).toHaveLength(1);
  });

  it.each([-1, 11, 1.5])('%d pages are refused', async (count) => {
    const { scope, rows } = await aMarkableEvening(opened());
    expect(await codeOf(record(scope, count))).toBe('invalid');
    expect(await rows('page_log')).toEqual([]);
  });
}

function states(opened: () => Store) {
  it('an evening put off and started again is started, with its marks to come', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await remindLater(opened(), scope, { at: evening(MONDAY, 40), now: NOW });
    await declineEvening(opened(), scope, NOW);
    expect(await read()).toMatchObject({ declined: true, started: false, remindAt: null });
    await startEvening(opened(), scope, NOW);
    expect(await read()).toMatchObject({ declined: false, started: true });
  });

  it('starting twice and declining twice change nothing', async () => {
    const { scope } = await aMarkableEvening(opened());
    for (const verb of [declineEvening, startEvening]) {
      await verb(opened(), scope, NOW);
      const before = await dumpAll(opened());
      await verb(opened(), scope, evening(MONDAY, 20));
      expect(await dumpAll(opened())).toEqual(before);
    }
  });

  it('an evening that another version of the composer chose is shown and marked like any other', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    const before = await read();
    const write = (version: string) =>
      runSql(
        opened(),
        `update evening set drill = jsonb_set(drill, '{version}', '${version}') where id = '${scope.eveningId}'`,
      );
    await write('2');
    expect(await read()).toEqual({ ...before, drill: { ...before.drill, version: 2 } });
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    expect((await read()).results[0]).toMatchObject({ right: 5 });
    for (const nonsense of ['0', '1.5', '"1"']) {
      await write(nonsense);
      await expect(read()).rejects.toThrow();
    }
  });

  it('an evening with marks cannot be put off', async () => {
    const { scope } = await aMarkableEvening(opened());
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    const before = await dumpAll(opened());
    await declineEvening(opened(), scope, NOW);
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('marks on a declined evening take the refusal back', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    await declineEvening(opened(), scope, NOW);
    await closePart(opened(), scope, { part: 0, verdict: ALL_RIGHT, now: NOW });
    expect(await read()).toMatchObject({ declined: false, started: true });
  });

  it('the first wish for a reminder stands, and a started evening takes none', async () => {
    const { scope, read } = await aMarkableEvening(opened());
    const remind = (minutes: number) =>
      remindLater(opened(), scope, { at: evening(MONDAY, minutes), now: NOW });
    await remind(40);
    await remind(90);
    expect((await read()).remindAt).toEqual(evening(MONDAY, 40));
    const other = await aMarkableEvening(opened());
    await startEvening(opened(), other.scope, NOW);
    await remindLater(opened(), other.scope, { at: evening(MONDAY, 40), now: NOW });
    expect((await other.read()).remindAt).toBeNull();
  });
}

// 14 September 2026 begins and ends, in UTC, as the zones' offsets say: +14 h, -11 h, +5:45 h and +2 h (IANA tz database).
const ENDS: readonly [zone: string, first: string, end: string][] = [
  ['Pacific/Kiritimati', '2026-09-13T10:00:00Z', '2026-09-14T10:00:00Z'],
  ['Pacific/Pago_Pago', '2026-09-14T11:00:00Z', '2026-09-15T11:00:00Z'],
  ['Asia/Kathmandu', '2026-09-13T18:15:00Z', '2026-09-14T18:15:00Z'],
  ['Africa/Johannesburg', '2026-09-13T22:00:00Z', '2026-09-14T22:00:00Z'],
];

function endOfDay(opened: () => Store) {
  it.each(ENDS)(
    'in %s an evening is open from %s until just before %s',
    async (zone, first, end) => {
      const { scope } = await aMarkableEvening(opened(), zone, day('2026-09-14'));
      const record = (ms: number, pages: number) =>
        codeOf(recordPages(opened(), scope, { pages, now: new Date(ms) }));
      const before = await dumpAll(opened());
      expect(await record(Date.parse(first) - 1, 1)).toBe('expired');
      expect(await record(Date.parse(end), 1)).toBe('expired');
      expect(await dumpAll(opened())).toEqual(before);
      expect(await record(Date.parse(first), 1)).toBe('accepted');
      expect(await record(Date.parse(end) - 1, 2)).toBe('accepted');
    },
  );

  it.each(Object.keys(HELPER_VERBS).filter((name) => ![...READS, ...ANY_DAY].includes(name)))(
    '%s is expired on another day, and stores nothing',
    async (name) => {
      // The verbs of the table act on Monday evening, which is over before Tuesday's evening begins.
      const { scope } = await aMarkableEvening(opened(), undefined, TUESDAY);
      const before = await dumpAll(opened());
      const verb = HELPER_VERBS[name];
      expect(verb && (await codeOf(verb(opened(), scope)))).toBe('expired');
      expect(await dumpAll(opened())).toEqual(before);
    },
  );

  it('an evening can still be looked at the day after', async () => {
    const { read } = await aMarkableEvening(opened());
    expect((await read()).day).toBe(MONDAY);
  });
}
