import type postgres from 'postgres';
import type { EveningFacts, Owed, StoredMark, StoredPart } from './facts.ts';

/** What has not come to an end yet. */
export interface OpenWork {
  readonly 'messages planned': number;
  readonly 'messages attempting': number;
  readonly 'updates waiting': number;
}

/** Counts what has not come to an end. */
export async function readOpen(sql: postgres.Sql): Promise<OpenWork> {
  const [row] = await sql<OpenWork[]>`
    select
      (select count(*)::int from ledger where status = 'planned') as "messages planned",
      (select count(*)::int from ledger where status = 'attempting') as "messages attempting",
      (select count(*)::int from inbox where status in ('pending', 'handling')) as "updates waiting"`;
  if (!row) throw new Error('the database answered nothing');
  return row;
}

/** What the database holds of a day, once everything is at rest. */
export async function readStored(
  sql: postgres.Sql,
  day: string,
): Promise<Pick<EveningFacts, 'owed' | 'parts' | 'marks' | 'open'>> {
  const owed = await sql<Owed[]>`
    select l.subject_id as "childId", h.chat_id::int as phone, l.kind, l.status,
      l.message_id as "messageId", l.problem
    from ledger l join helper h on h.id = l.recipient_id
    where l.day = ${day} and l.kind in ('evening', 'nudge')`;
  const parts = await sql<StoredPart[]>`
    select e.child_id as "childId", p.part, p.right, p.asked, p.revision
    from part_score p join evening e on e.id = p.evening_id where e.day = ${day}`;
  const marks = await sql<StoredMark[]>`
    select e.child_id as "childId", m.part, m.card, m.right, m.revision
    from mark m join evening e on e.id = m.evening_id where e.day = ${day}`;
  const [given] = await sql<{ updates: number; letters: number }[]>`
    select
      (select count(*)::int from inbox where status = 'failed') as updates,
      (select count(*)::int from pgboss.job where name = 'deliver-dead') as letters`;
  const open = {
    ...(await readOpen(sql)),
    'updates given up': given?.updates ?? 0,
    'dead letters': given?.letters ?? 0,
  };
  return { owed, parts, marks, open };
}
