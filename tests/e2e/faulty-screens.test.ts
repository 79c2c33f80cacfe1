import { afterEach, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { Fault } from '../../rehearsal/client.ts';
import { Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { outlast } from '../support/outlast.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable, runSql } from '../support/raw-rows.ts';
import { strike } from '../support/strike.ts';

let stage: QuickStage;

afterEach(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  await stage.world.close();
});

describe('pictures', () => {
  it('are replaced by words when the service refuses them, and the evening comes to its end', async () => {
    stage = await openQuickStage({ families: 1 });
    await stage.world.goTo(FRIDAY.evening);
    const error = { code: 400, description: 'Bad Request: PHOTO_INVALID_DIMENSIONS' };
    await stage.world.client.setFault({
      method: 'editMessageMedia',
      mode: 'error',
      count: 99,
      error,
    });
    const texts: string[] = [];
    const watched = new Phone(stage.world, stage.family(0).id, async (_, sees) => {
      expect(sees?.photo).toBeUndefined();
      texts.push(sees?.text ?? '');
    });
    await watched.playEvening((number) => (number === 1 ? [1, 3] : [4]));
    expect(texts[0]).toMatch(/1\. .+\n2\. .+\n3\. .+\n4\. .+\n5\. .+/);
    const result = await stage.family(0).last();
    expect(result.text).toContain('3 of 5');
    expect(result.text).toContain('4 of 10');
    expect(stage.events()).toContain('picture_replaced_by_words');
    expect(stage.events()).not.toContain('update_failed');
  });

  it('that cannot be drawn are replaced by words, and the digest still has its text and its table', async () => {
    const paint = () => {
      throw new Error('no picture today');
    };
    stage = await openQuickStage({ families: 1, painter: { paint } });
    await stage.world.goTo(FRIDAY.evening);
    await stage.family(0).playEvening();
    const result = await stage.family(0).last();
    expect(result.photo).toBeUndefined();
    expect(result.text).toContain('5 of 5');
    await stage.world.goTo(FRIDAY.digest);
    const teacher = await stage.world.client.chat(stage.school.teacher);
    const documents = teacher.flatMap((message) => message.document?.fileName ?? []);
    expect(documents).toEqual([expect.stringMatching(/\.csv$/)]);
    expect(
      await new Phone(stage.world, stage.school.teacher).messagesWith('practised on'),
    ).toHaveLength(1);
    expect(stage.events().filter((event) => event === 'digest_picture_failed')).toHaveLength(1);
  });
});

describe('a picture that has arrived', () => {
  it('is not followed by its words when the store cannot remember the upload', async () => {
    stage = await openQuickStage({ families: 1 });
    await stage.world.goTo(FRIDAY.evening);
    await strike(stage.world.store, 'media', 99);
    const phone = stage.family(0);
    await phone.tap(BUTTONS.start);
    await phone.say('/today');
    const messages = (await phone.chat()).filter((message) => message.from === 'bot');
    expect(messages.map((message) => message.photo !== undefined)).toEqual([true, true]);
    expect(stage.events()).toEqual(['upload_not_remembered', 'upload_not_remembered']);
    expect(await stage.calls('sendPhoto', 200)).toBe(1);
  });
});

describe('a store that fails for a while', () => {
  it('is no reason for words: the picture comes with the next try', async () => {
    stage = await openQuickStage({ families: 1 });
    await stage.world.goTo(FRIDAY.evening);
    await runSql(stage.world.store, 'alter table media rename to away');
    await stage.family(0).tap(BUTTONS.start);
    expect((await stage.family(0).last()).text).toContain('Friday');
    expect(await stage.calls('editMessageText', 200)).toBe(0);
    expect(stage.events()).toEqual(['update_failed']);
    await runSql(stage.world.store, 'alter table away rename to media');
    await outlast(stage.world);
    expect((await stage.family(0).last()).photo).toBeDefined();
    expect(stage.events()).not.toContain('picture_replaced_by_words');
  });
});

describe('a digest', () => {
  it('arrives in words when the service takes no files', async () => {
    stage = await openQuickStage({ families: 1 });
    const error = { code: 400, description: 'Bad Request: wrong file' };
    await stage.world.client.setFault({ method: 'sendDocument', mode: 'error', count: 2, error });
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.digest);
    await stage.world.goTo('2026-09-18T18:31:00Z');
    const chat = await stage.world.client.chat(stage.school.teacher);
    const messages = chat.filter((message) => message.from === 'bot');
    expect(messages.map((message) => message.document)).toEqual([undefined]);
    expect(messages[0]?.text).toContain('practised on');
    expect(await stage.calls('sendDocument', 400)).toBe(2);
  });
});

describe('a week in which nobody practised', () => {
  it('has a picture and a table all the same', async () => {
    stage = await openQuickStage();
    await stage.world.goTo(FRIDAY.evening);
    await stage.world.goTo(FRIDAY.digest);
    const chat = await stage.world.client.chat(stage.school.teacher);
    const files = chat.flatMap((message) => message.document?.fileName ?? []);
    expect(files.sort()).toEqual([
      'digest-kingfisher-class-harbour-lane-school-2026-09-18.csv',
      'digest-kingfisher-class-harbour-lane-school-2026-09-18.png',
    ]);
    expect(stage.events()).toEqual([]);
  });
});

describe('a tap whose screen fails', () => {
  // The sixth error in a row outlasts the repeats of a call and one handling of the tap.
  const faults: readonly [string, Fault][] = [
    [
      'one error of the service on a picture',
      { method: 'editMessageMedia', mode: 'error', count: 1 },
    ],
    [
      'one error of the service on a caption',
      { method: 'editMessageCaption', mode: 'error', count: 1 },
    ],
    [
      'six errors of the service on a picture',
      { method: 'editMessageMedia', mode: 'error', count: 6 },
    ],
    [
      'six errors of the service on a caption',
      { method: 'editMessageCaption', mode: 'error', count: 6 },
    ],
    [
      'a lost answer on a picture',
      { method: 'editMessageMedia', mode: 'apply_then_drop', count: 1 },
    ],
    [
      'a lost answer on a caption',
      { method: 'editMessageCaption', mode: 'apply_then_drop', count: 1 },
    ],
    [
      'a cut connection on a caption',
      { method: 'editMessageCaption', mode: 'drop_before', count: 1 },
    ],
    [
      'a cut connection on the answer to the tap',
      { method: 'answerCallbackQuery', mode: 'drop_before', count: 1 },
    ],
    [
      'a page instead of an answer on a picture',
      { method: 'editMessageMedia', mode: 'http_502', count: 1 },
    ],
  ];

  it.each(faults)(
    'still ends on the right screen with each mark once after %s',
    async (_, fault) => {
      stage = await openQuickStage({ families: 1 });
      await stage.world.goTo(FRIDAY.evening);
      const phone = stage.family(0);
      const clumsy = async (label: string) => {
        await stage.world.client.setFault(fault);
        await phone.tap(label);
        await outlast(stage.world);
        await stage.world.client.clearFaults();
      };
      await clumsy(BUTTONS.start);
      expect(await phone.buttons()).toContain(BUTTONS.someMissed);
      await clumsy(BUTTONS.someMissed);
      await clumsy('2. ');
      expect((await phone.buttons()).filter((label) => label.includes('✗'))).toHaveLength(1);
      await clumsy(BUTTONS.done);
      expect((await phone.last()).text).toContain('Part 2 of 2');
      await clumsy(BUTTONS.allSaid);
      expect((await phone.last()).text).toContain('4 of 5');
      expect((await phone.chat()).filter((message) => message.from === 'bot')).toHaveLength(1);
      const marks = await readTable(stage.world.store, 'mark');
      expect(marks.filter((row) => row.right === false)).toHaveLength(1);
      expect(marks).toHaveLength(5);
      const struck = (await stage.world.client.log()).filter((call) => call.status !== 200);
      expect(struck.length).toBeGreaterThanOrEqual(fault.count);
    },
  );
});
