import { afterEach, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { ourFault, tryingAgain } from '../../bot/texts/errors.ts';
import { Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { outlast, WAITS, wait } from '../support/outlast.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable } from '../support/raw-rows.ts';
import { strike } from '../support/strike.ts';

/** Calls that one handling of an update makes before it gives a refused one up. */
const CALLS_A_TRY = 3;
const HELP = 'You help Wren1.';

let stage: QuickStage;

afterEach(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  await stage.world.close();
});

const failures = () => stage.world.logged.filter((line) => line.event === 'update_failed');
const refuse = (count: number) =>
  stage.world.client.setFault({ method: 'sendMessage', mode: 'error', count });
const told = async (text: string) => (await stage.family(0).messagesWith(text)).length;

describe('a tap whose change fails', () => {
  /** Opens the first part's marking on the first phone, with another family at the same point. */
  async function openPart(): Promise<[Phone, Phone]> {
    stage = await openQuickStage({ families: 2 });
    await stage.world.goTo(FRIDAY.evening);
    const phones: [Phone, Phone] = [stage.family(0), stage.family(1)];
    for (const phone of phones) {
      await phone.tap(BUTTONS.start);
      await phone.tap(BUTTONS.someMissed);
    }
    return phones;
  }

  it('is not overtaken by the same person’s next taps, and holds up nobody else', async () => {
    const [struck, other] = await openPart();
    await strike(stage.world.store, 'marking', 1);
    const { client } = stage.world;
    await client.tapLabel(struck.id, '2. ');
    await client.tapLabel(struck.id, BUTTONS.done);
    await client.tapLabel(other.id, BUTTONS.done);
    await stage.world.settle();
    expect(await readTable(stage.world.store, 'mark')).toHaveLength(5);
    expect((await other.last()).text).toContain('Part 2 of 2');
    expect((await struck.last()).text).toContain('Now: 5 of 5');
    await wait(stage.world, WAITS[0]);
    expect((await struck.last()).text).toContain('Part 2 of 2');
    const marks = await readTable(stage.world.store, 'mark');
    expect(marks).toHaveLength(10);
    expect(marks.filter((row) => row.right === false)).toHaveLength(1);
  });

  it('is logged by the kind of its error, not by the framework’s wrapping', async () => {
    const [struck] = await openPart();
    await strike(stage.world.store, 'marking', 1);
    await struck.tap('2. ');
    expect(failures().map(({ fields }) => [fields.tries, fields.problem])).toEqual([
      [1, 'DrizzleQueryError'],
    ]);
  });

  it('is answered at once, and ends with a message when no try helps', async () => {
    const [struck] = await openPart();
    await strike(stage.world.store, 'marking', 99);
    await struck.tap('2. ');
    const { queryId } = (await stage.world.client.answers(struck.id)).at(-1) ?? {};
    expect((await stage.world.client.answers(struck.id)).at(-1)?.text).toBe(tryingAgain());
    expect(await told(ourFault())).toBe(0);
    await outlast(stage.world);
    expect(await told(ourFault())).toBe(1);
    expect((await stage.world.client.answers(struck.id)).at(-1)?.queryId).toBe(queryId);
    expect(failures()).toHaveLength(WAITS.length + 1);
    await outlast(stage.world);
    expect(failures()).toHaveLength(WAITS.length + 1);
    expect(await told(ourFault())).toBe(1);
  });
});

describe('a message whose reply is refused', () => {
  it('is not tried again before its time, and then once more for each failure', async () => {
    stage = await openQuickStage({ families: 1 });
    await refuse(2 * CALLS_A_TRY);
    await stage.family(0).say('/help');
    await stage.world.settle();
    expect(failures()).toHaveLength(1);
    await wait(stage.world, WAITS[0] - 1);
    expect(failures()).toHaveLength(1);
    await wait(stage.world, 1);
    expect(failures()).toHaveLength(2);
    await wait(stage.world, WAITS[1] - 1);
    expect(await told(HELP)).toBe(0);
    await wait(stage.world, 1);
    expect(await told(HELP)).toBe(1);
  });

  it('ends with an apology, which is tried again when it is refused itself', async () => {
    stage = await openQuickStage({ families: 1 });
    await refuse((WAITS.length + 2) * CALLS_A_TRY);
    await stage.family(0).say('/help');
    await outlast(stage.world);
    expect(stage.events().filter((event) => event === 'apology_failed')).toHaveLength(1);
    expect(await told(ourFault())).toBe(0);
    await wait(stage.world, 120);
    expect(await told(ourFault())).toBe(1);
    await outlast(stage.world);
    expect(await stage.received()).toEqual([1]);
  });

  it('keeps nobody waiting for an apology that cannot be made', async () => {
    stage = await openQuickStage({ families: 1 });
    await refuse((WAITS.length + 2) * CALLS_A_TRY);
    await stage.family(0).say('/help');
    await outlast(stage.world);
    await stage.family(0).say('/help');
    expect(await told(HELP)).toBe(1);
  });
});

describe('a message whose reply may have arrived', () => {
  const lose = (method: string, count: number) =>
    stage.world.client.setFault({ method, mode: 'apply_then_drop', count });

  it('is not answered again: one /today is one drill', async () => {
    stage = await openQuickStage({ families: 1 });
    await stage.world.goTo(FRIDAY.evening);
    await lose('sendMessage', 2);
    await stage.family(0).say('/today');
    await outlast(stage.world);
    expect(await stage.received()).toEqual([2]);
    expect(stage.events()).toEqual(['reply_lost']);
  });

  it('still has the rest of its effect: children are added once, and can have links', async () => {
    stage = await openQuickStage({ families: 1 });
    const teacher = new Phone(stage.world, stage.school.teacher);
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap(BUTTONS.addChildren);
    await lose('sendMessage', 2);
    await teacher.say('Otto\nJuniper');
    await outlast(stage.world);
    expect(await teacher.messagesWith('2 children added')).toHaveLength(1);
    expect(await teacher.messagesWith('?start=')).toEqual([]);
    await teacher.tap(BUTTONS.missingLinks);
    await teacher.tap(BUTTONS.makeLinks);
    await outlast(stage.world);
    expect(await teacher.messagesWith('?start=')).toHaveLength(1);
    expect(await readTable(stage.world.store, 'child')).toHaveLength(3);
    expect(await readTable(stage.world.store, 'expectation')).toEqual([]);
  });

  it('brings one table of a week, and one page to print', async () => {
    stage = await openQuickStage({ families: 1 });
    const teacher = new Phone(stage.world, stage.school.teacher);
    await teacher.say('/class');
    for (const label of [BUTTONS.classNow, BUTTONS.weekSoFar]) await teacher.tap(label);
    const { id } = await teacher.last();
    await lose('sendDocument', 2);
    await teacher.tap(BUTTONS.digestTable, id);
    await teacher.tap('Print A4', id);
    await outlast(stage.world);
    const chat = await teacher.chat();
    expect(chat.flatMap((message) => message.document?.fileName ?? []).sort()).toEqual([
      'digest-kingfisher-class-harbour-lane-school-2026-09-18.csv',
      'digest-kingfisher-class-harbour-lane-school-2026-09-18.pdf',
    ]);
    expect(failures()).toEqual([]);
  });
});
