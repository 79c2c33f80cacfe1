import type { FactId } from '../facts/fact-id.ts';
import { shapeOf } from '../facts/fact-shape.ts';
import type { Rung, RunRung } from '../ladder/rung.ts';
import type { FactMemory } from '../memory/fact-memory.ts';

/** What a child remembers of a rung: the facts of it that the child itself was asked, never those a relative lent to. */
export function askedOnRung(
  rung: Rung,
  memory: ReadonlyMap<FactId, FactMemory>,
): readonly FactMemory[] {
  return factsAskedOn(rung, memory).flatMap((fact) => memory.get(fact) ?? []);
}

/** The facts of a rung that the child itself was asked. */
export function factsAskedOn(
  rung: Rung,
  memory: ReadonlyMap<FactId, FactMemory>,
): readonly FactId[] {
  const facts =
    rung.kind === 'facts' ? rung.facts : [...memory.keys()].filter((fact) => isStepOf(rung, fact));
  return facts.filter((fact) => (memory.get(fact)?.asked ?? 0) > 0);
}

/** Whether a fact is a step of the rung's counting: its stride and direction, on its numbers. */
function isStepOf(rung: RunRung, fact: FactId): boolean {
  if (!fact.startsWith('next:')) return false;
  const shape = shapeOf(fact);
  if (shape.kind !== 'next') return false;
  const stride = rung.direction === 'on' ? rung.step : -rung.step;
  return (
    shape.step === stride &&
    (shape.n % rung.step === 0) === (rung.starts === 'multiples') &&
    Math.max(shape.n, shape.n + stride) <= rung.limit
  );
}
