import { describe, expect, it } from 'vitest';
import { closePart, declineEvening, listPastEvenings, type Store } from '../../db/index.ts';
import { ledgerOf, settleEvening } from '../support/deliveries.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening } from '../support/practice.ts';
import { runSql } from '../support/raw-rows.ts';
import { evening, FRIDAY, MONDAY, THURSDAY, TUESDAY, WEDNESDAY } from '../support/term.ts';

/** How past evenings are told apart. Runs on the store that week.test.ts opens. */
export function historySuite(opened: () => Store): void {
  describe('that nobody marked', () => unmarkedEvenings(opened));
  describe('that the family answered', () => answeredEvenings(opened));
  describe('of a range of days', () => ranges(opened));
}

async function setting(store: Store) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom, { helpers: 2 });
  const classId = classroom.schoolClass.id;
  return {
    classId,
    plan: (on = MONDAY) => anEvening(store, classroom, family, { on }),
    statuses: async () =>
      (await listPastEvenings(store, { classId, from: MONDAY })).map((past) => past.status),
  };
}

function unmarkedEvenings(opened: () => Store) {
  it('an evening that arrived is silent', async () => {
    const { plan, statuses } = await setting(opened());
    const { view } = await plan();
    await settleEvening(opened(), view.id, 'sent', evening(MONDAY));
    expect(await statuses()).toEqual(['silent']);
  });

  it('an evening that reached one of two helpers is silent, not unsent', async () => {
    const { plan, statuses } = await setting(opened());
    const { view } = await plan();
    await settleEvening(opened(), view.id, 'failed', evening(MONDAY));
    const [first] = await ledgerOf(opened(), view.id);
    await runSql(opened(), `update ledger set status = 'sent' where id = '${String(first?.id)}'`);
    expect(await statuses()).toEqual(['silent']);
  });

  it.each(['failed', 'unknown'] as const)(
    'an evening whose messages are all %s is unsent',
    async (status) => {
      const { plan, statuses } = await setting(opened());
      const { view } = await plan();
      await settleEvening(opened(), view.id, status, evening(MONDAY));
      expect(await statuses()).toEqual(['unsent']);
    },
  );

  it('an evening still waiting to be sent is unsent', async () => {
    const { plan, statuses } = await setting(opened());
    await plan();
    expect(await statuses()).toEqual(['unsent']);
  });
}

function answeredEvenings(opened: () => Store) {
  it('one marked part makes an evening practised, whatever the ledger says', async () => {
    const { plan, statuses } = await setting(opened());
    const { view, scope } = await plan();
    await settleEvening(opened(), view.id, 'unknown', evening(MONDAY));
    const verdict = { kind: 'all_right' } as const;
    await closePart(opened(), scope, { part: 0, verdict, now: evening(MONDAY, 5) });
    expect(await statuses()).toEqual(['practised']);
  });

  it('a declined evening is an answer', async () => {
    const { plan, statuses } = await setting(opened());
    const { view, scope } = await plan();
    await settleEvening(opened(), view.id, 'sent', evening(MONDAY));
    await declineEvening(opened(), scope, evening(MONDAY, 5));
    expect(await statuses()).toEqual(['not_today']);
  });
}

function ranges(opened: () => Store) {
  it('evenings come in order of day, from the first to the last day asked for', async () => {
    const { classId, plan } = await setting(opened());
    for (const on of [FRIDAY, MONDAY, WEDNESDAY, TUESDAY, THURSDAY]) await plan(on);
    const days = async (range: { until?: typeof MONDAY; before?: typeof MONDAY }) => {
      const past = await listPastEvenings(opened(), { classId, from: TUESDAY, ...range });
      return past.map((row) => row.day);
    };
    expect(await days({})).toEqual([TUESDAY, WEDNESDAY, THURSDAY, FRIDAY]);
    expect(await days({ until: THURSDAY })).toEqual([TUESDAY, WEDNESDAY, THURSDAY]);
    expect(await days({ before: THURSDAY })).toEqual([TUESDAY, WEDNESDAY]);
  });

  it('another class’s evenings are not listed', async () => {
    await (await setting(opened())).plan();
    const { statuses } = await setting(opened());
    expect(await statuses()).toEqual([]);
  });
}
