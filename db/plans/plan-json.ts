import { z } from 'zod';
import type { WeekPlan } from '../../drills/index.ts';
import { rungJson } from '../evenings/drill-json.ts';

/** A week plan as it is stored. */
export const planJson = z.object({
  parts: z
    .array(
      z.object({
        rung: rungJson,
        also: z.array(rungJson).readonly().exactOptional(),
        cards: z.int(),
        seconds: z.int(),
      }),
    )
    .readonly(),
});

/** Reads a stored plan. Throws when it names a rung that this release does not have. */
export function storedPlan(json: unknown): WeekPlan {
  return planJson.parse(json);
}
