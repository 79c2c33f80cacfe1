import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { expectation } from '../schema/index.ts';

/** What the bot waits for a person to type. `data` is the bot's own note, checked when it is read. */
export interface Expectation {
  readonly kind: string;
  readonly data: unknown;
}

/** Notes what a person is expected to type next; a newer wish replaces an older one. */
export async function expectText(
  store: Store,
  input: { chatId: number; expectation: Expectation; now: Date },
): Promise<void> {
  const values = { ...input.expectation, createdAt: input.now };
  await store.db
    .insert(expectation)
    .values({ chatId: input.chatId, ...values })
    .onConflictDoUpdate({ target: expectation.chatId, set: values });
}

/** What is expected of this chat, or null. */
export async function readExpectation(store: Store, chatId: number): Promise<Expectation | null> {
  const [row] = await store.db
    .select({ kind: expectation.kind, data: expectation.data })
    .from(expectation)
    .where(eq(expectation.chatId, chatId));
  return row ?? null;
}

/** Nothing is expected any more. */
export async function dropExpectation(store: Store, chatId: number): Promise<void> {
  await store.db.delete(expectation).where(eq(expectation.chatId, chatId));
}
