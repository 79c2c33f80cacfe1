import { dumpAll } from './raw-rows.ts';
import type { World } from './world.ts';

/** Tables that hold what the bot has received or where its messages went, not what anybody meant to store. */
const TRAFFIC = [
  'inbox',
  'ledger',
  'rate',
  'media',
  'code_miss',
  'data_used',
  'chat_rate',
  'upkeep',
];

/** Everything stored about people and practice, as one text: equal before and after means that nothing was stored. */
export async function storedAbout(world: World): Promise<string> {
  const tables = [...(await dumpAll(world.store))].filter(([table]) => !TRAFFIC.includes(table));
  // The tables come in whatever order the server reads them.
  return tables
    .map(([table, rows]) => `${table} ${rows}`)
    .sort()
    .join('\n');
}
