import { describe, expect, it } from 'vitest';
import { closePart, declineEvening, type Store } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { evening, FRIDAY, MONDAY, THURSDAY, TUESDAY, WEDNESDAY } from '../support/term.ts';

/** When an evening is one to catch up with. Runs on the store that planning.test.ts opens. */
export function catchUpSuite(opened: () => Store): void {
  describe('the variant', () => variants(opened));
  describe('the cards', () => cards(opened));
}

async function setting(store: Store) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom);
  const plan = (on: SchoolDay) => anEvening(store, classroom, family, { on });
  return {
    plan,
    variantOn: async (on: SchoolDay) => (await plan(on)).view.drill.variant,
    practise: async (on: SchoolDay) => {
      const { view, scope } = await plan(on);
      const verdict = { kind: 'all_right' } as const;
      await closePart(store, scope, { part: 1, verdict, now: evening(on, 10) });
      return view;
    },
  };
}

function variants(opened: () => Store) {
  it('is full on the first evening and after one that was missed', async () => {
    const { variantOn } = await setting(opened());
    expect(await variantOn(MONDAY)).toBeUndefined();
    expect(await variantOn(TUESDAY)).toBeUndefined();
  });

  it('is to catch up after two missed in a row, until an evening is marked', async () => {
    const { practise, variantOn } = await setting(opened());
    await variantOn(MONDAY);
    await variantOn(TUESDAY);
    expect((await practise(WEDNESDAY)).drill.variant).toBe('catch_up');
    expect(await variantOn(THURSDAY)).toBeUndefined();
    expect(await variantOn(FRIDAY)).toBeUndefined();
  });

  it('two missed evenings with a marked one between them are not in a row', async () => {
    const { practise, variantOn } = await setting(opened());
    await variantOn(MONDAY);
    await practise(TUESDAY);
    await variantOn(WEDNESDAY);
    expect(await variantOn(THURSDAY)).toBeUndefined();
  });

  it('an evening put off has not been practised either', async () => {
    const { plan, variantOn } = await setting(opened());
    for (const on of [MONDAY, TUESDAY]) {
      const { scope } = await plan(on);
      await declineEvening(opened(), scope, evening(on, 5));
    }
    expect(await variantOn(WEDNESDAY)).toBe('catch_up');
  });

  it('another child’s missed evenings count for nothing', async () => {
    const classroom = await aClass(opened());
    const wren = await aFamily(opened(), classroom);
    for (const on of [MONDAY, TUESDAY]) await anEvening(opened(), classroom, wren, { on });
    const otter = await aFamily(opened(), classroom, { nickname: 'Otter' });
    const { view } = await anEvening(opened(), classroom, otter, { on: WEDNESDAY });
    expect(view.drill.variant).toBeUndefined();
  });
}

function cards(opened: () => Store) {
  it('of an evening to catch up are ones that were asked before, the missed ones among them', async () => {
    const { plan } = await setting(opened());
    const { view, scope } = await plan(MONDAY);
    await markPart(opened(), scope, { part: 2, missed: [3], now: evening(MONDAY, 10) });
    await plan(TUESDAY);
    await plan(WEDNESDAY);
    const before = view.drill.parts[2];
    const after = (await plan(THURSDAY)).view.drill.parts[2];
    if (before?.kind !== 'facts' || after?.kind !== 'facts') throw new Error('no cards');
    expect([...after.cards].sort()).toEqual([...before.cards].sort());
    expect(after.cards[0]).not.toBe(before.cards[3]);
  });
}
