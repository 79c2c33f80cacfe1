import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { DEMO_TEACHER, loadSchool, Phone } from '../support/demo-school.ts';
import { leaksIn, leaksOf } from '../support/leaks.ts';
import { labelsOf, newPhone, offerOf, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { storedAbout } from '../support/stored.ts';
import { openWorld, type World } from '../support/world.ts';

const STRANGER = 3001;

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC.
let world: World;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world);
  await (await newPhone(world, STRANGER)).say('/start');
  await world.goTo('2026-09-14T16:30:00Z');
});
afterAll(() => world.close());

const phone = (id: number) => new Phone(world, id);

function dataOf(message: ChatMessage, label: string): string {
  const found = message.buttons.flat().find((button) => button.text.includes(label));
  if (found?.data === undefined) throw new Error(`no button says ${label}`);
  return found.data;
}

describe('a tap forged by somebody else', () => {
  let pip: ChatMessage;
  beforeEach(async () => {
    pip = await phone(2005).last();
  });

  /** Taps on Pip's message from another account; returns what that account is told. */
  async function forge(fromAccountId: number, data: string): Promise<string> {
    const { queryId } = await world.client.forgeTap({
      fromAccountId,
      chatId: 2005,
      messageId: pip.id,
      data,
    });
    await world.settle();
    const answers = await world.client.answers(fromAccountId);
    return answers.find((answer) => answer.queryId === queryId)?.text ?? 'no answer';
  }

  it.each([
    ['another family', 2006],
    ['the teacher', DEMO_TEACHER],
    ['a stranger', STRANGER],
  ])('by %s stores nothing, changes no message, and is answered politely', async (_, account) => {
    const stored = await storedAbout(world);
    const chat = await phone(2005).chat();
    const before = world.logged.length;
    for (const button of [BUTTONS.start, BUTTONS.notToday, BUTTONS.later]) {
      expect(await forge(account, dataOf(pip, button))).toContain(
        'somebody else’s message. Nothing was changed',
      );
    }
    expect(await storedAbout(world)).toBe(stored);
    expect(await phone(2005).chat()).toEqual(chat);
    const events = world.logged.slice(before).map((line) => line.event);
    expect(events).toEqual(['tap_refused', 'tap_refused', 'tap_refused']);
  });

  it('cannot end somebody else’s part, nor change what their messages say', async () => {
    await phone(2005).say('/stop');
    pip = await phone(2005).last();
    const stored = await storedAbout(world);
    const chat = await phone(2005).chat();
    for (const button of [BUTTONS.leave, BUTTONS.stay]) {
      expect(await forge(2006, dataOf(pip, button))).toContain(
        'somebody else’s message. Nothing was changed',
      );
    }
    expect(await storedAbout(world)).toBe(stored);
    expect(await phone(2005).chat()).toEqual(chat);
  });

  it('cannot change a class, neither by a family nor by a stranger', async () => {
    await phone(DEMO_TEACHER).say('/class');
    await phone(DEMO_TEACHER).tap(BUTTONS.times);
    const screen = await phone(DEMO_TEACHER).last();
    const own = await phone(2006).last();
    const stored = await storedAbout(world);
    for (const account of [2006, STRANGER]) {
      const messageId = account === 2006 ? own.id : (await phone(STRANGER).last()).id;
      for (const button of screen.buttons.flat()) {
        await world.client.rawCallback(account, messageId, button.data ?? '');
      }
      await world.settle();
      const answers = await world.client.answers(account);
      expect(answers.at(-1)?.text).toContain('not yours to change');
    }
    expect(await storedAbout(world)).toBe(stored);
  });
});

describe('the same tap twice', () => {
  /** Taps the same button twice before the bot has seen the first. */
  async function twice(id: number, label: string): Promise<void> {
    await world.client.tapLabel(id, label);
    await world.client.tapLabel(id, label);
    await world.settle();
  }

  it('stores one set of marks for each part', async () => {
    const saffron = phone(2006);
    await twice(saffron.id, BUTTONS.start);
    await twice(saffron.id, BUTTONS.someMissed);
    await saffron.tap('1. ');
    await twice(saffron.id, BUTTONS.done);
    expect((await saffron.last()).text).toContain('9 of 10');
    for (const label of [BUTTONS.allRight, BUTTONS.allRight, BUTTONS.allRight, BUTTONS.allSaid]) {
      await twice(saffron.id, label);
    }
    await twice(saffron.id, '2');
    expect((await saffron.last()).text).toContain('2 pages done');
    expect(await readTable(world.store, 'mark')).toHaveLength(10 + 8 + 6 + 6);
    expect(await readTable(world.store, 'run_result')).toHaveLength(1);
    expect(await readTable(world.store, 'page_log')).toHaveLength(1);
  });

  it('asks for one reminder and puts an evening off once', async () => {
    await twice(2007, BUTTONS.later);
    await twice(2008, BUTTONS.notToday);
    const before = (await phone(2007).chat()).length;
    await world.goTo('2026-09-14T17:00:00Z');
    await world.goTo('2026-09-14T17:01:00Z');
    expect(await phone(2007).chat()).toHaveLength(before + 1);
    expect(labelsOf(await phone(2008).last())).toEqual([BUTTONS.afterAll]);
  });
});

describe('a tap on yesterday’s message', () => {
  beforeAll(async () => {
    await phone(2009).tap(BUTTONS.start);
    await phone(2009).tap(BUTTONS.allRight);
    await world.goTo('2026-09-15T09:00:00Z');
  });

  it.each([
    ['Start', 2010, BUTTONS.start],
    ['Later', 2011, BUTTONS.later],
    ['Not today', 2002, BUTTONS.notToday],
    ['All right', 2009, BUTTONS.allRight],
    ['Practise after all', 2008, BUTTONS.afterAll],
  ])('on %s is friendly, stores nothing, and shows that the day is over', async (_, id, label) => {
    const stored = await storedAbout(world);
    const message = (await phone(id).messagesWith('Monday')).findLast((each) =>
      labelsOf(each).includes(label),
    );
    const heard = await tapAndHear(phone(id), label, message?.id);
    expect(heard).toContain('That day is over. Send /today');
    const shown = await phone(id).message(message?.id ?? 0);
    expect(shown.text).toContain('This day is over and its drill is closed');
    expect(labelsOf(shown)).toEqual([]);
    expect(await storedAbout(world)).toBe(stored);
  });

  it('on Change a mark shows that the day is over', async () => {
    const stored = await storedAbout(world);
    await phone(2006).tap(BUTTONS.fix);
    expect((await phone(2006).last()).text).toContain('This day is over and its drill is closed');
    expect((await phone(2006).last()).text).toContain('9 of 10');
    expect(await storedAbout(world)).toBe(stored);
  });

  it('on Later is friendly late in the evening too, when there is no time for a reminder', async () => {
    await world.goTo('2026-09-15T20:45:00Z');
    const [message] = await phone(2003).messagesWith('Monday');
    expect(await tapAndHear(phone(2003), BUTTONS.later, message?.id)).toContain('That day is over');
  });

  it('leaves today’s evening as it is', async () => {
    await world.goTo('2026-09-16T16:30:00Z');
    expect((await offerOf(phone(2010), 'Ziggy')).text).toContain('Ziggy · Wednesday');
  });
});

describe('the log', () => {
  it('would be caught telling a nickname or a text, in any field', () => {
    const line = { level: 'info', event: 'x', fields: { problem: 'no evening for wren' } } as const;
    expect(leaksIn([line], ['Wren'])).toEqual([line]);
    expect(leaksIn([line], ['Otto', 'Eve'])).toEqual([]);
  });

  it('tells no nickname and no typed text', async () => {
    expect(world.logged.length).toBeGreaterThan(10);
    expect(await leaksOf(world)).toEqual([]);
    expect(world.logged.filter((line) => line.level === 'error')).toEqual([]);
  });
});
