import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ACTIONS } from '../../bot/callback/actions.ts';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { findHelperByChat, readDataUsed } from '../../db/index.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { tapEverythingTwice } from '../support/crawl.ts';
import { ask, labelsOf, newPhone, openAndRead, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

/** The last two school days of September 2026; 17:30 in London is 16:30 UTC. */
const TUESDAY = { morning: '2026-09-29T09:00:00Z', evening: '2026-09-29T17:00:00Z' };
const WEDNESDAY = '2026-09-30T17:00:00Z';

let world: World;
let school: SmallClass;
let wren: Phone;
let robin: Phone;
/** Each new message that left: to whom, and whether without a sound. */
const sent: { readonly to: number; readonly quiet: boolean }[] = [];

beforeAll(async () => {
  world = await openWorld({
    start: TUESDAY.morning,
    gate: async ({ method, params }) => {
      if (method.startsWith('send')) {
        sent.push({
          to: Number(params.chat_id),
          quiet: String(params.disable_notification) === 'true',
        });
      }
      return 'apply';
    },
  });
  school = await makeSmallClass(world, ['Wren', 'Robin', 'Otter']);
}, 60_000);
afterAll(() => world.close());

const linkFor = (name: string) => school.links.get(name) ?? '';
const idOf = async (phone: Phone) =>
  (await findHelperByChat(world.store, phone.id))?.id ?? 'nobody';
/** What is stored of a helper and its children. */
async function storedOf(phone: Phone) {
  const id = await idOf(phone);
  const rows = async (table: string) => await readTable(world.store, table);
  return {
    helper: (await rows('helper')).find((row) => row.id === id),
    ties: (await rows('helper_child')).filter((row) => row.helper_id === id),
    proofs: (await rows('consent')).filter((row) => row.helper_id === id),
  };
}

describe('after agreeing', () => {
  it('there are three short choices on the same message, and each is kept', async () => {
    wren = await joinAs(world, 2001, linkFor('Wren'));
    const { id, text } = await wren.last();
    expect(text).toContain('You are Wren’s helper now');
    expect(text).toContain('Who are you to Wren?');
    await wren.tap('Parent or guardian');
    expect((await wren.last()).text).toContain('When shall the drill come?');
    await wren.tap('18:00');
    expect((await wren.last()).text).toContain('How shall the cards be shown?');
    await wren.tap('Words only');
    expect(await wren.last()).toMatchObject({
      id,
      text: expect.stringContaining('Wren’s drill comes Mon to Fri at 18:00.'),
      buttons: [],
    });
    const { helper, ties } = await storedOf(wren);
    expect([helper?.way, ties[0]?.relation]).toEqual(['words', 'parent']);
  });

  it('none of them has to be made: whoever stops there has the class’s time and the usual way', async () => {
    robin = await joinAs(world, 2002, linkFor('Robin'));
    const { helper, ties } = await storedOf(robin);
    expect([helper?.way, ties[0]?.relation]).toEqual(['clip', null]);
    for (const label of ['Rather not say', 'Keep as it is', 'Keep as it is'])
      await robin.tap(label);
    expect((await robin.last()).text).toContain('Robin’s drill comes Mon to Fri at 17:30.');
    const [child] = (await readTable(world.store, 'child')).filter(
      (row) => row.nickname === 'Robin',
    );
    expect([child?.evening_time, (await storedOf(robin)).ties[0]?.relation]).toEqual([null, null]);
  });

  it('the age of a helping brother or sister is the one the teacher chose', async () => {
    const { teacher } = school;
    await teacher.say('/class');
    for (const label of [BUTTONS.times, 'Age of helping siblings', '14']) await teacher.tap(label);
    expect(await teacher.buttons()).toContain('✓ 14');
    const otter = await joinAs(world, 2003, linkFor('Otter'));
    expect(await otter.buttons()).toContain('Brother or sister, 14 or over');
    await otter.say('/settings');
    await otter.tap('Monthly picture');
    expect(await otter.buttons()).not.toContain('✓ Monthly picture');
  });
});

describe('a family’s settings', () => {
  it('say what a switch does when it is turned, and show it with a tick', async () => {
    await wren.say('/settings');
    expect(await tapAndHear(wren, 'Without a sound')).toBe(
      'What comes by itself makes no sound from now on.',
    );
    expect(await wren.buttons()).toContain('✓ Without a sound');
    await wren.tap('How cards are shown');
    expect(await wren.buttons()).toContain('✓ Words only');
    await wren.tap('To the settings');
    await wren.tap('Drill at 18:00');
    await wren.tap('To the settings');
    expect(await wren.buttons()).toContain('✓ Without a sound');
  });

  it('let what comes by itself come without a sound on that phone, and on no other', async () => {
    sent.length = 0;
    await world.goTo(TUESDAY.evening);
    const quietAt = (to: number) => sent.filter((each) => each.to === to).map(({ quiet }) => quiet);
    expect([quietAt(wren.id), quietAt(robin.id)]).toEqual([[true], [false]]);
    await wren.say('/help');
    expect(quietAt(wren.id)).toEqual([true, false]);
  });
});

/** What came after the message of a result. */
async function afterResult(phone: Phone, result: number): Promise<readonly ChatMessage[]> {
  return (await phone.chat()).filter((each) => each.from === 'bot' && each.id > result);
}

async function play(phone: Phone, nickname: string): Promise<number> {
  const offer = (await phone.messagesWith(`${nickname} · `)).findLast((each) =>
    labelsOf(each).includes(BUTTONS.start),
  );
  if (!offer) throw new Error(`no evening of ${nickname}`);
  await phone.playEvening(() => [], offer.id);
  return offer.id;
}

describe('the end of an evening', () => {
  it('tells how many evenings were practised, and on an ordinary day nothing follows', async () => {
    const result = await play(robin, 'Robin');
    expect((await robin.message(result)).text).toContain('One evening practised so far.');
    expect(await afterResult(robin, result)).toEqual([]);
  });

  it('brings the picture of the month on its last school day, once, as an answer to the evening', async () => {
    await world.goTo(WEDNESDAY);
    const before = (await robin.chat()).length;
    const result = await play(robin, 'Robin');
    const [month, ...more] = await afterResult(robin, result);
    expect(more).toEqual([]);
    expect(month?.photo).toBeDefined();
    expect(month?.text).toMatch(/^Robin’s September\n2 evenings practised together\./);
    expect((await robin.chat()).length).toBe(before + 1);
    await robin.tap(BUTTONS.fix, result);
    await robin.tap('adding within 10', result);
    await robin.tap(BUTTONS.done, result);
    expect((await robin.chat()).length).toBe(before + 1);
  });

  it('brings it in words to who chose words only, and not at all to who turned it off', async () => {
    const result = await play(wren, 'Wren');
    const [month] = await afterResult(wren, result);
    expect(month?.photo).toBeUndefined();
    expect(month?.text).toContain('Wren’s September\nOne evening practised together.');
    expect(month?.text).toContain('number bonds: 5 of 5 right in twelve weeks');
    const otter = await newPhone(world, 2003);
    expect(await afterResult(otter, await play(otter, 'Otter'))).toEqual([]);
  });

  it('has used data by then, which the settings tell as an estimate', async () => {
    const now = world.now();
    const [inWords, inPictures] = [
      await readDataUsed(world.store, { helperId: await idOf(wren), now }),
      await readDataUsed(world.store, { helperId: await idOf(robin), now }),
    ];
    expect(inWords).toBeGreaterThan(1_000);
    expect(inPictures).toBeGreaterThan(2 * inWords);
    expect(await ask(robin, '/settings')).toMatch(/Sent to you this month: about \d/);
  });
});

describe('passing the phone on', () => {
  it('makes one link however often it is tapped, and by it one more adult joins after reading the notice', async () => {
    await wren.say('/share');
    const asked = await wren.last();
    expect(asked.text).toContain('Wren has one helper now.');
    const data = asked.buttons.flat().find(({ text }) => text === 'Make the link')?.data ?? '';
    for (const _ of [1, 2]) await world.client.rawCallback(wren.id, asked.id, data);
    await world.settle();
    const [link, ...others] = await wren.messagesWith('?start=');
    expect(others).toEqual([]);
    expect((await wren.message(asked.id)).text).toContain('A link of yours is open until');
    const second = await newPhone(world, 2004);
    const url = /https:\S+/.exec(link?.text ?? '')?.[0] ?? '';
    expect(await openAndRead(second, url)).toContain('What is kept');
    await second.tap(BUTTONS.agree);
    expect((await second.last()).text).toContain('You are Wren’s helper now');
    const third = await newPhone(world, 2005);
    expect(await openAndRead(third, url)).toContain('used as often as it may be');
  });

  it('shows the teacher two helpers, and neither of them', async () => {
    const { teacher } = school;
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap('1. Wren');
    const { text } = await teacher.last();
    expect(text).toContain('2 helpers');
    expect(text).not.toMatch(/2001|2004|Parent/);
  });
});

describe('the helper of two children', () => {
  it('stops for one of them, and the other’s drill goes on', async () => {
    await wren.open(linkFor('Robin'));
    await wren.tap(BUTTONS.agree);
    await wren.say('/stop');
    expect(await wren.buttons()).toEqual([
      'Stop for Wren',
      'Stop for Robin',
      'Stop for all of them',
      BUTTONS.stay,
    ]);
    const { id } = await wren.last();
    await wren.tap('Stop for Robin');
    expect((await wren.last()).text).toContain('no more messages about Robin will come');
    expect((await wren.message(id)).text).toContain('Wren: the drill goes on as before.');
    expect(await ask(wren, '/help')).toContain('You help Wren.');
  });

  it('joins again by the same link: the notice and the agreement come anew', async () => {
    expect(await openAndRead(wren, linkFor('Robin'))).toContain('What is kept');
    await wren.tap(BUTTONS.agree);
    const { proofs, ties } = await storedOf(wren);
    expect(proofs.filter((row) => row.withdrawn_at !== null)).toHaveLength(1);
    expect(proofs).toHaveLength(3);
    expect(ties.every((row) => row.left_at === null)).toBe(true);
    await wren.say('/stop');
    await wren.tap('Stop for all of them');
    expect((await storedOf(wren)).ties.every((row) => row.left_at !== null)).toBe(true);
    expect(await ask(wren, '/settings')).toContain('open the join link');
  });
});

describe('every button that the settings lead to', () => {
  it('is answered each time when it is tapped twice in quick succession, and nothing goes wrong', async () => {
    const { id } = await newPhone(world, 2006);
    const finch = await joinAs(world, id, linkFor('Otter'));
    await finch.say('/share');
    await finch.say('/settings');
    // Whoever is a brother or sister makes no link.
    const except = ['Brother or sister, 14 or over'];
    const { tapped, unanswered } = await tapEverythingTwice(world, finch, { except, ofAKind: 2 });
    expect(unanswered).toEqual([]);
    const tags = new Set(tapped.map((each) => each.split(':')[1]));
    const { joinAs: as, joinTime, joinWay, joinNext, settings, timeChoices, chooseTime } = ACTIONS;
    const { wayChoices, settleWay, setSwitch, shareLink } = ACTIONS;
    const joining = [as, joinTime, joinWay, joinNext];
    const others = [settings, timeChoices, chooseTime, wayChoices, settleWay, setSwitch, shareLink];
    expect([...joining, ...others].map(({ tag }) => tag).filter((tag) => !tags.has(tag))).toEqual(
      [],
    );
    // Two buttons made one link each, however often they were tapped.
    expect((await finch.messagesWith('?start=')).map(({ text }) => text)).toHaveLength(2);
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });
});
