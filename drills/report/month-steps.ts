import { addDays } from '../calendar/school-day.ts';
import type { FactId } from '../facts/fact-id.ts';
import type { RungId } from '../ladder/rung.ts';
import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { FactMemory } from '../memory/fact-memory.ts';
import type { MemoryModel } from '../memory/model.ts';
import type { ChildPast } from './child-past.ts';
import type { Month } from './month-due.ts';
import { reportChild } from './report-child.ts';

/** A child's month: how many evenings were practised in it, and which steps became secure. */
export interface MonthReport {
  readonly practised: number;
  readonly secure: readonly RungId[];
}

/**
 * What a month brought a child, against its own past. A step became secure when it is secure today, was practised in the month,
 * and was not secure the day before the month began, as judged by what was known then: `before` is the memory of that day. An
 * empty list says nothing against a child: what was secure before is not named again.
 *
 * @example
 * reportMonth(past, { month, before: new Map() }); // { practised: 0, secure: [] } without evenings
 */
export function reportMonth(
  past: ChildPast,
  { month, before }: { month: Month; before: ReadonlyMap<FactId, FactMemory> },
  model: MemoryModel = MEMORY_MODEL,
): MonthReport {
  const { first, last } = month;
  const inMonth = past.evenings.filter(
    ({ day, status }) => status === 'practised' && first <= day && day <= last,
  );
  const earlier = past.evenings.filter(({ day }) => day < first);
  const then = { ...past, evenings: earlier, memory: before, today: addDays(first, -1) };
  const known = new Set(secureOf(then, model));
  const practised = new Set(inMonth.flatMap(({ parts }) => parts.map(({ rung }) => rung)));
  return {
    practised: inMonth.length,
    secure: secureOf(past, model).filter((rung) => practised.has(rung) && !known.has(rung)),
  };
}

function secureOf(past: ChildPast, model: MemoryModel): RungId[] {
  return reportChild(past, model).strands.flatMap(({ steps }) =>
    steps.flatMap(({ rung, level }) => (level === 'secure' ? [rung] : [])),
  );
}
