import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { issueTeacherInvite } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import {
  ask,
  labelsOf,
  linksOn,
  newPhone,
  openAndRead,
  tapAndHear,
  withoutIsolates,
} from '../support/phones.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { openWorld, type World } from '../support/world.ts';

/** Names that look like markup, are written from right to left, or are made of more than one code point a character. */
const NAMES = ['Wren', '<b>Bob</b> & *x* _y_ [z](u)', 'אור', 'نور', '👩‍🚀 Ace', 'Otto B'] as const;

let world: World;
let teacher: Phone;
let stranger: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  teacher = await newPhone(world, 1001);
  stranger = await newPhone(world, 1002);
});
afterAll(() => world.close());

async function theClass() {
  const [row] = await readTable(world.store, 'class');
  return row ?? {};
}

describe('becoming a teacher', () => {
  it('makes one person a teacher by one link, and the second person with the link nobody', async () => {
    const link = world.app.linkOf(`t-${await issueTeacherInvite(world.store, world.now())}`);
    expect(await openAndRead(teacher, link)).toContain('You are a teacher here now');
    expect(await openAndRead(stranger, link)).toContain('This invitation is not valid any more');
    expect(await readTable(world.store, 'teacher')).toHaveLength(1);
  });

  it('makes no class for a stranger, who is told what to do instead', async () => {
    expect(await ask(stranger, '/newclass')).toContain('ask the person who runs this bot');
    await stranger.say('Stolen class');
    await stranger.say('Europe/London');
    expect(await readTable(world.store, 'class')).toHaveLength(0);
  });
});

describe('making a class', () => {
  it('asks for a title and a zone, and keeps asking until it knows the zone', async () => {
    expect(await ask(teacher, '/newclass')).toContain('What is the class called?');
    expect(await ask(teacher, 'x'.repeat(61))).toContain('1 to 60 characters');
    expect(await ask(teacher, 'Kingfisher class')).toContain('Which time zone');
    const refused = await ask(teacher, 'Mars/Base');
    expect(refused).toContain('“Mars/Base”');
    expect(refused).toContain('like Europe/London');
    expect(await readTable(world.store, 'class')).toHaveLength(0);
    expect(await ask(teacher, 'europe/london')).toContain('The class is there');
    expect(await theClass()).toMatchObject({ title: 'Kingfisher class', zone: 'Europe/London' });
  });

  it('adds and removes a school day with a tap, but never the last one', async () => {
    await teacher.tap('Sat');
    expect((await theClass()).weekdays).toEqual([1, 2, 3, 4, 5, 6]);
    for (const day of ['Mon', 'Tue', 'Wed', 'Thu', 'Fri']) await teacher.tap(`✓ ${day}`);
    expect(await tapAndHear(teacher, '✓ Sat')).toContain('At least one school day is needed');
    expect((await theClass()).weekdays).toEqual([6]);
    for (const day of ['Mon', 'Tue', 'Wed', 'Thu', 'Fri']) await teacher.tap(day);
    await teacher.tap('✓ Sat');
    expect((await theClass()).weekdays).toEqual([1, 2, 3, 4, 5]);
  });

  it('names what is wrong with an evening time and waits for a better one', async () => {
    await teacher.tap('Drill 17:30');
    expect(await ask(teacher, '25:99')).toMatch(/“25:99” is not a time.+00:00 to 23:59/s);
    expect(await ask(teacher, '05:00')).toMatch(/“05:00”.+from 06:00 to 20:00/s);
    expect((await theClass()).evening_time).toBe('17:30');
    expect(await ask(teacher, '5 pm')).toContain('Saved');
    expect((await theClass()).evening_time).toBe('17:00');
  });

  it('says why a nudge is too early or too late', async () => {
    await teacher.tap('Nudge 19:00');
    expect(await ask(teacher, '17:15')).toContain('at least 45 minutes after the evening time');
    expect(await ask(teacher, '21:30')).toContain('at 20:45 at the latest');
    expect(await ask(teacher, '18:30')).toContain('Saved');
    expect((await theClass()).nudge_time).toBe('18:30');
  });

  it('sets the digest’s day with a tap and its time by typing', async () => {
    await teacher.tap('Digest Thu');
    expect(labelsOf(await theTimes())).toContain('Digest ✓ Thu');
    await teacher.tap('Digest ✓ Thu');
    await teacher.tap('Digest Fri');
    await teacher.tap('Digest 20:00');
    expect(await ask(teacher, 'after tea')).toContain('“after tea” is not a time');
    await teacher.say('19.15');
    expect(await theClass()).toMatchObject({ digest_weekday: 5, digest_time: '19:15' });
  });
});

async function theTimes() {
  const [message] = await teacher.messagesWith('days and times');
  if (!message) throw new Error('the days and times were not shown');
  return message;
}

describe('the roster', () => {
  it('names every problem by its line and adds nothing', async () => {
    await teacher.tap(BUTTONS.addChildren);
    const refused = await ask(teacher, `Wren\n\nwren\n${'Longfellow '.repeat(6)}\n2. Otto\nOtto`);
    expect(refused).toContain('Nothing was added yet');
    expect(refused).toMatch(/Line 3: “wren” is also on line 1/);
    expect(refused).toMatch(/Line 4: .+ has 65 characters, at most 30/);
    expect(refused).toMatch(/Line 6: “Otto” is also on line 5/);
    expect(refused).not.toMatch(/Line [125]:/);
    expect(await ask(teacher, ' \n\u200b\n')).toContain('I found no nicknames');
    expect(await readTable(world.store, 'child')).toHaveLength(0);
  });

  it('takes the whole list once it is mended, and answers with one short screen', async () => {
    const added = await ask(teacher, `\n${NAMES.join('\n\n')}\n`);
    expect(added).toContain('6 children added');
    expect(added.split('\n').length).toBeLessThan(10);
    expect(await teacher.buttons()).toEqual([
      BUTTONS.slipsToPrint,
      BUTTONS.missingLinks,
      BUTTONS.firstPlan,
      BUTTONS.undo,
      BUTTONS.back,
    ]);
    const children = await readTable(world.store, 'child');
    expect(children.map((child) => child.nickname).sort()).toEqual([...NAMES].sort());
  });

  it('makes no link until the teacher asks, and then one for each child', async () => {
    await teacher.tap(BUTTONS.missingLinks);
    expect(await readTable(world.store, 'slip')).toEqual([]);
    expect(await teacher.messagesWith('?start=')).toEqual([]);
    await teacher.tap(BUTTONS.makeLinks);
    const links = await linksOn(teacher);
    expect([...links.keys()]).toEqual(NAMES);
    expect(new Set(links.values()).size).toBe(NAMES.length);
  });

  it('refuses a name that is there already when more are added', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap(BUTTONS.addChildren);
    expect(await ask(teacher, 'WREN')).toContain('is in the class already');
    expect(await readTable(world.store, 'child')).toHaveLength(NAMES.length);
  });

  it('shows every name exactly as typed on the digest’s call list', async () => {
    await teacher.say('/class');
    for (const label of [BUTTONS.classNow, BUTTONS.weekSoFar, BUTTONS.families]) {
      await teacher.tap(label);
    }
    const families = await teacher.last();
    const text = withoutIsolates(families.text);
    for (const [index, name] of NAMES.slice(0, 5).entries()) {
      expect(text).toContain(`${index + 1}. ${name}: no helper has joined yet`);
    }
    expect(text).toContain('page 1 of 2');
    // Commands and addresses are found by the chat service itself; formatting comes from us alone.
    const ours = families.entities
      .map((entity) => entity.type)
      .filter((type) => type !== 'bot_command');
    expect(ours).toEqual(['bold']);
  });
});

describe('a class with children', () => {
  it('is given one first plan by two quick taps, as a draft', async () => {
    await teacher.say('/class');
    const { id } = await teacher.last();
    for (const label of [BUTTONS.firstPlan, 'Year 2']) {
      await world.client.tapLabel(teacher.id, label, id);
      await world.client.tapLabel(teacher.id, label, id);
      await world.settle();
    }
    expect(labelsOf(await teacher.message(id))).toContain(BUTTONS.usePlan);
    const plans = await readTable(world.store, 'week_plan');
    expect(plans.map(({ status }) => status)).toEqual(['draft']);
  });

  it('has codes of 80 bits or more, of which none is kept', async () => {
    const stored = [...(await dumpAll(world.store)).values()].join('\n');
    for (const link of (await linksOn(teacher)).values()) {
      const code = new URL(link).searchParams.get('start') ?? '';
      expect(Buffer.from(code, 'base64url').length * 8).toBeGreaterThanOrEqual(80);
      expect(stored).not.toContain(code);
    }
  });

  it('tells no name and no typed text to the log', async () => {
    expect(world.logged.length).toBeGreaterThan(0);
    expect(await leaksOf(world)).toEqual([]);
  });
});
