import { z } from 'zod';
import { type RungId, rungById, type WeekPlan } from '../../drills/index.ts';

const rungId = z.string().transform((id, context): RungId => {
  const rung = rungById(id);
  if (rung) return rung.id;
  context.addIssue({ code: 'custom', message: `unknown rung ${id}` });
  return z.NEVER;
});

const planSchema = z.object({
  parts: z.array(z.object({ rung: rungId, cards: z.int(), seconds: z.int() })),
});

/** Reads a stored plan. Throws when it names a rung that this release does not have. */
export function storedPlan(json: unknown): WeekPlan {
  return planSchema.parse(json);
}
