import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { linkMade } from '../../bot/texts/teachers.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, newPhone, openAndRead, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let school: SmallClass;
let lead: Phone;
let colleague: Phone;
let family: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z', teachers: 'open' });
  school = await makeSmallClass(world, ['Wren', 'Otter'], { title: 'Kingfisher class' });
  lead = school.teacher;
  family = await joinAs(world, 2001, school.links.get('Wren'));
  colleague = await newPhone(world, 1002);
});
afterAll(async () => {
  expect(await leaksOf(world)).toEqual([]);
  expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  await world.close();
});

async function openTeachers(phone: Phone): Promise<string> {
  await phone.say('/class');
  await phone.tap(BUTTONS.teachers);
  return (await phone.last()).text;
}

const linkOn = async (phone: Phone) =>
  /\S+\?start=t-\S+/.exec((await phone.last()).text)?.[0] ?? '';

const roles = async () =>
  (await readTable(world.store, 'class_teacher')).map((row) => String(row.role)).sort();

describe('a co-teacher', () => {
  it('is invited by one link: two quick taps make one, and the second is told so', async () => {
    expect(await openTeachers(lead)).toContain('You alone.');
    await world.client.tapLabel(lead.id, BUTTONS.inviteTeacher);
    await world.client.tapLabel(lead.id, BUTTONS.inviteTeacher);
    await world.settle();
    expect((await world.client.answers(lead.id)).at(-1)?.text).toBe(linkMade());
    expect(await readTable(world.store, 'teacher_invite')).toHaveLength(2);
    expect(await openAndRead(colleague, await linkOn(lead))).toContain(
      'You teach Kingfisher class now, as a co-teacher.',
    );
    expect(await roles()).toEqual(['co', 'lead']);
    expect((await lead.messagesWith('I show it only now')).length).toBe(1);
  });

  it('gets the digest, does everything else, and has no button to invite or archive', async () => {
    expect(await openTeachers(colleague)).toContain('You and 1 more. You are a co-teacher.');
    expect(await colleague.buttons()).toEqual([BUTTONS.leaveClass, BUTTONS.classes, BUTTONS.back]);
    await world.goTo('2026-09-18T19:00:00Z');
    const digests = (await readTable(world.store, 'ledger')).filter(
      ({ kind }) => kind === 'digest',
    );
    expect(digests.map(({ status }) => status)).toEqual(['sent', 'sent']);
  });

  it('is removed with a tap, and is back with Undo', async () => {
    await colleague.say('/class');
    for (const label of [BUTTONS.breaks, BUTTONS.addBreak]) await colleague.tap(label);
    await openTeachers(lead);
    const [removal] = (await lead.buttons()).filter((label) => label.startsWith('✗ Co-teacher 1'));
    await lead.tap(removal ?? '');
    expect((await lead.last()).text).toContain('They see nothing of this class any more');
    // The question that was open is about nothing of theirs any more, and is dropped.
    expect(await ask(colleague, '12 Oct Fair')).toContain('not yours to change');
    expect(await ask(colleague, '12 Oct Fair')).toContain('I did not expect a message');
    expect(await ask(colleague, '/class')).toContain('None at the moment');
    await lead.tap(BUTTONS.undo);
    expect((await lead.last()).text).toContain('Taken back: co-teacher removed.');
    expect(await ask(colleague, '/class')).toContain('Kingfisher class');
  });
});

describe('handing over', () => {
  it('is cancelled with a tap, and the link is dead then', async () => {
    await openTeachers(lead);
    await lead.tap(BUTTONS.handOver);
    const dead = await linkOn(lead);
    await lead.tap(BUTTONS.cancelHandOver);
    expect(await openAndRead(colleague, dead)).toContain('not valid any more');
    expect(await roles()).toEqual(['co', 'lead']);
  });

  it('makes the taker the lead and tells the giver, who can then leave', async () => {
    await openTeachers(lead);
    await lead.tap(BUTTONS.handOver);
    expect(await openAndRead(colleague, await linkOn(lead))).toContain('as its lead teacher');
    expect((await lead.last()).text).toContain('Kingfisher class has a new lead teacher.');
    expect(await tapAndHear(lead, BUTTONS.archiveClass)).toContain('Only the lead teacher');
    await openTeachers(lead);
    await lead.tap(BUTTONS.leaveClass);
    await lead.tap(BUTTONS.reallyLeave);
    expect((await lead.last()).text).toContain('You have left the class.');
    expect(await roles()).toEqual(['lead']);
  });
});

describe('a class that is archived', () => {
  it('by mistake and taken back at once is no news to anybody', async () => {
    await openTeachers(colleague);
    await colleague.tap(BUTTONS.archiveClass);
    await colleague.tap(BUTTONS.undo);
    expect((await colleague.last()).text).toContain('Taken back: class archived.');
    await world.goTo('2026-09-19T12:00:00Z');
    expect(await family.messagesWith('has ended')).toEqual([]);
  });

  it('sends no drill any more, and each family hears once that practice ends', async () => {
    await world.goTo('2026-09-21T16:00:00Z');
    await openTeachers(colleague);
    await colleague.tap(BUTTONS.archiveClass);
    const before = (await family.chat()).length;
    await world.goTo('2026-09-21T16:45:00Z');
    expect(await family.chat()).toHaveLength(before);
    await world.goTo('2026-09-21T17:05:00Z');
    await world.goTo('2026-09-22T10:00:00Z');
    expect((await family.chat()).length).toBe(before + 1);
    expect((await family.last()).text).toBe(
      'Practice in Kingfisher class has ended.\nNo more drills come for Wren. You need to do nothing.\nThank you for every evening. Questions? Please ask the class teacher.',
    );
    expect(await ask(colleague, '/class')).toContain('None at the moment');
  });

  it('is brought back off the list of the day; who was told that it ends is told that it goes on', async () => {
    await colleague.say('/undo');
    const [act] = (await colleague.buttons()).filter((label) => label.includes('class archived'));
    await colleague.tap(act ?? '');
    expect((await colleague.last()).text).toContain('Taken back: class archived.');
    expect((await family.last()).text).toContain('goes on after all');
    await world.goTo('2026-09-22T16:30:00Z');
    expect(await family.buttons()).toContain(BUTTONS.start);
  });
});

describe('several classes', () => {
  it('are chosen from a list, and /newclass makes another', async () => {
    for (const text of ['/newclass', 'Heron class', 'new york']) await colleague.say(text);
    for (const text of ['/newclass', 'Heron class 2']) await colleague.say(text);
    // The zones of the teacher's other classes are offered first.
    const [, newYork = ''] = await colleague.buttons();
    expect(newYork).toMatch(/^New York · \d\d:\d\d$/);
    await colleague.tap(newYork);
    await colleague.say('/class');
    const classes = ['Heron class', 'Heron class 2', 'Kingfisher class'];
    expect((await colleague.buttons()).slice(0, 3).toSorted()).toEqual(classes);
    expect((await colleague.buttons()).at(-1)).toBe(BUTTONS.newClass);
    expect((await readTable(world.store, 'class')).map((row) => row.zone).sort()).toEqual([
      'America/New_York',
      'America/New_York',
      'Europe/London',
    ]);
  });

  it('keep a question that is cancelled from being answered later', async () => {
    await colleague.tap('Heron class');
    await colleague.tap(BUTTONS.times);
    await colleague.tap(BUTTONS.zone);
    await colleague.tap(BUTTONS.cancel);
    expect((await colleague.last()).text).toContain('Left as it was.');
    expect(await ask(colleague, 'Europe/London')).toContain('I did not expect a message');
    const zones = (await readTable(world.store, 'class')).map((row) => row.zone);
    expect(zones.filter((zone) => zone === 'America/New_York')).toHaveLength(2);
  });
});

describe('where anybody may become a teacher', () => {
  it('/teach makes one of whoever sends it, and twice is once', async () => {
    const stranger = await newPhone(world, 1003);
    expect(await ask(stranger, '/start')).toContain('Teachers: send /teach to begin.');
    expect(await ask(stranger, '/teach')).toContain('You are a teacher here now');
    expect(await ask(stranger, '/teach')).toContain('None at the moment');
    const teachers = await readTable(world.store, 'teacher');
    expect(teachers.filter((row) => Number(row.chat_id) === 1003)).toHaveLength(1);
  });
});
