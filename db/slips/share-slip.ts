import { and, desc, eq, gt, inArray, isNotNull, isNull, or, sql } from 'drizzle-orm';
import { hashCode, newCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { type FamilyScope, readTie, type Tie } from '../helpers/relation.ts';
import { child, slip } from '../schema/index.ts';

/**
 * What a helper may pass on: a link that opens once, for two days, two of them a week for a child, as long as the child has
 * fewer than six helpers. Ours, no source.
 */
export const SHARE_LIMITS = { days: 2, aWeek: 2, helpers: 6 } as const;

const DAY_MS = 86_400_000;

/** Why no link can be made now: a brother or sister asks, the child has many helpers, or the week's links are given out. */
export type ShareRefusal = 'sibling' | 'helpers' | 'week';

/** Where sharing a child stands for one helper. */
export interface Sharing extends Tie {
  readonly refusal: ShareRefusal | null;
  /** Until when this helper's link opens, null without one. A new one takes its place. */
  readonly openUntil: Date | null;
  /** Stands for the newest link of this helper, so that a tap that comes twice makes one. */
  readonly was: string;
}

/** Reads where sharing stands. A child the helper does not sit beside now is `not_found`. */
export async function readSharing(
  store: Store,
  { now, ...scope }: FamilyScope & { now: Date },
): Promise<Sharing> {
  const tie = await readTie(store, scope);
  const [newest] = await store.db
    .select()
    .from(slip)
    .where(and(eq(slip.childId, scope.childId), eq(slip.sharedBy, scope.helperId)))
    // The one in force first: of two made at the same instant, ids do not tell which is newer.
    .orderBy(desc(sql`${slip.revokedAt} is null`), desc(slip.createdAt), desc(slip.id))
    .limit(1);
  const isOpen =
    newest && newest.revokedAt === null && newest.usesLeft > 0 && newest.expiresAt > now;
  return {
    ...tie,
    refusal: await refusalOf(store, { tie, helperId: scope.helperId, now }),
    openUntil: isOpen ? newest.expiresAt : null,
    was: newest ? newest.id.slice(-12) : 'none',
  };
}

async function refusalOf(
  store: Store,
  { tie, helperId, now }: { tie: Tie; helperId: string; now: Date },
): Promise<ShareRefusal | null> {
  if (tie.relation === 'sibling') return 'sibling';
  if (tie.helpers >= SHARE_LIMITS.helpers) return 'helpers';
  const given = await countGiven(store, { childId: tie.childId, helperId, now });
  return given >= SHARE_LIMITS.aWeek ? 'week' : null;
}

/**
 * How many of the week's links are given out: those used in the last seven days and those that other helpers hold open. The
 * helper's own open one does not count, since a new one takes its place.
 */
async function countGiven(
  store: Store,
  { childId, helperId, now }: FamilyScope & { now: Date },
): Promise<number> {
  const rows = await store.db
    .select({ sharedBy: slip.sharedBy, usedAt: slip.usedAt })
    .from(slip)
    .where(
      and(
        eq(slip.childId, childId),
        isNotNull(slip.sharedBy),
        or(
          gt(slip.usedAt, new Date(now.getTime() - 7 * DAY_MS)),
          and(isNull(slip.usedAt), isNull(slip.revokedAt), gt(slip.expiresAt, now)),
        ),
      ),
    );
  return rows.filter(({ sharedBy, usedAt }) => usedAt !== null || sharedBy !== helperId).length;
}

/** A link to pass on. The code exists here and in the chat; the database keeps a hash. */
export interface SharedSlip {
  readonly nickname: string;
  readonly code: string;
  readonly expiresAt: Date;
}

/**
 * Makes a link by which one more adult joins a child; the helper's earlier one that is still open stops working. Nothing is
 * made, and it is a `conflict` (`share`), when {@link Sharing} refuses or when `was` stands for another link: one was made
 * since. A child the helper does not sit beside now is `not_found`.
 */
export async function shareSlip(
  store: Store,
  { was, now, ...scope }: FamilyScope & { was: string; now: Date },
): Promise<SharedSlip> {
  return inTransaction(store, async (inner) => {
    // Locked, so that two helpers, or one who taps twice, do not make more links than a week has.
    const [row] = await inner.db
      .select({ classId: child.classId })
      .from(child)
      .where(eq(child.id, scope.childId))
      .for('update');
    const sharing = await readSharing(inner, { ...scope, now });
    if (!row || sharing.refusal !== null || sharing.was !== was) {
      throw new AppError('conflict', 'share');
    }
    await revokeShared(inner, { helperId: scope.helperId, childIds: [scope.childId], now });
    const code = newCode();
    const expiresAt = new Date(now.getTime() + SHARE_LIMITS.days * DAY_MS);
    await inner.db.insert(slip).values({
      id: newId(now),
      childId: scope.childId,
      classId: row.classId,
      codeHash: hashCode(code),
      usesLeft: 1,
      expiresAt,
      createdAt: now,
      sharedBy: scope.helperId,
    });
    return { nickname: sharing.nickname, code, expiresAt };
  });
}

/** Has a helper's links for some children stop working. Inside the caller's transaction. */
export async function revokeShared(
  inner: Store,
  { helperId, childIds, now }: { helperId: string; childIds: readonly string[]; now: Date },
): Promise<void> {
  await inner.db
    .update(slip)
    .set({ revokedAt: now })
    .where(
      and(
        eq(slip.sharedBy, helperId),
        inArray(slip.childId, [...childIds]),
        isNull(slip.revokedAt),
      ),
    );
}
