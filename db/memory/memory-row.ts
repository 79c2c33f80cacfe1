import { z } from 'zod';
import type { FactId, FactMemory, Mark } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import { storedFact } from '../evenings/drill-json.ts';
import type { factMemory } from '../schema/index.ts';

const wayJson = z.enum(['card', 'unmissed']);
const stateJson = z.array(z.number());

/** How a card was marked, as stored with its mark. */
export function storedWay(text: string): Mark['way'] {
  return wayJson.parse(text);
}

/** One row of a child's memory. Null where another model wrote it, or its state is no list of finite numbers. */
export function storedMemory(
  row: typeof factMemory.$inferSelect,
  model: string,
): { fact: FactId; known: FactMemory } | null {
  const state = stateJson.safeParse(row.state);
  if (row.model !== model || !state.success) return null;
  const { asked, right, streak, lastRight } = row;
  const lastDay = row.lastDay === null ? null : storedDay(row.lastDay);
  const known = { asked, right, streak, lastDay, lastRight, state: state.data };
  return { fact: storedFact(row.fact), known };
}

/** A row as it is stored. */
export function memoryRow(childId: string, fact: FactId, known: FactMemory, model: string) {
  return { ...known, childId, fact, model, state: [...known.state] };
}
