import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { ask } from '../support/phones.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC. The 14th is a Monday.
let world: World;
let school: SmallClass;
let wren: Phone;
let otto: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  school = await makeSmallClass(world, ['Wren', 'Otto', 'Fern']);
  wren = await joinAs(world, 2001, school.links.get('Wren'));
  otto = await joinAs(world, 2002, school.links.get('Otto'));
});
afterAll(() => world.close());

const at = (day: number, time: string) => world.goTo(`2026-09-${day}T${time}:00Z`);
const drills = async (phone: Phone, day: string) =>
  (await phone.messagesWith(day)).filter(({ text }) => !text.includes('Still time')).length;

async function openTimes(): Promise<void> {
  await school.teacher.say('/class');
  await school.teacher.tap(BUTTONS.times);
}

async function typeBreak(text: string): Promise<void> {
  await school.teacher.say('/class');
  await school.teacher.tap(BUTTONS.breaks);
  await school.teacher.tap(BUTTONS.addBreak);
  expect(await ask(school.teacher, text)).toContain('Nothing goes out on');
}

describe('a family’s own time', () => {
  it('set to an hour that is over brings no drill tonight, and the next one at that hour', async () => {
    await at(14, '16:00');
    expect(await ask(wren, '/time 16:30')).toContain(
      'If that is over for today, it starts tomorrow',
    );
    for (const time of ['16:01', '16:30', '16:31', '18:00']) await at(14, time);
    expect(await drills(wren, 'Monday')).toBe(0);
    expect(await drills(otto, 'Monday')).toBe(1);
    await at(15, '15:29');
    expect(await drills(wren, 'Tuesday')).toBe(0);
    await at(15, '15:30');
    expect(await drills(wren, 'Tuesday')).toBe(1);
  });
});

describe('a break', () => {
  it('that begins today and is added before the drill’s time stops tonight’s drill', async () => {
    await at(17, '16:00');
    await typeBreak('2026-09-17 Sports day');
    for (const time of ['16:30', '17:00', '18:00']) await at(17, time);
    expect(await drills(otto, 'Thursday')).toBe(0);
  });

  it('far ahead leaves tonight’s drill alone, even when the drill is late', async () => {
    await at(16, '16:29');
    // Nobody looks at the clock at 17:30, and a minute later the break is typed.
    await world.client.moveTo(new Date('2026-09-16T16:31:00Z'));
    await typeBreak('2026-12-21 to 2027-01-04 Winter break');
    await at(16, '16:32');
    expect(await drills(otto, 'Wednesday')).toBe(1);
  });

  it('that is removed after the drill’s time brings no drill tonight', async () => {
    await at(17, '18:05');
    await school.teacher.say('/class');
    await school.teacher.tap(BUTTONS.breaks);
    await school.teacher.tap('✗ Sports day, Thu 17 Sep');
    for (const time of ['18:06', '18:30', '19:00']) await at(17, time);
    expect(await drills(otto, 'Thursday')).toBe(0);
    await at(18, '16:30');
    expect(await drills(otto, 'Friday')).toBe(1);
  });
});

describe('the digest’s time', () => {
  it('moved to an hour that is over brings this week’s digest at once', async () => {
    const early = await openWorld({ start: '2026-09-14T09:00:00Z' });
    const { teacher } = await makeSmallClass(early, ['Fern']);
    await early.goTo('2026-09-18T18:40:00Z');
    await teacher.say('/class');
    await teacher.tap(BUTTONS.times);
    await teacher.tap('Digest 20:00');
    await ask(teacher, '19:10');
    await early.goTo('2026-09-18T18:41:00Z');
    expect(await teacher.messagesWith('Marks are the helpers’ word')).toHaveLength(1);
    await early.close();
  });
});

describe('the digest’s day', () => {
  it('moved back after the digest came brings no second one, but the next on the new day', async () => {
    const digests = async () =>
      (await school.teacher.messagesWith('practised on')).map(({ date }) => date.slice(0, 10));
    await at(18, '19:00');
    expect(await digests()).toEqual(['2026-09-18']);
    await at(18, '19:05');
    await openTimes();
    await school.teacher.tap('Digest Thu');
    for (const time of ['19:06', '20:00']) await at(18, time);
    await at(19, '09:00');
    expect(await digests()).toEqual(['2026-09-18']);
    await at(24, '19:00');
    expect(await digests()).toEqual(['2026-09-18', '2026-09-24']);
  });
});

describe('a school day', () => {
  it('added after its drill’s time counts from the week after', async () => {
    await at(26, '17:00');
    await openTimes();
    await school.teacher.tap('Sat');
    for (const time of ['17:01', '18:00', '19:00']) await at(26, time);
    expect(await drills(otto, 'Saturday')).toBe(0);
    await world.goTo('2026-10-03T16:30:00Z');
    expect(await drills(otto, 'Saturday')).toBe(1);
  });
});

describe('a helper', () => {
  it('who joins after the drill’s time has the first drill on the next school day', async () => {
    await world.goTo('2026-10-05T19:25:00Z');
    const fern = await joinAs(world, 2003, school.links.get('Fern'));
    await world.goTo('2026-10-05T19:26:00Z');
    expect(await drills(fern, 'Monday')).toBe(0);
    await world.goTo('2026-10-06T16:30:00Z');
    expect(await drills(fern, 'Tuesday')).toBe(1);
  });
});
