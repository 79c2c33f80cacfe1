import type { Store } from '../../db/index.ts';
import type { SchoolDay } from '../../drills/index.ts';
import { type RawRow, readTable } from '../support/raw-rows.ts';

/** One child's week as raw rows say, in plain loops: the check beside `readWeek`. */
export interface RawChildWeek {
  readonly number: number;
  readonly nickname: string;
  readonly joined: boolean;
  readonly left: boolean;
  readonly reachable: boolean;
  readonly silentRun: number;
  readonly evenings: readonly unknown[];
  readonly earlier: readonly unknown[];
}

interface Tables {
  readonly evenings: readonly RawRow[];
  readonly marks: readonly RawRow[];
  readonly runs: readonly RawRow[];
  readonly ledger: readonly RawRow[];
  readonly pages: readonly RawRow[];
}

/** Computes every child's week from the rows of marks, runs, pages and ledger. Never looks at a derived table. */
export async function weekFromRows(
  store: Store,
  classId: string,
  days: readonly SchoolDay[],
): Promise<RawChildWeek[]> {
  const tables: Tables = {
    evenings: await readTable(store, 'evening'),
    marks: await readTable(store, 'mark'),
    runs: await readTable(store, 'run_result'),
    ledger: await readTable(store, 'ledger'),
    pages: await readTable(store, 'page_log'),
  };
  const helpers = await readTable(store, 'helper');
  const everJoined = await readTable(store, 'helper_child');
  const joined = everJoined.filter((row) => row.left_at === null);
  const children = (await readTable(store, 'child')).filter((row) => row.class_id === classId);
  const gone = new Set((await readTable(store, 'unreachable')).map((row) => row.chat_id));
  const weeks = children.map((child) => {
    const own = joined.filter((row) => row.child_id === child.id);
    const within = own.filter((row) =>
      helpers.some((helper) => helper.id === row.helper_id && !gone.has(helper.chat_id)),
    );
    const evenings = tables.evenings
      .filter((row) => row.child_id === child.id)
      .sort((a, b) => (String(a.day) < String(b.day) ? -1 : 1));
    return {
      number: Number(child.number),
      nickname: String(child.nickname),
      joined: own.length > 0,
      left: own.length === 0 && everJoined.some((row) => row.child_id === child.id),
      reachable: within.length > 0,
      silentRun: silentRunOf(evenings.map((row) => statusOf(row, tables))),
      evenings: evenings
        .filter((row) => days.some((day) => day === row.day))
        .map((row) => recordOf(row, tables)),
      earlier: evenings
        .filter((row) => days.every((day) => String(row.day) < day))
        .filter((row) => statusOf(row, tables) === 'practised')
        .map((row) => recordOf(row, tables))
        .map(({ day, parts }) => ({ day, parts })),
    };
  });
  return weeks.sort((a, b) => a.number - b.number);
}

function statusOf(row: RawRow, { marks, runs, ledger }: Tables): string {
  if ([...marks, ...runs].some((mark) => mark.evening_id === row.id)) return 'practised';
  if (row.declined_at !== null || row.stopped_at !== null) return 'not_today';
  const sent = ledger.some((entry) => entry.evening_id === row.id && entry.status === 'sent');
  return sent ? 'silent' : 'unsent';
}

function silentRunOf(statuses: readonly string[]): number {
  let run = 0;
  for (const status of statuses) {
    if (status === 'silent') run += 1;
    else if (status !== 'unsent') run = 0;
  }
  return run;
}

function latest(rows: readonly RawRow[]): RawRow[] {
  const highest = Math.max(...rows.map((row) => Number(row.revision)));
  return rows.filter((row) => row.revision === highest);
}

function recordOf(row: RawRow, tables: Tables) {
  const parts: unknown[] = [];
  const facts: unknown[] = [];
  const runs: unknown[] = [];
  for (let part = 0; part < 6; part += 1) {
    const ofPart = (rows: readonly RawRow[]) =>
      latest(rows.filter((entry) => entry.evening_id === row.id && entry.part === part));
    const marks = ofPart(tables.marks).sort((a, b) => Number(a.card) - Number(b.card));
    if (marks.length > 0) {
      const right = marks.filter((mark) => mark.right === true).length;
      parts.push({ right, asked: marks.length });
    }
    for (const mark of marks) facts.push({ fact: mark.fact, right: mark.right });
    for (const { start, step, length, said } of ofPart(tables.runs)) {
      parts.push({ right: said, asked: length });
      runs.push({ start, step, length, said });
    }
  }
  const pages = latest(tables.pages.filter((entry) => entry.evening_id === row.id));
  return {
    day: row.day,
    status: statusOf(row, tables),
    parts,
    facts,
    runs,
    pages: pages[0]?.pages ?? null,
  };
}
