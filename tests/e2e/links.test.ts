import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { linksMade } from '../../bot/texts/roster.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { leaksOf } from '../support/leaks.ts';
import { labelsOf, linksOn, newPhone, openAndRead } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

const LIST = 'One link for each child';
const WARNING = 'Links given out before for these children stop working.';

let world: World;
let school: SmallClass;
let teacher: Phone;

beforeEach(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  school = await makeSmallClass(world, ['Wren', 'Otto', 'Juniper']);
  teacher = school.teacher;
  await joinAs(world, 2001, school.links.get('Wren'));
});
afterEach(async () => {
  expect(await leaksOf(world)).toEqual([]);
  await world.close();
});

const lists = () => teacher.messagesWith(LIST);
const slips = async () => (await readTable(world.store, 'slip')).length;

/** Opens a fresh class home and goes to the children; returns the message that all further screens are on. */
async function toChildren(): Promise<ChatMessage> {
  await teacher.say('/class');
  await teacher.tap(BUTTONS.children);
  return teacher.last();
}

async function opens(link: string | undefined, id: number): Promise<boolean> {
  return (await openAndRead(await newPhone(world, id), link ?? '')).includes('Heron class');
}

describe('links for those not joined', () => {
  it('are made only after a warning, for those without a helper alone', async () => {
    const { id } = await toChildren();
    const before = await slips();
    await teacher.tap(BUTTONS.missingLinks, id);
    const asked = await teacher.message(id);
    expect(asked.text).toContain('2 children have no helper');
    expect(asked.text).toContain(WARNING);
    expect(await slips()).toBe(before);
    expect(await lists()).toHaveLength(1);
    await teacher.tap(BUTTONS.makeLinks, id);
    const [, list] = await lists();
    expect(list?.text).toMatch(/Otto\n.+\n.*Juniper\n/);
    expect(list?.text).not.toContain('Wren');
    expect(labelsOf(await teacher.message(id))).toContain(BUTTONS.addChildren);
    expect(await opens(school.links.get('Otto'), 2010)).toBe(false);
    expect(await opens((await linksOn(teacher)).get('Otto'), 2011)).toBe(true);
  });

  it('are made once by two quick taps, whatever the clock says', async () => {
    const { id } = await toChildren();
    await teacher.tap(BUTTONS.missingLinks, id);
    await world.client.tapLabel(teacher.id, BUTTONS.makeLinks, id);
    await world.client.tapLabel(teacher.id, BUTTONS.makeLinks, id);
    await world.settle();
    expect(await lists()).toHaveLength(2);
    expect(labelsOf(await teacher.message(id))).toContain(BUTTONS.missingLinks);
    expect(await opens((await linksOn(teacher)).get('Juniper'), 2010)).toBe(true);
  });

  it('that surely did not arrive kill no earlier link and arrive a little later', async () => {
    const { id } = await toChildren();
    await teacher.tap(BUTTONS.missingLinks, id);
    await world.client.setFault({ method: 'sendMessage', mode: 'error', count: 3 });
    await teacher.tap(BUTTONS.makeLinks, id);
    await world.client.clearFaults();
    expect(await lists()).toHaveLength(1);
    expect(await opens(school.links.get('Otto'), 2010)).toBe(true);
    await world.goTo('2026-09-14T09:05:00Z');
    expect(await lists()).toHaveLength(2);
    expect(await opens((await linksOn(teacher)).get('Otto'), 2011)).toBe(true);
  });

  it('whose list was lost without an answer work, and can be made anew', async () => {
    const { id } = await toChildren();
    await teacher.tap(BUTTONS.missingLinks, id);
    const asked = (await teacher.message(id)).buttons.flat()[0];
    await world.client.setFault({ method: 'sendMessage', mode: 'apply_then_drop', count: 1 });
    await teacher.tap(BUTTONS.makeLinks, id);
    await world.client.clearFaults();
    await world.goTo('2026-09-14T09:05:00Z');
    expect(await lists()).toHaveLength(2);
    expect(await opens((await linksOn(teacher)).get('Otto'), 2010)).toBe(true);
    await world.client.rawCallback(teacher.id, id, asked?.data ?? '');
    await world.settle();
    expect((await world.client.answers(teacher.id)).at(-1)?.text).toBe(linksMade());
    expect(await lists()).toHaveLength(2);
    await teacher.tap(BUTTONS.missingLinks, id);
    await teacher.tap(BUTTONS.makeLinks, id);
    expect(await lists()).toHaveLength(3);
  });

  it('are not offered when everybody has a helper', async () => {
    await joinAs(world, 2002, school.links.get('Otto'));
    await joinAs(world, 2003, school.links.get('Juniper'));
    const { id } = await toChildren();
    await teacher.tap(BUTTONS.missingLinks, id);
    expect((await teacher.message(id)).text).toContain('Every child has a helper');
    expect(labelsOf(await teacher.message(id))).toEqual([BUTTONS.back]);
  });
});

describe('a new link for one child', () => {
  it('is made only after a warning, once by two quick taps, and the next child’s by the next', async () => {
    const { id } = await toChildren();
    await teacher.tap('2. Otto', id);
    await teacher.tap(BUTTONS.newLink, id);
    expect((await teacher.message(id)).text).toContain('given out before stops working');
    expect(await opens(school.links.get('Otto'), 2012)).toBe(true);
    await world.client.tapLabel(teacher.id, BUTTONS.makeLink, id);
    await world.client.tapLabel(teacher.id, BUTTONS.makeLink, id);
    await world.settle();
    expect(await lists()).toHaveLength(2);
    await teacher.tap(BUTTONS.back, id);
    await teacher.tap('3. Juniper', id);
    await teacher.tap(BUTTONS.newLink, id);
    await teacher.tap(BUTTONS.makeLink, id);
    expect(await lists()).toHaveLength(3);
    const fresh = await linksOn(teacher);
    expect(await opens(school.links.get('Otto'), 2013)).toBe(false);
    expect(await opens(fresh.get('Otto'), 2010)).toBe(true);
    expect(await opens(fresh.get('Juniper'), 2011)).toBe(true);
  });
});

describe('a school day', () => {
  it('tapped twice before the screen has changed is turned once', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.times);
    for (const label of ['Sat', '✓ Mon']) {
      await world.client.tapLabel(teacher.id, label);
      await world.client.tapLabel(teacher.id, label);
      await world.settle();
    }
    const [schoolClass] = await readTable(world.store, 'class');
    expect(schoolClass?.weekdays).toEqual([2, 3, 4, 5, 6]);
  });

  it('whose screen failed is still as tapped when the tap is handled again', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.times);
    await world.client.setFault({ method: 'editMessageText', mode: 'error', count: 3 });
    await teacher.tap('Sat');
    await world.client.clearFaults();
    await world.goTo('2026-09-14T09:05:00Z');
    expect(await teacher.buttons()).toContain('✓ Sat');
    const [schoolClass] = await readTable(world.store, 'class');
    expect(schoolClass?.weekdays).toEqual([1, 2, 3, 4, 5, 6]);
  });
});
