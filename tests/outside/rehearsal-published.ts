import { existsSync, readFileSync } from 'node:fs';
import { z } from 'zod';

// Source: api.json of PaulSonOfLars/telegram-bot-api-spec, commit 160fd99 (MIT), which is the text of
// https://core.telegram.org/bots/api for Bot API 10.1.
export const SPEC_FILE = '../shared/facts/botapi-spec.json';
/** Whether the description is there to check against. */
export const IS_HERE = existsSync(SPEC_FILE);

const field = z.object({
  name: z.string(),
  types: z.array(z.string()),
  required: z.boolean(),
  description: z.string(),
});
const entry = z.object({
  fields: z.array(field).optional(),
  subtypes: z.array(z.string()).optional(),
});
const specSchema = z.object({
  methods: z.record(z.string(), entry),
  types: z.record(z.string(), entry),
});

export const spec = IS_HERE
  ? specSchema.parse(JSON.parse(readFileSync(SPEC_FILE, 'utf8')))
  : { methods: {}, types: {} };

/** What is wrong with a value against a type of the published description; empty when nothing is. */
export function complaints(value: unknown, type: string, path: string): string[] {
  if (type.startsWith('Array of ')) {
    if (!Array.isArray(value)) return [`${path} is no array`];
    return value.flatMap((item, i) =>
      complaints(item, type.slice('Array of '.length), `${path}[${i}]`),
    );
  }
  if (type === 'Integer') return Number.isInteger(value) ? [] : [`${path} is no integer`];
  if (type === 'String') return typeof value === 'string' ? [] : [`${path} is no string`];
  if (type === 'Boolean') return typeof value === 'boolean' ? [] : [`${path} is no boolean`];
  const described = spec.types[type];
  if (described === undefined) return [`${path}: no type ${type}`];
  if (described.subtypes !== undefined) {
    const tries = described.subtypes.map((subtype) => complaints(value, subtype, path));
    return tries.some((list) => list.length === 0) ? [] : (tries[0] ?? []);
  }
  if (typeof value !== 'object' || value === null) return [`${path} is no object`];
  return objectComplaints(value, described.fields ?? [], path);
}

function objectComplaints(
  value: object,
  fields: readonly z.output<typeof field>[],
  path: string,
): string[] {
  const known = new Map(fields.map((it) => [it.name, it]));
  const unknown = Object.keys(value)
    .filter((key) => !known.has(key))
    .map((key) => `${path}.${key} is unknown`);
  const missing = fields
    .filter(({ name, required }) => required && !(name in value))
    .map(({ name }) => `${path}.${name} is missing`);
  const wrong = Object.entries(value).flatMap(([key, inner]) => {
    const types = known.get(key)?.types ?? [];
    const tries = types.map((type) => complaints(inner, type, `${path}.${key}`));
    return tries.some((list) => list.length === 0) ? [] : (tries[0] ?? []);
  });
  return [...unknown, ...missing, ...wrong];
}
