import { eq } from 'drizzle-orm';
import type { Store } from '../connection/db.ts';
import { newId } from '../connection/ids.ts';
import { eraseChild } from '../rights/erase-child.ts';
import { forgetHelpers } from '../rights/forget-helper.ts';
import { erasure, helper } from '../schema/index.ts';
import type { Erased } from './erasures.ts';

/**
 * Erases again what was erased after a backup was made, on record with its own time. Returns how many children came back with
 * the backup and are gone again. A helper who came back and sits beside another child stays.
 */
export async function eraseAgain(inner: Store, erasures: readonly Erased[]): Promise<number> {
  const known = await inner.db.select({ id: erasure.subjectId }).from(erasure);
  const done = new Set(known.map(({ id }) => id));
  let children = 0;
  // Children first: their helpers go with them.
  for (const { kind, id, at } of [...erasures].sort((a, b) => (a.kind < b.kind ? -1 : 1))) {
    const now = new Date(at);
    if (done.has(id)) continue;
    done.add(id);
    if (kind === 'child' && (await eraseChild(inner, { childId: id, now }))) children += 1;
    else if (kind === 'child') await note(inner, { kind, id }, now);
    else if ((await forgetHelpers(inner, [id], now)) === 0) await noteIfGone(inner, id, now);
  }
  return children;
}

/** Somebody who had come and gone after the backup is not in it; the record is. */
async function note(inner: Store, { kind, id }: Pick<Erased, 'kind' | 'id'>, at: Date) {
  await inner.db
    .insert(erasure)
    .values({ id: newId(at), subjectKind: kind, subjectId: id, erasedAt: at });
}

async function noteIfGone(inner: Store, id: string, at: Date): Promise<void> {
  const { db } = inner;
  const there = await db.select({ id: helper.id }).from(helper).where(eq(helper.id, id));
  const noted = await db.select().from(erasure).where(eq(erasure.subjectId, id));
  if (there.length + noted.length === 0) await note(inner, { kind: 'helper', id }, at);
}
