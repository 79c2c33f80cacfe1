import { and, eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { media } from '../schema/index.ts';

/** Names a content by its hash, and the bot that uploaded it: file ids belong to one bot. */
export interface MediaKey {
  readonly hash: string;
  readonly botId: number;
}

/** An upload as the chat service knows it. `uniqueId` tells whether a message already shows it. */
export interface UploadedFile {
  readonly fileId: string;
  readonly uniqueId: string;
}

/** The file uploaded before with this content, or null. */
export async function findFile(store: Store, key: MediaKey): Promise<UploadedFile | null> {
  const [row] = await store.db
    .select({ fileId: media.fileId, uniqueId: media.uniqueId })
    .from(media)
    .where(and(eq(media.hash, key.hash), eq(media.botId, key.botId)));
  return row ?? null;
}

/** Remembers an upload, so that the next one is free. */
export async function saveFile(
  store: Store,
  key: MediaKey,
  file: UploadedFile & { bytes: number; now: Date },
): Promise<void> {
  const { now, ...values } = file;
  await store.db
    .insert(media)
    .values({ ...key, ...values, createdAt: now })
    .onConflictDoUpdate({ target: [media.hash, media.botId], set: values });
}

/** Forgets a file that the chat service no longer accepts. */
export async function forgetFile(store: Store, key: MediaKey): Promise<void> {
  await store.db.delete(media).where(and(eq(media.hash, key.hash), eq(media.botId, key.botId)));
}
