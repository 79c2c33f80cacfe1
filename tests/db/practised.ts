import { closePart, type HelperScope, openMarking, type Store } from '../../db/index.ts';
import { aClass, aFamily } from '../support/people.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { evening, MONDAY, TUESDAY, WEDNESDAY } from '../support/term.ts';

/** Three evenings of one child, the second of them corrected. */
export async function practised(store: Store) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom);
  for (const [index, on] of [MONDAY, TUESDAY, WEDNESDAY].entries()) {
    const { scope } = await anEvening(store, classroom, family, { on });
    const now = evening(on, 10);
    await markPart(store, scope, { part: 0, missed: [index, 4], now });
    await markPart(store, scope, { part: 2, missed: [index], now });
    // A counting run leaves no marks but a result, and that can be corrected as well.
    await sayRun(store, scope, { said: 4, now });
    if (on === TUESDAY) await sayRun(store, scope, { said: 9, now });
    if (on === TUESDAY) await markPart(store, scope, { part: 0, missed: [2], now }, [index, 4]);
  }
  return family.child.id;
}

/** Says how far the run of an evening’s second part got, for the first time or as a correction. */
export async function sayRun(
  store: Store,
  scope: HelperScope,
  { said, now }: { said: number; now: Date },
) {
  await openMarking(store, scope, { part: 1, now });
  await closePart(store, scope, { part: 1, verdict: { kind: 'said', said }, now });
}
