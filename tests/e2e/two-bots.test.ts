import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { moveToBot } from '../../db/index.ts';
import { labelsOf, linksOn, newPhone, offersOf } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { NORTH, openTwoBots, SOUTH, type TwoBots } from '../support/two-bots.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC. The 14th is a Monday.
const evening = (day: number) => `2026-09-${day}T16:30:00Z`;
const FAMILY = 2001;

let bots: TwoBots;
let north: SmallClass;
let south: SmallClass;
/** The same person's chats with the two bots. */
let withNorth: Phone;
let withSouth: Phone;
/** The southern teacher's chat with the northern bot. */
let elsewhere: Phone;

beforeAll(async () => {
  bots = await openTwoBots('2026-09-14T09:00:00Z');
  north = await makeSmallClass(bots.north, ['Wren'], { title: 'Kingfisher class' });
  south = await makeSmallClass(bots.south, ['Otter', 'Robin'], { teacherId: 1002 });
  withNorth = await joinAs(bots.north, FAMILY, north.links.get('Wren'));
  withSouth = await joinAs(bots.south, FAMILY, south.links.get('Otter'));
});
afterAll(() => bots.close());

const offers = async (phone: Phone, nickname: string) => (await offersOf(phone, nickname)).length;

describe('a family with children in classes of two bots', () => {
  it('gets each drill from the bot of its class, and marks each there', async () => {
    await bots.goTo(evening(14));
    expect([await offers(withNorth, 'Wren'), await offers(withNorth, 'Otter')]).toEqual([1, 0]);
    expect([await offers(withSouth, 'Wren'), await offers(withSouth, 'Otter')]).toEqual([0, 1]);
    for (const phone of [withNorth, withSouth]) await phone.playEvening();
    expect((await withNorth.last()).text).toContain('5 of 5');
    expect((await withSouth.last()).text).toContain('5 of 5');
    const sent = (await readTable(bots.store, 'ledger')).map((row) => row.bot_id);
    expect(sent.sort()).toEqual([NORTH, SOUTH]);
  });

  it('that blocks one bot still gets the other’s drill', async () => {
    await bots.north.client.block(FAMILY);
    await bots.north.settle();
    await bots.goTo(evening(15));
    expect(await offers(withNorth, 'Wren')).toBe(0);
    expect(await offers(withSouth, 'Otter')).toBe(1);
    await bots.north.client.unblock(FAMILY);
    await bots.north.settle();
  });

  it('sees what is marked with one bot in the other one’s message too', async () => {
    await bots.goTo(evening(16));
    const offer = (await offersOf(withSouth, 'Otter')).at(-1);
    await withNorth.say('/today');
    const asked = (await withNorth.messagesWith('Otter')).at(-1);
    await withNorth.tap(BUTTONS.start, asked?.id);
    await withNorth.tap(BUTTONS.allRight, asked?.id);
    const copy = await withSouth.message(offer?.id ?? 0);
    expect(labelsOf(copy)).not.toContain(BUTTONS.start);
  });
});

describe('the links of a class', () => {
  it('open its own bot, whichever the teacher writes with', async () => {
    elsewhere = await newPhone(bots.north, 1002);
    for (const text of ['/start', '/class']) await elsewhere.say(text);
    await elsewhere.tap(BUTTONS.children);
    await elsewhere.tap(BUTTONS.missingLinks);
    await elsewhere.tap(BUTTONS.makeLinks);
    const [link] = (await linksOn(elsewhere)).values();
    expect(link).toContain(`t.me/bot_${SOUTH}?start=`);
  });
});

describe('a class that is given to the other bot', () => {
  it('reaches a family there that has opened a chat with it, and nobody in the old chat', async () => {
    const moved = await moveToBot(bots.store, { classId: south.scope.classId, botId: NORTH });
    expect(moved.username).toBe(`bot_${NORTH}`);
    const before = await offers(withSouth, 'Otter');
    await bots.goTo(evening(17));
    expect(await offers(withNorth, 'Otter')).toBe(1);
    expect(await offers(withSouth, 'Otter')).toBe(before);
  });

  it('tells the teacher of a family that has not', async () => {
    const other = await joinAs(bots.south, 2002, (await linksOn(elsewhere)).get('Robin'));
    await bots.goTo(evening(18));
    expect(await offers(other, 'Robin')).toBe(0);
    const unreachable = await readTable(bots.store, 'unreachable');
    expect(unreachable).toMatchObject([{ bot_id: NORTH, chat_id: 2002 }]);
    await bots.goTo('2026-09-18T19:00:00Z');
    const digests = await elsewhere.messagesWith('practised on');
    expect(digests.at(-1)?.text).toMatch(/Robin\W+messages no longer arrive/);
  });
});
