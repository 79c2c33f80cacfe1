import { eq, sql } from 'drizzle-orm';
import type { Language } from '../../drills/index.ts';
import { lookSoon } from '../classes/look-again.ts';
import { hashCode } from '../codes.ts';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { inTransaction } from '../connection/transaction.ts';
import { AppError } from '../errors.ts';
import { limitGuesses } from '../guesses/limit-guesses.ts';
import { startAfresh } from '../pace/start-afresh.ts';
import { consent, helper, helperChild, slip } from '../schema/index.ts';
import { checkSlip, type OpenSlip } from './read-slip.ts';

/** The agreement as it was given. */
export interface Agreement {
  readonly textVersion: string;
  readonly language: Language;
  /** The notice's message in the helper's chat. */
  readonly messageId: number;
}

interface SlipTaken {
  readonly code: string;
  readonly chatId: number;
  readonly agreement: Agreement;
  readonly now: Date;
}

/**
 * Joins the account to the slip's child, once it has agreed. Uses up one use, records the agreement, and makes the helper
 * known if it is new. Who joins again after leaving starts clean: who they are to the child is asked anew. Refuses like `readSlip`; nothing is stored then.
 */
export async function acceptSlip(store: Store, input: SlipTaken): Promise<OpenSlip> {
  const open = await limitGuesses(store, input, () => join(store, input));
  // A family that joins after the evening's time still gets tonight's.
  await lookSoon(store, open.childId);
  return open;
}

async function join(store: Store, input: SlipTaken): Promise<OpenSlip> {
  return inTransaction(store, async (inner) => {
    // Locked before it is read: two people at the last use, or one person tapping twice, wait for each other.
    await inner.db
      .select({ id: slip.id })
      .from(slip)
      .where(eq(slip.codeHash, hashCode(input.code)))
      .for('update');
    const open = await checkSlip(inner, input);
    await inner.db
      .update(slip)
      .set({ usesLeft: sql`${slip.usesLeft} - 1`, usedAt: input.now })
      .where(eq(slip.id, open.slipId));
    const helperId = await rememberHelper(inner, input);
    await startAfresh(inner, { childId: open.childId, now: input.now });
    await inner.db
      .insert(helperChild)
      .values({ helperId, childId: open.childId, joinedAt: input.now })
      .onConflictDoUpdate({
        target: [helperChild.helperId, helperChild.childId],
        set: { joinedAt: input.now, leftAt: null, relation: null },
      });
    const { messageId, ...text } = input.agreement;
    await inner.db.insert(consent).values({
      id: newId(input.now),
      helperId,
      childId: open.childId,
      ...text,
      evidence: { messageId },
      agreedAt: input.now,
    });
    return open;
  });
}

/** Whoever agrees in a language has read the notice in it, so the bot goes on in it. */
async function rememberHelper(
  store: Store,
  { chatId, agreement: { language }, now }: SlipTaken,
): Promise<string> {
  const [row] = await store.db
    .insert(helper)
    .values({ id: newId(now), chatId, language, createdAt: now })
    .onConflictDoUpdate({ target: helper.chatId, set: { language } })
    .returning({ id: helper.id });
  if (!row) throw new AppError('not_found', 'helper');
  return row.id;
}
