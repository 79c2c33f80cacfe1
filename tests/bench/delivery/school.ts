import type postgres from 'postgres';
import {
  acceptSlip,
  acceptTeacherInvite,
  activatePlan,
  addChildren,
  createClass,
  getActivePlan,
  issueSlips,
  issueTeacherInvite,
  type OpenStore,
  planEvening,
  saveDraftPlan,
  storedTime,
} from '../../../db/index.ts';
import { parseSchoolDay, type WeekPlan } from '../../../drills/index.ts';

/** Monday 14 September 2026, British Summer Time: 17:30 in London is 16:30 UTC. */
export const EVENING = new Date('2026-09-14T16:30:00Z');
const MORNING = new Date('2026-09-14T05:30:00Z');
const TODAY = '2026-09-14';
export const CHILDREN_IN_CLASS = 25;
/** Chats of generated helpers count from here. */
export const FIRST_CHAT = 1_000_000;
const EVENING_MS = 3 * 60 * 60_000;

const PLAN: WeekPlan = {
  parts: [
    { rung: 'doubles.to5', cards: 5, seconds: 3 },
    { rung: 'counting.fives', cards: 10, seconds: 3 },
  ],
};

/** What a generated school is like. */
export interface School {
  readonly children: number;
  /** Of these, those whose evening comes at 17:30; the others' comes at 19:47. */
  readonly due: number;
  /** Evenings in the past: with eight marks each of a child that is due, with two of one that is not. */
  readonly history: { readonly due: number; readonly others: number };
}

/**
 * Generates a school in SQL after the pattern of one class that the store's own verbs made: classes of 25 with a plan in use, a
 * helper who reads words for each child, and evenings with marks on the days before. Numbers of children are whole classes.
 */
export async function generate(
  store: OpenStore,
  sql: postgres.Sql,
  { children, due, history }: School,
): Promise<void> {
  const pattern = await makePattern(store);
  const classes = children / CHILDREN_IN_CLASS;
  await sql.unsafe(`
    create function made(kind int, n bigint) returns uuid language sql immutable as
      $$ select ('0190000' || kind || '-0000-7000-8000-' || lpad(to_hex(n), 12, '0'))::uuid $$;
    create temp table one as select * from class where id = '${pattern.classId}';
    create temp table one_plan as select * from week_plan where class_id = '${pattern.classId}' and status = 'active';
    create temp table one_evening as select * from evening where class_id = '${pattern.classId}';
    insert into class select (jsonb_populate_record(one, jsonb_build_object('id', made(1, n), 'title', 'Kingfisher class ' || n,
      'evening_time', case when n * ${CHILDREN_IN_CLASS} < ${due} then '17:30' else '19:47' end,
      'nudge_time', '20:40',
      'look_at', case when n * ${CHILDREN_IN_CLASS} < ${due} then 'epoch' else '2026-09-14T18:47:00Z' end,
      'looked_at', '2026-09-14T05:00:00Z'))).* from one, generate_series(0, ${classes - 1}) n;
    insert into class_teacher select made(1, n), '${pattern.teacherId}', 'lead', '${MORNING.toISOString()}' from generate_series(0, ${classes - 1}) n;
    insert into week_plan select (jsonb_populate_record(one_plan, jsonb_build_object('id', made(2, n), 'class_id', made(1, n)))).*
      from one_plan, generate_series(0, ${classes - 1}) n;
    insert into child (id, class_id, number, nickname, created_at) select made(3, n), made(1, n / ${CHILDREN_IN_CLASS}),
      n % ${CHILDREN_IN_CLASS} + 1, 'Wren' || n, '${MORNING.toISOString()}' from generate_series(0, ${children - 1}) n;
    insert into helper (id, chat_id, way, created_at) select made(4, n), ${FIRST_CHAT} + n, 'words', '${MORNING.toISOString()}'
      from generate_series(0, ${children - 1}) n;
    insert into helper_child (helper_id, child_id, joined_at) select made(4, n), made(3, n), '${MORNING.toISOString()}'
      from generate_series(0, ${children - 1}) n;
  `);
  // Who reads words is shown no clip: drawing clips ahead would be measured too.
  await sql.unsafe(`insert into adjustment (child_id, untimed, since) select made(3, n), true, '${MORNING.toISOString()}'
    from generate_series(0, ${children - 1}) n`);
  const past = async (from: number, to: number, evenings: number, marks: number) => {
    if (to <= from || evenings === 0) return;
    const days = `generate_series(1, ${evenings}) e`;
    const kids = `generate_series(${from}, ${to - 1}) n`;
    const at = `timestamptz '2026-09-14 16:30Z' - e * interval '1.92 days'`;
    await sql.unsafe(`
      insert into evening (id, child_id, class_id, day, plan_id, seed, drill, created_at, started_at)
        select made(5, n::bigint * 1000 + e), made(3, n), made(1, n / ${CHILDREN_IN_CLASS}), (${at})::date, made(2, n / ${CHILDREN_IN_CLASS}),
          'seed', one_evening.drill, ${at}, ${at} from one_evening, ${kids}, ${days};
      insert into ledger (id, kind, subject_id, day, class_id, bot_id, evening_id, recipient_kind, recipient_id, status, message_id,
          tries, not_before, expires_at, enqueued_at, attempted_at, settled_at)
        select made(6, n::bigint * 1000 + e), 'evening', made(3, n), (${at})::date, made(1, n / ${CHILDREN_IN_CLASS}), 0,
          made(5, n::bigint * 1000 + e), 'helper', made(4, n), 'sent', 1, 1, ${at}, ${at}, ${at}, ${at}, ${at} from ${kids}, ${days};
      insert into part_score (evening_id, part, child_id, strand, rung, blueprint, "right", asked, revision, marked_at)
        select made(5, n::bigint * 1000 + e), 0, made(3, n), 'doubles', 'doubles.to5', 'doubles.to5', 4, 5, 1, ${at} from ${kids}, ${days};
      insert into mark (id, evening_id, child_id, part, card, fact, "right", way, revision, helper_id, marked_at)
        select made(7, (n::bigint * 1000 + e) * 8 + c), made(5, n::bigint * 1000 + e), made(3, n), 0, c, 'double:' || (c + 1),
          true, 'card', 1, made(4, n), ${at} from ${kids}, ${days}, generate_series(0, ${marks - 1}) c;
    `);
  };
  await past(0, due, history.due, 8);
  await past(due, children, history.others, 2);
  // The pattern has served.
  await sql.unsafe(
    `update class set archived_at = '${MORNING.toISOString()}' where id = '${pattern.classId}'`,
  );
  await sql.unsafe('vacuum analyze');
}

interface Pattern {
  readonly classId: string;
  readonly teacherId: string;
}

/** One class with one child, its family and its evening of today, made as the bot makes them. */
async function makePattern(store: OpenStore): Promise<Pattern> {
  const now = MORNING;
  const code = await issueTeacherInvite(store, now);
  const teacher = await acceptTeacherInvite(store, { code, chatId: 1, now });
  const settings = {
    ...{ title: 'Kingfisher class', zone: 'Europe/London', weekdays: [1, 2, 3, 4, 5] as const },
    ...{ eveningTime: storedTime('17:30'), nudgeTime: storedTime('20:00') },
    ...{ digestWeekday: 5 as const, digestTime: storedTime('20:30') },
  };
  const { id: classId } = await createClass(store, { teacherId: teacher.id, settings, now });
  const scope = { teacherId: teacher.id, classId };
  await saveDraftPlan(store, scope, { plan: PLAN, now });
  await activatePlan(store, scope, now);
  const [child] = await addChildren(store, scope, { nicknames: ['Otter'], now });
  if (!child) throw new Error('no child was added');
  const [slip] = await issueSlips(store, scope, { childIds: [child.id], now });
  const agreement = { textVersion: '1', language: 'en', messageId: 1 } as const;
  await acceptSlip(store, { code: slip?.code ?? '', chatId: 2, agreement, now });
  const plan = await getActivePlan(store, classId);
  const day = parseSchoolDay(TODAY);
  if (!plan || !day) throw new Error('the plan was not put in use');
  const expiresAt = new Date(EVENING.getTime() + EVENING_MS);
  await planEvening(store, { childId: child.id, classId, day, plan, expiresAt, now });
  return { classId, teacherId: teacher.id };
}
