import { ACTIONS, type Action, type ActionKind } from './actions.ts';
import type { Field } from './fields.ts';

/** The chat service's limit for what a button carries, in bytes. */
export const MAX_BYTES = 64;
const VERSION = '1';

interface Shape {
  readonly tag: string;
  readonly fields: Readonly<Record<string, Field<string> | Field<number>>>;
}

const shapes: ReadonlyMap<ActionKind, Shape> = new Map(
  Object.entries(ACTIONS).map(([kind, shape]) => [kind as ActionKind, shape]),
);
const kindOfTag: ReadonlyMap<string, ActionKind> = new Map(
  [...shapes].map(([kind, shape]) => [shape.tag, kind]),
);

/**
 * Writes an action into a button: version, tag and fields with colons between. Throws RangeError when it would not fit, or
 * when a value would not come back as it is.
 *
 * @example
 * pack({ kind: 'pages', evening: '019a0000-0000-7000-8000-000000000001', pages: 2 });
 * // '1:pg:AZoAAAAAcACAAAAAAAAAAQ:2'
 */
export function pack(action: Action): string {
  const shape = shapes.get(action.kind);
  if (!shape) throw new TypeError('unknown action');
  const values = new Map<string, unknown>(Object.entries(action));
  const fields = Object.entries(shape.fields).map(([name, field]) =>
    write(field, values.get(name)),
  );
  const text = [VERSION, shape.tag, ...fields].join(':');
  if (Buffer.byteLength(text) > MAX_BYTES) {
    throw new RangeError(`a button carries at most ${MAX_BYTES} bytes, ${action.kind} needs more`);
  }
  return text;
}

/** Reads a button; null when it is not ours, from another version, or tampered with. */
export function unpack(text: string): Action | null {
  const [version, tag, ...written] = text.split(':');
  const kind = kindOfTag.get(tag ?? '');
  const shape = kind && shapes.get(kind);
  if (version !== VERSION || !shape) return null;
  const names = Object.entries(shape.fields);
  if (names.length !== written.length) return null;
  const values = names.map(
    ([name, field], index) => [name, field.read(written[index] ?? '')] as const,
  );
  if (values.some(([, value]) => value === null)) return null;
  // Each field was read by the codec that the type is derived from.
  return { kind, ...Object.fromEntries(values) } as Action;
}

function write(field: Field<string> | Field<number>, value: unknown): string {
  const text =
    typeof value === 'number'
      ? (field as Field<number>).write(value)
      : (field as Field<string>).write(String(value));
  if (field.read(text) !== value) throw new RangeError('a button value is out of range');
  return text;
}
