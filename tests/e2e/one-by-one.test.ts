import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pack } from '../../bot/callback/codec.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { CARD_BUTTONS } from '../../bot/texts/one-by-one.ts';
import { STOP_BUTTONS } from '../../bot/texts/stop-today.ts';
import { findHelperByChat, setDisplay, setWay } from '../../db/index.ts';
import { loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { labelsOf, offerOf, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { storedAbout } from '../support/stored.ts';
import { openWorld, type World } from '../support/world.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC.
let world: World;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world);
  for (const chatId of [2003, 2005]) {
    await setWay(world.store, { helperId: await helperOf(chatId), way: 'single' });
  }
  await world.goTo('2026-09-14T16:30:00Z');
});
afterAll(() => world.close());

const phone = (id: number) => new Phone(world, id);
const at = (time: string) => world.goTo(`2026-09-14T${time}:00Z`);
const messagesOn = async (id: number) => (await phone(id).chat()).length;

async function helperOf(chatId: number): Promise<string> {
  const helper = await findHelperByChat(world.store, chatId);
  if (!helper) throw new Error(`nobody has joined on phone ${chatId}`);
  return helper.id;
}

/** Shows the answer of each card of the part on the screen and says how it was; null once the cards are over. */
async function judge(id: number, known: (card: number) => boolean): Promise<number> {
  const part = /Part \d of/.exec((await phone(id).last()).text)?.[0] ?? '';
  for (let card = 1; ; card += 1) {
    const { text, buttons } = await phone(id).last();
    const isCard = buttons.flat().some((button) => button.text === CARD_BUTTONS.show);
    if (!isCard || !text.includes(part)) return card - 1;
    await phone(id).tap(CARD_BUTTONS.show);
    await phone(id).tap(known(card) ? CARD_BUTTONS.right : CARD_BUTTONS.notYet);
  }
}

describe('one card at a time', () => {
  it('goes through a part in one message, and its marks say that each card was seen', async () => {
    const before = await messagesOn(2005);
    await phone(2005).tap(BUTTONS.start);
    expect(await judge(2005, (card) => card !== 2)).toBe(10);
    expect(await messagesOn(2005)).toBe(before);
    expect((await phone(2005).last()).text).toMatch(/adding within 10: 9 of 10.*\nPart 2 of 5/);
    const marks = await readTable(world.store, 'mark');
    expect(marks.map((row) => row.way)).toEqual(Array(10).fill('card'));
    expect(marks.filter((row) => row.right === false).map((row) => row.card)).toEqual([1]);
  });

  it('outlives a restart in the middle of a part, and does not mind being tapped twice', async () => {
    await phone(2005).tap(CARD_BUTTONS.show);
    await phone(2005).tap(CARD_BUTTONS.notYet);
    const restarted = await world.restart();
    await phone(2005).tap(CARD_BUTTONS.show);
    await restarted.settle();
    for (const label of [CARD_BUTTONS.right, CARD_BUTTONS.right]) {
      await world.client.tapLabel(2005, label);
    }
    await world.settle();
    expect((await phone(2005).last()).text).toContain('card 3 of 8');
    await phone(2005).tap(CARD_BUTTONS.back);
    expect((await phone(2005).last()).text).toContain('card 2 of 8');
    expect(await judge(2005, () => true)).toBe(7);
    expect((await phone(2005).last()).text).toContain('7 of 8');
  });

  it('shows clocks as pictures, explains them with the answer where that is wished for, and ends at the result', async () => {
    await setDisplay(world.store, { helperId: await helperOf(2005), switches: { clockAid: true } });
    await judge(2005, () => true);
    const asked = await phone(2005).last();
    expect(asked.text).toContain('What time is it?');
    await phone(2005).tap(CARD_BUTTONS.show);
    const answered = await phone(2005).last();
    expect(answered.text).toMatch(/, \d{1,2}:\d\d$/);
    expect(answered.photo).toBeDefined();
    expect(answered.photo).not.toEqual(asked.photo);
    await phone(2005).tap(CARD_BUTTONS.right);
    await judge(2005, () => true);
    await phone(2005).tap(BUTTONS.allSaid);
    await phone(2005).tap('2');
    expect((await phone(2005).last()).text).toContain('Thank you.');
    expect(await readTable(world.store, 'marking')).toEqual([]);
  });

  it('tells the other helper once a part is begun, who may go on where it is', async () => {
    const [mine, other] = [
      await offerOf(phone(2003), 'Kestrel'),
      await offerOf(phone(2004), 'Kestrel'),
    ];
    await phone(2003).tap(BUTTONS.start, mine.id);
    await phone(2003).tap(CARD_BUTTONS.show, mine.id);
    const copy = await phone(2004).message(other.id);
    expect(copy.text).toContain('Another helper is marking this just now.');
    await phone(2003).tap(CARD_BUTTONS.notYet, mine.id);
    await phone(2004).tap(BUTTONS.openHere, other.id);
    expect(labelsOf(await phone(2004).message(other.id))[0]).toMatch(/^✗ 1\. /);
    await phone(2004).tap(BUTTONS.done, other.id);
    expect((await phone(2003).message(mine.id)).text).toContain('9 of 10');
  });
});

describe('“Stop for today”', () => {
  it('is one tap, asks nothing, and is the same for both helpers', async () => {
    const [mine] = await phone(2003).messagesWith('Kestrel · ');
    const [other] = await phone(2004).messagesWith('Kestrel · ');
    await phone(2004).tap(STOP_BUTTONS.stop, other?.id);
    for (const [id, message] of [
      [2003, mine],
      [2004, other],
    ] as const) {
      const { text } = await phone(id).message(message?.id ?? 0);
      expect(text).toContain('Stopped for today. That is fine.');
      expect(text).not.toContain('?');
    }
  });

  it('before anything is marked has no nudge follow, and counts as “not today”', async () => {
    await phone(2006).tap(BUTTONS.start);
    await phone(2006).tap(STOP_BUTTONS.stop);
    const before = await messagesOn(2006);
    await at('18:00');
    expect(await messagesOn(2006)).toBe(before);
    expect((await phone(2007).last()).text).toContain('Still time for a few minutes tonight');
  });

  it('can be taken back until the day ends', async () => {
    await phone(2006).tap(STOP_BUTTONS.goOn);
    expect((await phone(2006).last()).text).toContain('Part 1 of 5');
    await phone(2006).tap(STOP_BUTTONS.stop);
    await at('23:30');
    expect(await tapAndHear(phone(2006), STOP_BUTTONS.goOn)).toMatch(/^Saffron: /);
    expect((await phone(2006).last()).text).toContain('This day is over');
  });
});

describe('brothers and sisters', () => {
  beforeAll(() => world.goTo('2026-09-15T16:30:00Z'));

  it('are told whose turn is after whose', async () => {
    const texts = (await phone(2001).messagesWith('· Tuesday')).map(({ text }) => text);
    expect(texts).toHaveLength(2);
    expect(texts.join('\n')).toContain('Juniper’s turn is after Wren’s.');
    expect(texts.join('\n')).not.toContain('Wren’s turn');
  });

  it('follow each other by a button under what is over, in a new message, once', async () => {
    const [wren, juniper] = await Promise.all(
      ['Wren', 'Juniper'].map((nickname) => offerOf(phone(2001), nickname)),
    );
    await phone(2001).tap(BUTTONS.start, wren?.id);
    await phone(2001).tap(BUTTONS.allRight, wren?.id);
    expect(labelsOf(await phone(2001).message(wren?.id ?? 0))).not.toContain('Next: Juniper');
    await phone(2001).tap(STOP_BUTTONS.stop, wren?.id);
    const before = await messagesOn(2001);
    const data = (await phone(2001).message(wren?.id ?? 0)).buttons.flat().at(-1)?.data ?? '';
    expect(await tapAndHear(phone(2001), 'Next: Juniper', wren?.id)).toBe(
      'Now it is Juniper’s turn.',
    );
    const begun = await phone(2001).last();
    expect(begun.text).toMatch(/^Juniper · Tuesday\nPart 1 of 5/);
    expect((await phone(2001).message(juniper?.id ?? 0)).text).toContain(
      'Goes on in the other message',
    );
    expect(labelsOf(await phone(2001).message(wren?.id ?? 0))).not.toContain('Next: Juniper');
    await world.client.rawCallback(2001, wren?.id ?? 0, data);
    await world.settle();
    expect((await world.client.answers(2001)).at(-1)?.text).toContain(
      'a message of its own already',
    );
    expect(await messagesOn(2001)).toBe(before + 1);
  });

  it('never lead to another family’s child, and no name reaches the log', async () => {
    const { text, id } = await phone(2001).last();
    const evenings = (await readTable(world.store, 'evening')).filter(
      (row) => row.day === '2026-09-15',
    );
    const helpers = await readTable(world.store, 'helper_child');
    const helperId = await helperOf(2001);
    const isOwn = (row: (typeof evenings)[number]) =>
      helpers.some((each) => each.helper_id === helperId && each.child_id === row.child_id);
    const [own, foreign] = [evenings.find(isOwn), evenings.find((row) => !isOwn(row))];
    const action = {
      kind: 'nextChild',
      evening: String(own?.id),
      next: String(foreign?.id),
    } as const;
    const stored = await storedAbout(world);
    await world.client.rawCallback(2001, id, pack(action));
    await world.settle();
    expect((await world.client.answers(2001)).at(-1)?.text).toContain('not yours to mark');
    expect(await storedAbout(world)).toBe(stored);
    expect((await phone(2001).last()).text).toBe(text);
    expect(await leaksOf(world)).toEqual([]);
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });
});
