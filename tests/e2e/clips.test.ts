import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type Clips,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
  createClips,
} from '../../bot/clip/index.ts';
import { openClips } from '../../bot/roots/open-clips.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { findHelperByChat, type Log, setWay } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable } from '../support/raw-rows.ts';

let folder: string;
let clips: Clips;
let stage: QuickStage;
const problems: unknown[] = [];
const log: Log = {
  info: () => {},
  warn: (fields, event) => problems.push([event, fields]),
  error: (fields, event) => problems.push([event, fields]),
};

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'suppersums-clips-'));
  problems.length = 0;
});

afterEach(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  await stage.world.close();
  await clips.close();
  await rm(folder, { recursive: true, force: true });
});

/** An evening that has just been sent, shown with the clips given. */
async function openEvening(own: Clips, families = 1): Promise<void> {
  clips = own;
  stage = await openQuickStage({ families, clips: own });
  await stage.world.goTo(FRIDAY.evening);
}

/** Clips whose encoder cannot even start. */
function brokenClips(): Clips {
  const store = createClipStore({ folder, maxBytes: 1_000_000 });
  const maker = createClipMaker({ entry: new URL('./no-such-worker.mjs', import.meta.url) });
  return createClips({ maker: createCachedClipMaker({ maker, store }), store, log });
}

const edits = (kind: string) =>
  stage.world.client
    .log()
    .then(
      (calls) => calls.filter(({ method, status }) => method === kind && status === 200).length,
    );

describe('a part of cards', () => {
  it('is shown as a clip of its cards, and the evening goes on in the same message', async () => {
    await openEvening(openClips(folder, log));
    const family = stage.family(0);
    await family.tap(BUTTONS.start);
    const part = await family.last();
    // Ready 4 s, five cards of 3 s, end 2 s.
    expect(part.video?.duration).toBe(21);
    expect(part.photo).toBeUndefined();
    expect(part.text).toContain('Part 1 of 2');
    await family.tap(BUTTONS.allRight);
    const run = await family.last();
    expect(run.id).toBe(part.id);
    expect(run.video).toBeUndefined();
    expect(run.photo).toBeDefined();
    await family.tap(BUTTONS.allSaid);
    expect((await family.last()).text).toContain('5 of 5');
    expect(problems).toEqual([]);
  });

  it('keeps its clip while cards are tapped as missed: only words and buttons change', async () => {
    await openEvening(openClips(folder, log));
    const family = stage.family(0);
    await family.tap(BUTTONS.start);
    const before = await edits('editMessageMedia');
    await family.tap(BUTTONS.someMissed);
    expect((await family.last()).video).toBeDefined();
    expect(await edits('editMessageMedia')).toBe(before);
  });

  it('is made once and uploaded once, however often it is shown', async () => {
    await openEvening(openClips(folder, log));
    const family = stage.family(0);
    await family.tap(BUTTONS.start);
    await family.say('/today');
    expect((await family.last()).video).toBeDefined();
    expect(await readdir(folder)).toHaveLength(1);
    expect(await readTable(stage.world.store, 'media')).toHaveLength(1);
  });
});

describe('a clip that is not to be had', () => {
  it('gives way to the picture sheet when the encoder dies, and the evening comes to its end', async () => {
    await openEvening(brokenClips());
    const family = stage.family(0);
    await family.tap(BUTTONS.start);
    const part = await family.last();
    expect(part.video).toBeUndefined();
    expect(part.photo).toBeDefined();
    expect(part.text).toContain('Part 1 of 2');
    expect(problems).toEqual([['clip_not_made', { problem: 'worker_lost' }]]);
    await family.tap(BUTTONS.allRight);
    await family.tap(BUTTONS.allSaid);
    expect((await family.last()).text).toContain('5 of 5');
  });

  it('gives way to the picture sheet when the service refuses it, which is logged once', async () => {
    await openEvening(openClips(folder, log));
    await stage.world.client.setFault({
      method: 'editMessageMedia',
      mode: 'error',
      count: 1,
      error: { code: 400, description: 'Bad Request: VIDEO_CONTENT_TYPE_INVALID' },
    });
    const family = stage.family(0);
    await family.tap(BUTTONS.start);
    expect((await family.last()).photo).toBeDefined();
    expect(stage.events().filter((event) => event === 'clip_replaced_by_picture')).toHaveLength(1);
  });

  it('leaves the sheet that stood in for it where it is, also when it is there later', async () => {
    await openEvening(openClips(folder, log));
    await stage.world.client.setFault({
      method: 'editMessageMedia',
      mode: 'error',
      count: 1,
      error: { code: 400, description: 'Bad Request: VIDEO_CONTENT_TYPE_INVALID' },
    });
    const family = stage.family(0);
    await family.tap(BUTTONS.start);
    await family.tap(BUTTONS.someMissed);
    const marking = await family.last();
    expect(marking.photo).toBeDefined();
    expect(marking.video).toBeUndefined();
  });
});

describe('drawing ahead', () => {
  it('draws the clip in the afternoon that the family sees in the evening', async () => {
    clips = openClips(folder, log);
    stage = await openQuickStage({ families: 2, clips });
    await stage.world.goTo('2026-09-18T14:00:00Z');
    await stage.world.app.ahead.look();
    const drawn = (await readdir(folder)).sort();
    expect(drawn).toHaveLength(2);
    await stage.world.goTo(FRIDAY.evening);
    await stage.family(0).tap(BUTTONS.start);
    await stage.family(1).tap(BUTTONS.start);
    expect((await stage.family(1).last()).video).toBeDefined();
    // Nothing had to be drawn any more.
    expect((await readdir(folder)).sort()).toEqual(drawn);
  });

  it('draws nothing in the morning, and nothing twice', async () => {
    clips = openClips(folder, log);
    stage = await openQuickStage({ families: 1, clips });
    await stage.world.app.ahead.look();
    await expect(readdir(folder)).resolves.toEqual([]);
    await stage.world.goTo('2026-09-18T14:00:00Z');
    await stage.world.app.ahead.look();
    await rm(join(folder, (await readdir(folder))[0] ?? ''));
    await stage.world.app.ahead.look();
    expect(await readdir(folder)).toEqual([]);
  });

  it('also draws an evening that was sent before anybody looked', async () => {
    await openEvening(openClips(folder, log));
    await stage.world.app.ahead.look();
    expect(await readdir(folder)).toHaveLength(1);
  });

  it('draws nothing on a day without school', async () => {
    clips = openClips(folder, log);
    stage = await openQuickStage({ families: 1, clips });
    await stage.world.goTo('2026-09-19T15:00:00Z');
    await stage.world.app.ahead.look();
    expect(await readdir(folder)).toEqual([]);
  });

  it('that fails costs nobody the evening', async () => {
    clips = brokenClips();
    stage = await openQuickStage({ families: 1, clips });
    await stage.world.goTo('2026-09-18T14:00:00Z');
    await stage.world.app.ahead.look();
    await stage.world.goTo(FRIDAY.evening);
    await stage.family(0).tap(BUTTONS.start);
    expect((await stage.family(0).last()).photo).toBeDefined();
  });
});

describe('the way a family has chosen', () => {
  it('pictures: a sheet and no clip; words: neither, and every card in the text', async () => {
    await openEvening(openClips(folder, log), 2);
    const [first, second] = [stage.family(0), stage.family(1)];
    const choose = async (chatId: number, way: string) => {
      const helper = await findHelperByChat(stage.world.store, chatId);
      await setWay(stage.world.store, { helperId: helper?.id ?? '', way });
    };
    await choose(first.id, 'pictures');
    await choose(second.id, 'words');
    await first.tap(BUTTONS.start);
    await second.tap(BUTTONS.start);
    expect((await first.last()).photo).toBeDefined();
    const words = await second.last();
    expect(words.photo ?? words.video).toBeUndefined();
    expect(words.text).toMatch(/1\. double \d\n2\. double \d/);
    await second.tap(BUTTONS.allRight);
    expect((await second.last()).text).toContain('Start at');
    await second.tap(BUTTONS.allSaid);
    const result = await second.last();
    expect(result.photo ?? result.video).toBeUndefined();
    expect(result.text).toContain('5 of 5');
    expect(await readTable(stage.world.store, 'media')).toHaveLength(1);
  });
});
