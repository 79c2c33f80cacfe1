import { open, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { asc } from 'drizzle-orm';
import { z } from 'zod';
import type { Store } from '../connection/db.ts';
import { erasure } from '../schema/index.ts';
import { BackupError } from './backup-error.ts';
import { checkBackup, rowsIn } from './read-backup.ts';

/** That something was erased, and when: an id, never a name. */
export const erased = z.strictObject({
  kind: z.enum(['child', 'helper']),
  id: z.uuid(),
  at: z.iso.datetime(),
});

/** See {@link erased}. */
export type Erased = z.infer<typeof erased>;

const head = z.object({ format: z.literal('suppersums-erasures'), version: z.literal(1) });

/** Everything that was erased and is still on record, the oldest first. */
export async function listErasures(store: Pick<Store, 'db'>): Promise<Erased[]> {
  const rows = await store.db.select().from(erasure).orderBy(asc(erasure.erasedAt));
  return rows.map(({ subjectKind, subjectId, erasedAt }) =>
    erased.parse({ kind: subjectKind, id: subjectId, at: erasedAt.toISOString() }),
  );
}

/**
 * Writes them to a file of JSON lines, in place of an older one: kept beside the backups, it tells a restore what to erase
 * again. Returns how many there are.
 */
export async function writeErasures(file: string, erasures: readonly Erased[]): Promise<number> {
  const lines = [{ format: 'suppersums-erasures', version: 1 }, ...erasures];
  const part = `${file}.part`;
  try {
    const text = lines.map((each) => `${JSON.stringify(each)}\n`).join('');
    await writeFile(part, text, { mode: 0o600, flush: true });
    await rename(part, file);
  } finally {
    await rm(part, { force: true });
  }
  return erasures.length;
}

/**
 * Reads a file of {@link writeErasures}, or what a newer backup knows was erased.
 *
 * @throws {BackupError} when it is neither.
 */
export async function readErasures(file: string): Promise<Erased[]> {
  if (await isPacked(file)) return erasuresIn(file);
  const [first = '', ...lines] = (await readFile(file, 'utf8')).trimEnd().split('\n');
  const read = z.array(erased).safeParse(lines.map(parsed));
  if (!head.safeParse(parsed(first)).success || !read.success) {
    throw new BackupError(
      `${file} is no list of what was erased. Give one that “suppersums erasures” wrote, or a newer backup.`,
    );
  }
  return read.data;
}

const row = z.object({ subject_kind: z.string(), subject_id: z.string(), erased_at: z.string() });

async function erasuresIn(backup: string): Promise<Erased[]> {
  await checkBackup(backup);
  const found: Erased[] = [];
  for await (const { table, json } of rowsIn(backup)) {
    if (table !== 'erasure') continue;
    const { subject_kind: kind, subject_id: id, erased_at: at } = row.parse(JSON.parse(json));
    found.push(erased.parse({ kind, id, at: new Date(at).toISOString() }));
  }
  return found;
}

/** Whether a file begins as gzip does (RFC 1952, section 2.3.1). */
async function isPacked(file: string): Promise<boolean> {
  try {
    const handle = await open(file);
    const { buffer } = await handle.read(Buffer.alloc(2), 0, 2, 0);
    await handle.close();
    return buffer[0] === 0x1f && buffer[1] === 0x8b;
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : 'unreadable';
    throw new BackupError(`${file} cannot be read (${code}). Give the list of what was erased.`);
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
