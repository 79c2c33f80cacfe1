import { z } from 'zod';
import { type FactId, type FactMemory, type Mark, parseFactId } from '../../drills/index.ts';
import { storedDay } from '../classes/school-class.ts';
import type { factMemory } from '../schema/index.ts';

const wayJson = z.enum(['card', 'unmissed']);
const stateJson = z.array(z.number());

/** How a card was marked, as stored with its mark. */
export function storedWay(text: string): Mark['way'] {
  return wayJson.parse(text);
}

/** One row of a child's memory. Null where another model wrote it, its fact is unknown or its state is no list of numbers. */
export function storedMemory(
  row: typeof factMemory.$inferSelect,
  model: string,
): { fact: FactId; known: FactMemory } | null {
  const state = stateJson.safeParse(row.state);
  const fact = parseFactId(row.fact);
  if (row.model !== model || fact === null || !state.success) return null;
  const { asked, right, streak, lastRight } = row;
  const lastDay = row.lastDay === null ? null : storedDay(row.lastDay);
  const known = { asked, right, streak, lastDay, lastRight, state: state.data };
  return { fact, known };
}

/** A row as it is stored. */
export function memoryRow(childId: string, fact: FactId, known: FactMemory, model: string) {
  return { ...known, childId, fact, model, state: [...known.state] };
}
