import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { media } from '../schema/index.ts';

/** Names a content by its hash, and the bot that uploaded it: file ids belong to one bot. */
export interface MediaKey {
  readonly hash: string;
  readonly botId: number;
}

/** The chat service's id of a file uploaded before, or null. */
export async function findFileId(store: Store, key: MediaKey): Promise<string | null> {
  const [row] = await store.db
    .select({ fileId: media.fileId })
    .from(media)
    .where(and(eq(media.hash, key.hash), eq(media.botId, key.botId)));
  return row?.fileId ?? null;
}

/** Remembers an upload, so that the next one is free. */
export async function saveFileId(
  store: Store,
  key: MediaKey,
  file: { fileId: string; bytes: number; now: Date },
): Promise<void> {
  const { now, ...values } = file;
  await store.db
    .insert(media)
    .values({ ...key, ...values, createdAt: now })
    .onConflictDoUpdate({ target: [media.hash, media.botId], set: values });
}

/** Forgets an id that the chat service no longer accepts. */
export async function forgetFileId(store: Store, key: MediaKey): Promise<void> {
  await store.db.delete(media).where(and(eq(media.hash, key.hash), eq(media.botId, key.botId)));
}
