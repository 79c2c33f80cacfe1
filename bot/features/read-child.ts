import {
  type ChildWithPast,
  getAdjustment,
  listPaceStands,
  readChildPast,
  readPageProgress,
  type TeacherScope,
} from '../../db/index.ts';
import { addDays, bookInUse, type ChildReport, reportChild } from '../../drills/index.ts';
import type { BotDeps } from '../deps.ts';
import { type ChildPageInput, workbookWords } from '../texts/child-page.ts';
import { paceWords } from '../texts/fewer.ts';
import { ownWayLine } from '../texts/own-way.ts';

/** How far back a child's page looks, in weeks. */
const PAGE_WEEKS = 12;

/** A child's past with what it comes to. */
export interface ChildRead extends ChildWithPast {
  readonly report: ChildReport;
}

/** One child of a teacher's class, over so many weeks, or since its first evening. */
export async function readChild(
  { store, clock }: BotDeps,
  scope: TeacherScope,
  number: number,
  weeks: number | null = PAGE_WEEKS,
): Promise<ChildRead> {
  const read = await readChildPast(store, scope, { number, weeks, now: clock.now() });
  return { ...read, report: reportChild(read.past) };
}

/** Everything a child's page tells. */
export async function readChildPage(
  deps: BotDeps,
  scope: TeacherScope,
  number: number,
): Promise<ChildPageInput> {
  const { child, past, heard, report } = await readChild(deps, scope, number);
  const { nickname, helpers, reachable, left } = child;
  const since = addDays(past.today, -6);
  return {
    number,
    nickname,
    report,
    week: past.evenings.filter(({ day }) => day >= since),
    workbook: (await workbooksOf(deps, scope)).get(child.id) ?? null,
    adjusted: await ownLine(deps, scope, number),
    helpers,
    reachable,
    left,
    heard,
  };
}

/** How a child's drills differ from the class's, and when they do not come every school day; null where neither is so. */
async function ownLine(
  { store, clock }: BotDeps,
  scope: TeacherScope,
  number: number,
): Promise<string | null> {
  const { adjustment } = await getAdjustment(store, scope, number);
  const stands = await listPaceStands(store, scope, clock.now());
  const stand = stands.find((each) => each.number === number)?.stand;
  const said = [ownWayLine(adjustment), stand ? capital(paceWords(stand)) : null];
  return said.filter((each) => each !== null).join('. ') || null;
}

function capital(words: string): string {
  return words.charAt(0).toLocaleUpperCase() + words.slice(1);
}

/** Where each child is in its workbook, in words, by child; one without a workbook is not in it. */
export async function workbooksOf(
  { store, clock }: BotDeps,
  scope: TeacherScope,
): Promise<ReadonlyMap<string, string>> {
  const progress = await readPageProgress(store, scope, clock.now());
  return new Map(
    progress.flatMap(({ child, queue }) =>
      queue.length === 0 ? [] : [[child.id, workbookWords(bookInUse(queue))] as const],
    ),
  );
}
