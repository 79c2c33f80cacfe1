import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { createDoor, type Door } from '../support/held-calls.ts';
import { leaksOf } from '../support/leaks.ts';
import { outlast } from '../support/outlast.ts';
import { labelsOf, linksOn, newPhone, openAndRead } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

/** Two messages of links: twenty, and four. */
const NAMES = Array.from({ length: 24 }, (_, place) => `Wren${place + 1}`);
const LATER = '2026-09-14T10:00:00Z';
const LIST = 'One link for each child';

let world: World;
let school: SmallClass;
let door: Door;

beforeEach(() => {
  door = createDoor();
});
afterEach(async () => {
  expect(await leaksOf(world)).toEqual([]);
  await world.close();
});

async function open(names: readonly string[]): Promise<void> {
  world = await openWorld({ start: '2026-09-14T09:00:00Z', gate: door.gate });
  school = await makeSmallClass(world, names);
}

const troubles = () =>
  world.logged.filter(({ level }) => level !== 'info').map((line) => line.event);
const refuse = (method: string, count: number) =>
  world.client.setFault({ method, mode: 'error', count });

/** Does something during which one message passes, and the calls after it are refused until the handler gives up. */
async function refuseTheSecond(act: () => Promise<void>): Promise<void> {
  const holding = door.hold('sendMessage', 1, 1);
  const acting = act();
  const [second] = await holding;
  await refuse('sendMessage', 3);
  door.open();
  second?.release('apply');
  await acting;
  await world.client.clearFaults();
}

async function opens(link: string | undefined, id: number): Promise<boolean> {
  return (await openAndRead(await newPhone(world, id), link ?? '')).includes('Heron class');
}

describe('new links in two messages of which the second is refused', () => {
  it('work from the first message, and only the others are made again', async () => {
    await open(NAMES);
    await world.goTo(LATER);
    const { teacher } = school;
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap(BUTTONS.missingLinks);
    const before = (await teacher.messagesWith(LIST)).length;
    await refuseTheSecond(() => teacher.tap(BUTTONS.makeLinks));
    const first = await linksOn(teacher);
    expect(first.get('Wren1')).not.toBe(school.links.get('Wren1'));
    expect(first.get('Wren24')).toBe(school.links.get('Wren24'));
    expect(await opens(first.get('Wren1'), 2001)).toBe(true);
    expect(await opens(first.get('Wren24'), 2024)).toBe(true);
    await outlast(world);
    const lists = (await teacher.messagesWith(LIST)).slice(before);
    expect(lists.map((list) => list.text.match(/\?start=/g)?.length)).toEqual([20, 4]);
    const links = await linksOn(teacher);
    expect(links.get('Wren24')).not.toBe(school.links.get('Wren24'));
    for (const [place, name] of ['Wren20', 'Wren21', 'Wren24'].entries()) {
      expect(await opens(links.get(name), 2030 + place)).toBe(true);
    }
  });
});

describe('a roster whose reply is refused', () => {
  it('is added once, is not read as a roster again, and leads to its links', async () => {
    await open(['Otto']);
    const { teacher } = school;
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap(BUTTONS.addChildren);
    await refuse('sendMessage', 3);
    await teacher.say('Wren\nJuniper');
    await outlast(world);
    expect(await teacher.messagesWith('Nothing was added')).toEqual([]);
    expect((await teacher.last()).text).toContain('/class');
    expect(await readTable(world.store, 'child')).toHaveLength(3);
    expect(await readTable(world.store, 'expectation')).toEqual([]);
    expect(troubles()).toEqual(['update_failed']);
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    expect(labelsOf(await teacher.last())).toContain(BUTTONS.missingLinks);
  });
});

describe('a file of the week that is refused', () => {
  it('comes once, as soon as the service takes it', async () => {
    await open(['Otto']);
    const { teacher } = school;
    await teacher.say('/class');
    for (const label of [BUTTONS.classNow, BUTTONS.weekSoFar]) await teacher.tap(label);
    await refuse('sendDocument', 3);
    await teacher.tap(BUTTONS.digestTable);
    await outlast(world);
    const names = (await teacher.chat()).flatMap(({ document }) => document?.fileName ?? []);
    expect(names).toEqual(['digest-heron-class-2026-09-14.csv']);
  });
});

describe('“I agree” whose screen is refused', () => {
  it('ends on the joined screen of that child, without a second “I agree”', async () => {
    await open(['Otto', 'Wren']);
    const phone = await newPhone(world, 2001);
    await phone.open(school.links.get('Otto') ?? '');
    await phone.tap(BUTTONS.agree);
    await phone.open(school.links.get('Wren') ?? '');
    await refuse('editMessageText', 3);
    await phone.tap(BUTTONS.agree);
    expect(await phone.buttons()).toContain(BUTTONS.agree);
    await outlast(world);
    expect((await phone.last()).text).toContain('You are Wren’s helper now');
    expect(await phone.buttons()).not.toContain(BUTTONS.agree);
    expect(await readTable(world.store, 'consent')).toHaveLength(2);
    expect(troubles()).toEqual(['update_failed']);
  });
});
