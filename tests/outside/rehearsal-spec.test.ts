import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { inputMedia, schemas } from '../../rehearsal/bot-api/schemas.ts';
import { ENTITY_TYPES } from '../../rehearsal/entities.ts';
import { IS_HERE, SPEC_FILE, spec } from './rehearsal-published.ts';

if (!IS_HERE) {
  describe('the published description of the Bot API', () => {
    it.skip(`is not at ${SPEC_FILE}; put the file there to check against it`, () => {});
  });
}

/** A value of a published type, as JSON and as the text a form carries; and one that is of no such type. */
function samplesOf(name: string, type: string): { good: unknown[]; bad: unknown } {
  if (name === 'commands') return { good: [[{ command: 'help', description: 'Help' }]], bad: 'no' };
  if (type === 'Integer') return { good: [7, '7'], bad: 'seven' };
  if (type === 'Boolean') return { good: [true, 'true', 'False'], bad: 'maybe' };
  if (type === 'String' || type === 'InputFile') return { good: ['abc'], bad: { a: 1 } };
  if (type === 'Array of String') return { good: [['a'], '["a"]'], bad: [7] };
  if (type.startsWith('Array of ')) return { good: [[], '[]'], bad: { a: 1 } };
  const required = { message_id: 7, type: 'photo', media: 'abc' };
  return { good: [required, JSON.stringify(required)], bad: 'no' };
}

function wronglyRead(name: string, types: readonly string[], schema: z.ZodType): unknown[] {
  return types.flatMap((type) => {
    // A chat's name begins with an at sign; the samples of its number say enough.
    if (types.includes('Integer') && type === 'String') return [];
    const { good, bad } = samplesOf(name, type);
    const refused = good.filter((value) => !schema.safeParse(value).success);
    return schema.safeParse(bad).success ? [...refused, bad] : refused;
  });
}

describe.runIf(IS_HERE)('parameters agree with the published description', () => {
  it.each(Object.entries(schemas))('%s in name, need and type', (name, schema) => {
    const published = spec.methods[name]?.fields ?? [];
    const shape: Record<string, z.ZodType> = schema.shape;
    const needs = Object.entries(shape).map(([key, value]) => [
      key,
      !value.safeParse(undefined).success,
    ]);
    expect(spec.methods[name]).toBeDefined();
    expect(Object.fromEntries(needs)).toEqual(
      Object.fromEntries(published.map(({ name: key, required }) => [key, required])),
    );
    const wrong = published.map(({ name: key, types }) => [
      key,
      wronglyRead(key, types, shape[key] ?? z.never()),
    ]);
    expect(wrong).toEqual(wrong.map(([key]) => [key, []]));
  });

  it('and the check itself finds a parameter of another type', () => {
    expect(wronglyRead('limit', ['Integer'], z.string())).toEqual([7, 'seven']);
  });
});

describe.runIf(IS_HERE)('the parts of a new file in an edited message', () => {
  it('are those published for photos, videos and documents together', () => {
    const types = ['InputMediaPhoto', 'InputMediaVideo', 'InputMediaDocument'];
    const published = types.flatMap((type) => spec.types[type]?.fields ?? []);
    expect(new Set(Object.keys(inputMedia.shape))).toEqual(
      new Set(published.map(({ name }) => name)),
    );
  });
});

describe.runIf(IS_HERE)('the kinds of formatting', () => {
  it('are those published', () => {
    const kinds = spec.types.MessageEntity?.fields?.find(({ name }) => name === 'type');
    const published = [...(kinds?.description ?? '').matchAll(/"(\w+)"/g)].map(([, kind]) => kind);
    expect(published.length).toBeGreaterThan(10);
    expect([...ENTITY_TYPES]).toEqual(published);
  });
});
