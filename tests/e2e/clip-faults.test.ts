import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import {
  type Clips,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
  createClips,
} from '../../bot/clip/index.ts';
import { openClips } from '../../bot/roots/open-clips.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { Log } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';

/** More than a test may take: whatever waits this long has failed it. */
const LONG_MS = 600_000;
const HANGING = new URL('../bot/clip/support/hanging-worker.mjs', import.meta.url);

let folder: string;
let clips: Clips;
let stage: QuickStage;
const problems: unknown[] = [];
const log: Log = {
  info: () => undefined,
  warn: (fields) => problems.push(fields.problem),
  error: (fields) => problems.push(fields.problem),
};

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-clips-'));
  problems.length = 0;
});

afterEach(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  await clips.close();
  await stage.world.close();
  await rm(folder, { recursive: true, force: true });
});

async function openStage(own: Clips, families = 1): Promise<void> {
  clips = own;
  stage = await openQuickStage({ families, clips: own });
}

/** Clips whose encoder begins and never ends. */
function hangingClips(soonMs: number): Clips {
  const store = createClipStore({ folder, maxBytes: 1_000_000 });
  const encoder = createClipMaker({ entry: HANGING, longestMs: LONG_MS });
  const maker = createCachedClipMaker({ maker: encoder, store });
  return createClips({ maker, store, log, soonMs });
}

/** Has the service fail at the next calls that show a clip or picture. */
function failAtVisuals(method: 'editMessageMedia' | 'sendVideo', count: number): Promise<void> {
  return stage.world.client.setFault({ method, mode: 'error', count });
}

it('an encoder that hangs holds up nobody: every family gets the sheet and comes to the end', async () => {
  await openStage(hangingClips(1), 3);
  await stage.world.goTo(FRIDAY.evening);
  for (const place of [0, 1, 2]) {
    const family = stage.family(place);
    await family.tap(BUTTONS.start);
    const part = await family.last();
    expect(part.video).toBeUndefined();
    expect(part.photo).toBeDefined();
    await family.tap(BUTTONS.allRight);
    await family.tap(BUTTONS.allSaid);
    expect((await family.last()).text).toContain('5 of 5');
  }
  expect(stage.events()).toEqual([]);
  expect(new Set(problems)).toEqual(new Set(['too_late']));
});

it('a service that fails at a clip three times is given the sheet, within the same tap', async () => {
  await openStage(openClips(folder, log));
  await stage.world.goTo(FRIDAY.evening);
  await failAtVisuals('editMessageMedia', 3);
  const family = stage.family(0);
  await family.tap(BUTTONS.start);
  expect((await family.last()).photo).toBeDefined();
  expect(stage.events()).toEqual(['clip_replaced_by_picture']);
});

it('a service that fails at a new message with a clip is given the sheet, and one message comes', async () => {
  await openStage(openClips(folder, log));
  await stage.world.goTo(FRIDAY.evening);
  const family = stage.family(0);
  await family.tap(BUTTONS.start);
  const before = (await family.chat()).length;
  await failAtVisuals('sendVideo', 3);
  await family.say('/today');
  const after = await family.chat();
  // What the family said, and the answer to it.
  expect(after).toHaveLength(before + 2);
  expect(after.at(-1)?.photo).toBeDefined();
  expect(stage.events()).toEqual(['clip_replaced_by_picture']);
});

it('a service that fails for longer gets the clip with the next try', async () => {
  await openStage(openClips(folder, log));
  await stage.world.goTo(FRIDAY.evening);
  await failAtVisuals('editMessageMedia', 6);
  const family = stage.family(0);
  await family.tap(BUTTONS.start);
  expect(stage.events()).toEqual(['clip_replaced_by_picture', 'update_failed']);
  await stage.world.goTo(FRIDAY.minuteLater);
  expect((await family.last()).video).toBeDefined();
});
