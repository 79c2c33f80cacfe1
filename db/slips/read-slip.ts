import { and, eq, isNull } from 'drizzle-orm';
import { hashCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { AppError } from '../errors.ts';
import { limitGuesses } from '../guesses/limit-guesses.ts';
import { child, helper, helperChild, schoolClass, slip } from '../schema/index.ts';

/** What a code opens. */
export interface OpenSlip {
  readonly slipId: string;
  readonly childId: string;
  readonly nickname: string;
  readonly classTitle: string;
}

/**
 * What a code opens for this account. Unknown or revoked codes are `not_found`, old ones `expired`, spent ones `used_up`,
 * and a helper who has joined this child already gets `conflict`. An account that tried too many codes gets `too_many`.
 */
export async function readSlip(
  store: Store,
  input: { code: string; chatId: number; now: Date },
): Promise<OpenSlip> {
  return limitGuesses(store, input, () => checkSlip(store, input));
}

/** Like {@link readSlip}, for the inside of a transaction whose caller counts the misses. */
export async function checkSlip(
  store: Store,
  input: { code: string; chatId: number; now: Date },
): Promise<OpenSlip> {
  const { usesLeft, expiresAt, ...open } = await findSlip(store, input.code);
  if (await hasJoined(store, input.chatId, open.childId)) throw new AppError('conflict', 'helper');
  if (expiresAt <= input.now) throw new AppError('expired', 'slip');
  if (usesLeft <= 0) throw new AppError('used_up', 'slip');
  return open;
}

/**
 * What a code opened for an account that has joined its child, even when the code is old or spent by now. Unknown or revoked
 * codes are `not_found`, and so is every code for an account that has not joined.
 */
export async function readJoinedSlip(
  store: Store,
  input: { code: string; chatId: number },
): Promise<OpenSlip> {
  const { usesLeft: _uses, expiresAt: _expires, ...open } = await findSlip(store, input.code);
  if (!(await hasJoined(store, input.chatId, open.childId))) {
    throw new AppError('not_found', 'slip');
  }
  return open;
}

async function findSlip(store: Store, code: string) {
  const [row] = await store.db
    .select({
      slipId: slip.id,
      childId: slip.childId,
      nickname: child.nickname,
      classTitle: schoolClass.title,
      usesLeft: slip.usesLeft,
      expiresAt: slip.expiresAt,
    })
    .from(slip)
    .innerJoin(child, eq(child.id, slip.childId))
    .innerJoin(schoolClass, eq(schoolClass.id, slip.classId))
    .where(
      and(
        eq(slip.codeHash, hashCode(code)),
        isNull(slip.revokedAt),
        isNull(child.archivedAt),
        isNull(schoolClass.archivedAt),
      ),
    );
  if (!row) throw new AppError('not_found', 'slip');
  return row;
}

async function hasJoined(store: Store, chatId: number, childId: string): Promise<boolean> {
  const rows = await store.db
    .select({ id: helper.id })
    .from(helper)
    .innerJoin(helperChild, eq(helperChild.helperId, helper.id))
    .where(
      and(eq(helper.chatId, chatId), eq(helperChild.childId, childId), isNull(helperChild.leftAt)),
    );
  return rows.length > 0;
}
