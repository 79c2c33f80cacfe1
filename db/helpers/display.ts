import { and, eq, exists, isNull } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { helper, helperChild } from '../schema/index.ts';
import { storedWay, type Way } from './way.ts';

/** What a helper switches on or off about how things are shown and sent to them. */
export interface DisplaySwitches {
  /** Pictures with fewer cards and larger faces. */
  readonly bigger: boolean;
  /** No clip and no seconds, whatever the class or the child's own plan says. */
  readonly noTiming: boolean;
  /** What we send by ourselves comes without a sound. */
  readonly quiet: boolean;
  /** The answers to clock cards come with a drawing that explains the hands. */
  readonly clockAid: boolean;
  /** A picture of the child's own progress comes with the last evening of a month. */
  readonly monthly: boolean;
}

/** How things are shown and sent to one helper, whichever child they are about. */
export interface Display extends DisplaySwitches {
  readonly way: Way;
}

/** The switches by name, in the order in which they are shown. */
export const DISPLAY_SWITCHES = ['bigger', 'noTiming', 'quiet', 'clockAid', 'monthly'] as const;

/** One of {@link DISPLAY_SWITCHES}. */
export type DisplaySwitch = (typeof DISPLAY_SWITCHES)[number];

const COLUMNS = {
  way: helper.way,
  bigger: helper.bigger,
  noTiming: helper.noTiming,
  quiet: helper.quiet,
  clockAid: helper.clockAid,
  monthly: helper.monthly,
};

/** How things are shown to a helper. A helper there is none of is `not_found`; one who left keeps what they chose. */
export async function getDisplay(store: Store, helperId: string): Promise<Display> {
  const [row] = await store.db.select(COLUMNS).from(helper).where(eq(helper.id, helperId));
  if (!row) throw new AppError('not_found', 'helper');
  return { ...row, way: storedWay(row.way) };
}

/**
 * Turns switches of a helper on or off, from the next screen or message on; those not named stay. Other helpers of the same
 * child keep theirs. Returns how things are shown now. A helper who sits beside no child, or not any more, is `not_found`.
 *
 * @example
 * await setDisplay(store, { helperId, switches: { quiet: true } }); // { way: 'clip', quiet: true, bigger: false, ... }
 */
export async function setDisplay(
  store: Store,
  input: { helperId: string; switches: Partial<DisplaySwitches> },
): Promise<Display> {
  if (Object.keys(input.switches).length === 0) throw new AppError('invalid', 'switch');
  const children = store.db
    .select({ id: helperChild.childId })
    .from(helperChild)
    .where(and(eq(helperChild.helperId, helper.id), isNull(helperChild.leftAt)));
  const [row] = await store.db
    .update(helper)
    .set(input.switches)
    .where(and(eq(helper.id, input.helperId), exists(children)))
    .returning(COLUMNS);
  if (!row) throw new AppError('not_found', 'helper');
  return { ...row, way: storedWay(row.way) };
}

/** Whether an account wants what comes by itself without a sound; false for one that is no helper's. */
export async function isQuiet(store: Store, chatId: number): Promise<boolean> {
  const [row] = await store.db
    .select({ quiet: helper.quiet })
    .from(helper)
    .where(eq(helper.chatId, chatId));
  return row?.quiet ?? false;
}
