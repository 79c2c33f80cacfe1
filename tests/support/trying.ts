import { ACTIONS, type ActionKind } from '../../bot/callback/actions.ts';
import { pack } from '../../bot/callback/codec.ts';
import { MOST_WAITING } from '../../db/index.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { type RightThings, rightAction } from './action-rules.ts';
import { textsIn } from './leaks.ts';
import { dumpAll } from './raw-rows.ts';
import type { World } from './world.ts';

/** Tables that hold what came in and where messages went. Whoever taps anything leaves a trace there. */
const TRAFFIC: readonly string[] = [
  'inbox',
  'ledger',
  'rate',
  'media',
  'code_miss',
  'data_used',
  'chat_rate',
];

/** Every row stored, as `table row`, traffic apart. */
export async function storedRows(world: World): Promise<ReadonlySet<string>> {
  const tables = [...(await dumpAll(world.store))].filter(([table]) => !TRAFFIC.includes(table));
  const rows = tables.flatMap(([table, text]) =>
    text === '' ? [] : text.split('\n').map((row) => `${table} ${row}`),
  );
  return new Set(rows);
}

/** The rows that are in one of two states only. */
export function changedRows(before: ReadonlySet<string>, after: ReadonlySet<string>): string[] {
  return [
    ...[...before].filter((row) => !after.has(row)),
    ...[...after].filter((row) => !before.has(row)),
  ];
}

/** What came of a tap. */
export interface Tried {
  readonly kind: ActionKind;
  /** What popped up; null when the tap was never answered. */
  readonly answer: string | null;
}

/** The right one's action as a button's data. */
export function buttonOf(kind: ActionKind, things: RightThings): string {
  return pack(rightAction(kind, things, Object.keys(ACTIONS[kind].fields)));
}

/** Taps buttons of the right one from another phone, no more at a time than are kept waiting. */
export async function tapAll(
  world: World,
  phone: number,
  kinds: readonly ActionKind[],
  things: RightThings,
): Promise<Tried[]> {
  const messageId = (await world.client.chat(phone)).at(-1)?.id ?? 0;
  const queries: { kind: ActionKind; queryId: string }[] = [];
  for (const [place, kind] of kinds.entries()) {
    const { queryId } = await world.client.rawCallback(phone, messageId, buttonOf(kind, things));
    queries.push({ kind, queryId });
    if ((place + 1) % MOST_WAITING === 0) await world.settle();
  }
  await world.settle();
  const answers = await world.client.answers(phone);
  return queries.map(({ kind, queryId }) => {
    const answer = answers.find((each) => each.queryId === queryId);
    return { kind, answer: answer ? (answer.text ?? '') : null };
  });
}

/** Everything a phone shows, in text and on buttons, as one text. */
export async function shownOn(world: World, phone: number): Promise<string> {
  const chat: readonly ChatMessage[] = await world.client.chat(phone);
  const answers = await world.client.answers(phone);
  return [...chat.filter(({ from }) => from === 'bot'), ...answers]
    .flatMap((each) => textsIn(each))
    .join('\n');
}
