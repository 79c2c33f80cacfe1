import fc from 'fast-check';
import { ACTIONS, type Action } from '../../../bot/callback/actions.ts';
import { type Field, id, int, word } from '../../../bot/callback/fields.ts';

const anyUuid = fc.uuid();
const anyCount = fc.integer({ min: 0, max: 9999 });
/** Join codes, rung ids and dates; beside a uuid a button carries one word of 22 characters, two of 11, or three of 9. */
const anyWord = fc.stringMatching(/^[A-Za-z0-9_.-]{1,22}$/);
const anyShortWord = fc.stringMatching(/^[A-Za-z0-9_.-]{1,11}$/);
const anyShorterWord = fc.stringMatching(/^[A-Za-z0-9_.-]{1,9}$/);

/** Any action a button can ask for. */
export const anyAction: fc.Arbitrary<Action> = fc.oneof(
  ...Object.entries(ACTIONS).map(([kind, { fields }]) => {
    const values: Record<string, fc.Arbitrary<string | number>> = {};
    const words = Object.values(fields).filter((field) => field === word).length;
    for (const [name, field] of Object.entries(fields)) {
      const text = words > 2 ? anyShorterWord : words > 1 ? anyShortWord : anyWord;
      values[name] = anyValue(field, text);
    }
    // The table that the type is derived from says which values each kind takes.
    return fc.record(values).map((rest) => ({ kind, ...rest }) as Action);
  }),
);

function anyValue(
  field: Field<string> | Field<number>,
  anyText: fc.Arbitrary<string>,
): fc.Arbitrary<string | number> {
  if (field === id) return anyUuid;
  return field === int ? anyCount : anyText;
}
