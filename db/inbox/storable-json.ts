const REPLACEMENT = '\ufffd';

/**
 * A value as the database can keep it: `jsonb` refuses nought bytes and half characters (PostgreSQL manual, section 8.14), which
 * people can send all the same. Each becomes the replacement character, so that one strange update never holds up the rest.
 *
 * @example
 * storableJson({ text: 'a\u0000b' }); // { text: 'a\ufffdb' }
 */
export function storableJson(value: unknown): unknown {
  if (typeof value === 'string') {
    return value.replaceAll('\u0000', REPLACEMENT).replace(/\p{Surrogate}/gu, REPLACEMENT);
  }
  if (Array.isArray(value)) return value.map(storableJson);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [storableJson(key), storableJson(inner)]),
  );
}
