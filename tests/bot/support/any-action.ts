import fc from 'fast-check';
import { ACTIONS, type Action } from '../../../bot/callback/actions.ts';
import { type Field, id, int } from '../../../bot/callback/fields.ts';

const anyUuid = fc.uuid();
const anyCount = fc.integer({ min: 0, max: 9999 });
/** Join codes, rung ids and dates; 22 characters is the longest a button carries beside a uuid. */
const anyWord = fc.stringMatching(/^[A-Za-z0-9_.-]{1,22}$/);

/** Any action a button can ask for. */
export const anyAction: fc.Arbitrary<Action> = fc.oneof(
  ...Object.entries(ACTIONS).map(([kind, { fields }]) => {
    const values: Record<string, fc.Arbitrary<string | number>> = {};
    for (const [name, field] of Object.entries(fields)) values[name] = anyValue(field);
    // The table that the type is derived from says which values each kind takes.
    return fc.record(values).map((rest) => ({ kind, ...rest }) as Action);
  }),
);

function anyValue(field: Field<string> | Field<number>): fc.Arbitrary<string | number> {
  if (field === id) return anyUuid;
  return field === int ? anyCount : anyWord;
}
