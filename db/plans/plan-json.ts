import { z } from 'zod';
import type { WeekPlan } from '../../drills/index.ts';
import { rungJson } from '../evenings/drill-json.ts';

const planSchema = z.object({
  parts: z.array(z.object({ rung: rungJson, cards: z.int(), seconds: z.int() })),
});

/** Reads a stored plan. Throws when it names a rung that this release does not have. */
export function storedPlan(json: unknown): WeekPlan {
  return planSchema.parse(json);
}
