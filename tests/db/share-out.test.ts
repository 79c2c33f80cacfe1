import fc from 'fast-check';
import { expect, it } from 'vitest';
import { MOST_WAITING, shareOut } from '../../db/inbox/share-out.ts';

it('who is full is left out and told, others are kept', () => {
  const full = { waiting: new Map([[7, 40]]), told: new Set<number>() };
  expect(shareOut([{ actorId: 7 }, { actorId: 8 }], full)).toEqual({
    kept: [{ actorId: 8 }],
    told: [{ actorId: 7 }],
  });
});

it('nobody ever has more waiting than is allowed, is told twice, or told before', () => {
  const actors = fc.array(fc.constantFrom(null, 1, 2, 3), { maxLength: 300 });
  const waiting = fc.array(fc.nat({ max: MOST_WAITING }), { minLength: 3, maxLength: 3 });
  fc.assert(
    fc.property(actors, waiting, fc.subarray([1, 2, 3]), (senders, counts, toldBefore) => {
      const before = new Map(counts.map((count, at) => [at + 1, count]));
      const updates = senders.map((actorId) => ({ actorId }));
      const { kept, told } = shareOut(updates, { waiting: before, told: new Set(toldBefore) });
      for (const actor of [1, 2, 3]) {
        const own = kept.filter(({ actorId }) => actorId === actor).length;
        const sent = senders.filter((each) => each === actor).length;
        const room = MOST_WAITING - (before.get(actor) ?? 0);
        const tellings = told.filter(({ actorId }) => actorId === actor).length;
        expect(own).toBe(Math.min(sent, room));
        expect(tellings).toBe(sent > room && !toldBefore.includes(actor) ? 1 : 0);
      }
      const ofNobody = senders.filter((each) => each === null).length;
      expect(kept.filter(({ actorId }) => actorId === null)).toHaveLength(ofNobody);
    }),
  );
});
