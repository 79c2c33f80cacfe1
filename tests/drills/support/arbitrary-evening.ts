import fc from 'fast-check';
import {
  addDays,
  type EveningInput,
  type FactId,
  type FactMemory,
  RUNGS,
  type Rung,
  type RungId,
} from '../../../drills/index.ts';
import { day } from './day.ts';

export const TODAY = day('2026-09-11');

/** Any plan that could be sent, beside any memory of its facts and any earlier starts of its runs. */
export const anyEvening: fc.Arbitrary<EveningInput> = fc
  .uniqueArray(fc.constantFrom(...RUNGS), { minLength: 1, maxLength: 6 })
  .chain((rungs) =>
    fc.record({
      plan: fc.tuple(...rungs.map(anyPart)).map((parts) => ({ parts })),
      memory: anyMemory(rungs),
      lastStarts: anyStarts(rungs),
      today: fc.constant(TODAY),
      seed: fc.string(),
    }),
  );

function anyPart(rung: Rung) {
  return fc.record({
    rung: fc.constant(rung.id),
    cards: fc.integer({ min: 3, max: 20 }),
    seconds: fc.integer({ min: 2, max: 15 }),
  });
}

const anyFactMemory: fc.Arbitrary<FactMemory> = fc
  .record({ streak: fc.nat(4), lastDay: fc.nat(40).map((ago) => addDays(TODAY, -ago)) })
  .map(({ streak, lastDay }) => ({
    asked: 5,
    right: streak,
    streak,
    lastDay,
    lastRight: streak > 0,
  }));

function anyMemory(rungs: readonly Rung[]): fc.Arbitrary<Map<FactId, FactMemory>> {
  const facts = [...new Set(rungs.flatMap((rung) => (rung.kind === 'facts' ? rung.facts : [])))];
  return fc
    .tuple(...facts.map((fact) => fc.tuple(fc.constant(fact), fc.option(anyFactMemory))))
    .map((entries) => {
      const memory = new Map<FactId, FactMemory>();
      for (const [fact, known] of entries) if (known !== null) memory.set(fact, known);
      return memory;
    });
}

function anyStarts(rungs: readonly Rung[]): fc.Arbitrary<Map<RungId, number>> {
  return fc
    .tuple(...rungs.map(({ id }) => fc.tuple(fc.constant(id), fc.integer({ min: 0, max: 200 }))))
    .map((entries) => new Map(entries));
}
