import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Drill } from '../../drills/index.ts';
import { createRenderAhead } from '../../jobs/index.ts';
import { openQuickStage, type QuickStage } from '../support/quick-stage.ts';

const AFTERNOON = '2026-09-18T14:00:00Z';

let stage: QuickStage;
const problems: unknown[] = [];

beforeEach(async () => {
  problems.length = 0;
  stage = await openQuickStage({ families: 3 });
  await stage.world.goTo(AFTERNOON);
});
afterEach(() => stage.world.close());

/** Draws ahead what the school of the stage will need. */
function drawing(prepare: (drill: Drill) => Promise<void>) {
  const { store, now } = stage.world;
  const note = (_: unknown, event: string) => problems.push(event);
  const log = { info: () => undefined, warn: note, error: note };
  return createRenderAhead({ store, clock: { now }, log, prepare });
}

it('does not wait for a drill that is being drawn when it stops', async () => {
  let begun = () => {};
  const begins = new Promise<void>((resolve) => {
    begun = resolve;
  });
  const ahead = drawing(() => {
    begun();
    return new Promise(() => {});
  });
  const looking = ahead.look();
  await begins;
  await ahead.stop();
  await looking;
  expect(problems).toEqual([]);
});

it('goes on with the other children when one child’s drill fails, and tries that one again', async () => {
  let tried = 0;
  const drawn: Drill[] = [];
  const ahead = drawing(async (drill) => {
    tried += 1;
    if (tried === 1) throw new Error('told to');
    drawn.push(drill);
  });
  await ahead.look();
  expect([tried, drawn.length]).toEqual([3, 2]);
  expect(problems).toEqual(['not_drawn_ahead']);
  await ahead.look();
  expect([tried, drawn.length]).toEqual([4, 3]);
  await ahead.look();
  expect(tried).toBe(4);
});

it('draws nothing more once it has stopped', async () => {
  let tried = 0;
  const ahead = drawing(async () => {
    tried += 1;
  });
  await ahead.stop();
  await ahead.look();
  expect(tried).toBe(0);
});
