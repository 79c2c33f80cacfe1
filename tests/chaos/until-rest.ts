import { setTimeout as delay } from 'node:timers/promises';
import { PLANNERS } from './crew.ts';
import type { Family } from './families.ts';
import { type OpenWork, readOpen } from './read-facts.ts';
import type { Stage } from './stage.ts';

const LOOK_MS = 400;
/** A call without an answer is given up by the bot after twenty seconds; until then it is still on its way. */
const HANGING_MS = 21_000;
/** Nothing has moved for so long: what is left waits for a time to come. */
const STILL_MS = 10_000;
/** Past every wait of the bot: two minutes for an attempt without an end, and for an update that failed often. */
const STEP_MS = 125_000;
const MOST_STEPS = 15;
const TELL_MS = 5_000;

/**
 * Waits until nothing waits and nothing is on its way. When only time is wanting, the clock is moved on. Without senders what
 * is planned may stay so. Gives up after many moves: what is left then is found by the invariants.
 */
export async function untilRest(
  stage: Stage,
  families: readonly Family[],
  { senders = true }: { senders?: boolean } = {},
): Promise<void> {
  const { clock, crew, traffic, rehearsal, tell } = stage;
  let before = '';
  let since = Date.now();
  let told = 0;
  for (let steps = 0; steps < MOST_STEPS; ) {
    await delay(LOOK_MS);
    const work = await readOpen(stage.sql).catch(() => null);
    const busy = families.filter(({ isBusy }) => isBusy).length;
    const updates = rehearsal.pendingUpdates();
    if (work && busy + updates + left(work, senders) === 0) return;
    const now = JSON.stringify({ work, busy, updates });
    if (now !== before || !work) {
      if (Date.now() - told > TELL_MS) {
        tell(`still to do: ${now}`);
        told = Date.now();
      }
      before = now;
      since = Date.now();
      continue;
    }
    const isStill = Date.now() - since > STILL_MS && Date.now() - traffic.lastHangAt() > HANGING_MS;
    if (!isStill || updates > 0) continue;
    steps += 1;
    tell('the clock is moved on');
    since = Date.now();
    for (const planner of PLANNERS) await crew.strike(planner);
    await clock.moveTo(new Date(clock.now().getTime() + STEP_MS));
    await crew.start(PLANNERS);
  }
}

function left(work: OpenWork, senders: boolean): number {
  const planned = senders ? work['messages planned'] : 0;
  return planned + work['messages attempting'] + work['updates waiting'];
}
