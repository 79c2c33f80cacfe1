import { register } from 'node:module';

/*
 * Loaded before the bot in each of its processes (`--import`): in place of the clocks in bot/roots it then has those of
 * shared-clocks.ts, which the suite moves for all processes at once. The bot itself knows nothing of it; libraries and Postgres
 * keep the machine's clock.
 */
const file = new URL(import.meta.url).searchParams.get('file');
if (file === null)
  throw new Error('say which file holds the clock: child-clock.ts?file=/tmp/clock');

const clocks = new URL('shared-clocks.ts', import.meta.url);
clocks.searchParams.set('file', file);
register('./exchange-clocks.mjs', import.meta.url, { data: { clocks: clocks.href } });
