import { z } from 'zod';
import {
  type Drill,
  type FactId,
  parseFactId,
  type RungId,
  rungById,
  STRANDS,
  VARIANTS,
} from '../../drills/index.ts';

const fact = z.string().transform((text, context): FactId => {
  const parsed = parseFactId(text);
  if (parsed) return parsed;
  context.addIssue({ code: 'custom', message: `unknown fact ${text}` });
  return z.NEVER;
});

/** The id of a rung that this release has. */
export const rungJson = z.string().transform((id, context): RungId => {
  const found = rungById(id);
  if (found) return found.id;
  context.addIssue({ code: 'custom', message: `unknown rung ${id}` });
  return z.NEVER;
});

const factPart = z.object({
  kind: z.literal('facts'),
  strand: z.enum(STRANDS).exclude(['counting']),
  rung: rungJson,
  // Exact, so that a part that is not mixed reads back without the key.
  also: z.array(rungJson).exactOptional(),
  seconds: z.int(),
  cards: z.array(fact),
});

const runPart = z.object({
  kind: z.literal('run'),
  strand: z.literal('counting'),
  rung: rungJson,
  seconds: z.int(),
  start: z.int(),
  step: z.int(),
  length: z.int(),
});

/** How a child's evenings differ from the class's plan, as stored. */
export const adjustmentJson = z.object({
  steps: z.union([z.literal(-1), z.literal(0), z.literal(1)]),
  fewer: z.boolean(),
  untimed: z.boolean(),
});

const drillSchema = z.object({
  // Whichever composer chose the parts, they say themselves what to show: a newer release still shows an older evening.
  version: z.int().min(1),
  // Exact, so that a drill reads back as it was composed: without the key where it is full.
  variant: z.enum(VARIANTS).exactOptional(),
  adjusted: adjustmentJson.exactOptional(),
  parts: z.array(z.discriminatedUnion('kind', [factPart, runPart])),
});

/** Reads a stored drill. Throws when it is not one that this release can show. */
export function storedDrill(json: unknown): Drill {
  return drillSchema.parse(json);
}

/** A fact id as stored with a mark. */
export function storedFact(text: string): FactId {
  return fact.parse(text);
}

/** A rung id as stored with a score. */
export function storedRung(text: string): RungId {
  return rungJson.parse(text);
}
