import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { activatePlan, createClass, getClass, saveDraftPlan } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, labelsOf, newPhone, offersOf, openAndRead, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { time } from '../support/term.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let school: SmallClass;
let teacher: Phone;
let wrensHelper: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  school = await makeSmallClass(world, ['Wren', 'Otter', 'Robin'], { title: 'Kingfisher class' });
  teacher = school.teacher;
  wrensHelper = await joinAs(world, 2001, school.links.get('Wren'));
  await joinAs(world, 2002, school.links.get('Otter'));
  await makeHeronClass();
});
afterAll(() => world.close());

/** A class of the same teacher that practises half an hour later, something else. */
async function makeHeronClass(): Promise<void> {
  const { teacherId } = school.scope;
  const settings = {
    title: 'Heron class',
    zone: 'Europe/London',
    weekdays: [1, 2, 3, 4, 5] as const,
    eveningTime: time('18:00'),
    nudgeTime: time('19:30'),
    digestWeekday: 5,
    digestTime: time('20:00'),
  } as const;
  const now = world.now();
  const { id: classId } = await createClass(world.store, { teacherId, settings, now });
  const scope = { teacherId, classId };
  const plan = { parts: [{ rung: 'doubles.to5', cards: 5, seconds: 3 }] } as const;
  await saveDraftPlan(world.store, scope, { plan, now });
  await activatePlan(world.store, scope, now);
}

/** Opens a class's list on a fresh message and returns the message all further screens are on. */
async function toChildren(title = 'Kingfisher class'): Promise<number> {
  await teacher.say('/class');
  await teacher.tap(title);
  await teacher.tap(BUTTONS.children);
  return (await teacher.last()).id;
}

const shown = async (id: number) => (await teacher.message(id)).text;
const buttonsOf = async (id: number) => labelsOf(await teacher.message(id));
const childRow = async (nickname: string) =>
  (await readTable(world.store, 'child')).find((row) => row.nickname === nickname);

describe('renaming a child', () => {
  it('asks for a nickname, refuses one that is taken or too long, and takes the next', async () => {
    const id = await toChildren();
    await teacher.tap('3. Robin', id);
    await teacher.tap(BUTTONS.renameChild, id);
    expect((await teacher.last()).text).toContain('What shall Robin be called?');
    expect(await ask(teacher, '/help')).toContain('Send the child’s new nickname, or tap Cancel.');
    expect(labelsOf(await teacher.last())).toEqual([BUTTONS.cancel]);
    expect(await ask(teacher, 'WREN')).toContain('“WREN”\nAnother child of that class has this');
    expect(await ask(teacher, 'x'.repeat(31))).toContain('has 31 characters, at most 30');
    expect(await ask(teacher, '\u200b')).toContain('I see no nickname in that');
    expect(await ask(teacher, ' Finch ')).toBe(
      'Robin is called Finch now, in everything from here on.',
    );
    expect((await childRow('Finch'))?.number).toBe(3);
    await teacher.say('Owl');
    expect(await childRow('Owl')).toBeUndefined();
  });
});

describe('archiving a child', () => {
  it('takes it off the list by one tap, and a second tap shows the same', async () => {
    const id = await toChildren();
    await teacher.tap('3. Finch', id);
    await world.client.tapLabel(teacher.id, BUTTONS.archiveChild, id);
    await world.client.tapLabel(teacher.id, BUTTONS.archiveChild, id);
    await world.settle();
    expect(await shown(id)).toContain('Finch is archived.');
    expect(await buttonsOf(id)).toEqual([BUTTONS.undo, BUTTONS.back]);
    expect((await readTable(world.store, 'act')).filter(isArchiving)).toHaveLength(1);
  });

  it('is taken back by Undo, which a second tap does not do again', async () => {
    const id = (await teacher.last()).id;
    await world.client.tapLabel(teacher.id, BUTTONS.undo, id);
    await world.client.tapLabel(teacher.id, BUTTONS.undo, id);
    await world.settle();
    expect(await shown(id)).toMatch(/^That was taken back already\.\n\nKingfisher class\n/);
    expect((await childRow('Finch'))?.archived_at).toBeNull();
  });

  it('shows it among the archived, from where it comes back by a tap', async () => {
    const id = await toChildren();
    await teacher.tap('3. Finch', id);
    await teacher.tap(BUTTONS.archiveChild, id);
    await teacher.tap(BUTTONS.back, id);
    expect(await buttonsOf(id)).not.toContain('3. Finch');
    await teacher.tap(BUTTONS.archivedChildren, id);
    await teacher.tap('3. Finch', id);
    expect(await shown(id)).toContain('Finch is on the list again.');
    await teacher.tap(BUTTONS.back, id);
    expect(await buttonsOf(id)).toContain('3. Finch');
  });

  it('is on the list of the day under /undo, where it says that it clashes by now', async () => {
    expect(await ask(teacher, '/undo')).toContain('What can be taken back');
    expect(await tapAndHear(teacher, 'Finch archived')).toContain('can no longer be taken back');
    expect(await ask(wrensHelper, '/undo')).toContain('/undo is for teachers');
  });
});

function isArchiving({ kind }: { readonly kind?: unknown }): boolean {
  return kind === 'childArchived';
}

describe('moving a child', () => {
  it('tells its helper once, in one message, and nobody else', async () => {
    const id = await toChildren();
    await teacher.tap('✓ 1. Wren', id);
    await teacher.tap(BUTTONS.moveChild, id);
    expect(await buttonsOf(id)).toEqual(['Heron class', BUTTONS.back]);
    await world.client.tapLabel(teacher.id, 'Heron class', id);
    await world.client.tapLabel(teacher.id, 'Heron class', id);
    await world.settle();
    expect(await shown(id)).toContain('Wren is in Heron class now, with the number 1.');
    expect(await wrensHelper.messagesWith('is in Heron class now')).toHaveLength(1);
    expect(
      (await readTable(world.store, 'ledger')).filter(({ kind }) => kind === 'moved'),
    ).toHaveLength(1);
  });

  it('brings one drill in the evening, by the new class’s plan and at its time', async () => {
    await world.goTo('2026-09-14T16:30:00Z');
    expect(await offersOf(wrensHelper, 'Wren')).toHaveLength(0);
    await world.goTo('2026-09-14T17:00:00Z');
    const offers = await offersOf(wrensHelper, 'Wren');
    expect(offers).toHaveLength(1);
    await wrensHelper.tap(BUTTONS.start, offers[0]?.id);
    expect((await wrensHelper.message(offers[0]?.id ?? 0)).text).toContain('doubles');
  });

  it('back in the evening leaves the drill that came, and the next one is the old class’s', async () => {
    const id = await toChildren('Heron class');
    await teacher.tap('✓ 1. Wren', id);
    await teacher.tap(BUTTONS.moveChild, id);
    await teacher.tap('Kingfisher class', id);
    // Its old number stays its own; a new move gets a new one.
    expect(await shown(id)).toContain('Wren is in Kingfisher class now, with the number 4.');
    await wrensHelper.tap(BUTTONS.allRight);
    expect((await readTable(world.store, 'part_score')).length).toBe(1);
    await world.goTo('2026-09-15T16:30:00Z');
    await world.goTo('2026-09-15T17:00:00Z');
    const evenings = await readTable(world.store, 'evening');
    const child = await childRow('Wren');
    const days = evenings.filter((row) => row.child_id === child?.id).map((row) => row.day);
    expect(days).toEqual(['2026-09-14', '2026-09-15']);
    expect((await wrensHelper.last()).text).toContain('Wren · ');
  });
});

describe('another teacher', () => {
  it('of the class finds the child no more once it is in a class they do not teach', async () => {
    const id = await toChildren();
    await teacher.tap('3. Finch', id);
    const stranger = await newPhone(world, 3001);
    await stranger.say('/start');
    const message = await teacher.message(id);
    for (const { data } of message.buttons.flat()) {
      await world.client.forgeTap({
        fromAccountId: stranger.id,
        chatId: stranger.id,
        messageId: (await stranger.last()).id,
        data: data ?? '',
      });
    }
    await world.settle();
    expect((await childRow('Finch'))?.archived_at).toBeNull();
    expect((await stranger.chat()).filter(({ text }) => text.includes('Finch'))).toEqual([]);
  });

  it('is told nothing by the log, and nor is anybody who reads it', async () => {
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
    expect(await leaksOf(world)).toEqual([]);
  });

  it('who opens the link of an archived child finds it dead, and alive again once it is back', async () => {
    const phone = await newPhone(world, 3002);
    const link = school.links.get('Otter') ?? '';
    const id = await toChildren();
    await teacher.tap('✓ 2. Otter', id);
    await teacher.tap(BUTTONS.archiveChild, id);
    expect(await openAndRead(phone, link)).toContain('not valid');
    await teacher.tap(BUTTONS.undo, id);
    expect(await openAndRead(phone, link)).toContain('Otter · Kingfisher class');
  });
});

describe('the family of a child', () => {
  it('that moved to a class without a plan is promised no day', async () => {
    const { teacherId } = school.scope;
    const { id: _id, digestSince: _since, ...settings } = await getClass(world.store, school.scope);
    const plover = { ...settings, title: 'Plover class' };
    await createClass(world.store, { teacherId, settings: plover, now: world.now() });
    const id = await toChildren();
    await teacher.tap('✓ 4. Wren', id);
    await teacher.tap(BUTTONS.moveChild, id);
    await teacher.tap('Plover class', id);
    const [told] = await wrensHelper.messagesWith('is in Plover class now');
    expect(told?.text).toContain('as soon as the teacher has made a plan');
    expect(told?.text).not.toContain('From the next evening on');
  });

  it('that is archived is told so, whatever it asks, and can still leave', async () => {
    const stopped = 'Practice for Otter has stopped. Please ask the school';
    const ottersHelper = await newPhone(world, 2002);
    expect(await ask(ottersHelper, '/help')).toContain('You help Otter.');
    const id = await toChildren();
    await teacher.tap('✓ 2. Otter', id);
    await teacher.tap(BUTTONS.archiveChild, id);
    for (const text of ['/today', '/help', '/time 18:00', '/show', 'hello']) {
      const heard = await ask(ottersHelper, text);
      expect(heard).toContain(stopped);
      expect(heard).not.toContain('Hello.');
    }
    expect(await ask(ottersHelper, '/stop')).toContain('Stop helping Otter?');
    await ottersHelper.tap(BUTTONS.leave);
    expect(await ask(ottersHelper, '/today')).toContain('open the join link');
  });
});
