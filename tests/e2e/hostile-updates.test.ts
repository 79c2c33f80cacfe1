import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pack } from '../../bot/callback/codec.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { storableJson } from '../../db/inbox/storable-json.ts';
import { loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { storedAbout } from '../support/stored.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let pip: Phone;
let messageId: number;
let evening: string;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world);
  await world.goTo('2026-09-14T16:30:00Z');
  pip = new Phone(world, 2005);
  const message = await pip.last();
  messageId = message.id;
  const start = message.buttons.flat().find((button) => button.text === BUTTONS.start);
  evening = start?.data?.split(':')[2] ?? '';
});
afterAll(() => world.close());

const errors = () => world.logged.filter((line) => line.level === 'error');
const from = (id: unknown) => ({ id, is_bot: false, first_name: 'Somebody' });
const privateChat = (id: unknown) => ({ id, type: 'private', first_name: 'Somebody' });

/** A message as the service would send it, altered. */
function messageFrom(id: unknown, change: Record<string, unknown>): Record<string, unknown> {
  return {
    message: { message_id: 90_000, date: 0, from: from(id), chat: privateChat(id), ...change },
  };
}

describe('a button whose payload is not ours', () => {
  const payloads: readonly (readonly [string, () => string])[] = [
    ['nothing but a letter', () => 'x'],
    ['an unknown tag', () => `1:zz:${evening}`],
    ['an older version', () => `0:st:${evening}`],
    ['a newer version', () => `2:st:${evening}`],
    ['half an id', () => `1:st:${evening.slice(0, 11)}`],
    ['an id with another last letter', () => `1:st:${evening.slice(0, 21)}!`],
    ['a field too many', () => `1:st:${evening}:1`],
    ['a field too few', () => `1:ar:${evening}`],
    ['a negative card', () => `1:tg:${evening}:0:-1`],
    ['a number with a leading nought', () => `1:ar:${evening}:00`],
    ['a number beyond all bounds', () => `1:pg:${evening}:99999`],
    ['64 bytes of nothing', () => 'A'.repeat(64)],
    ['an emoji', () => '👍'],
    ['a nought byte', () => `1:st:${evening}\u0000`],
    ['somebody else’s format', () => '{"action":"start"}'],
  ];

  it.each(payloads)('with %s is answered, stores nothing, and is no error', async (_, payload) => {
    const stored = await storedAbout(world);
    const before = await pip.chat();
    const { queryId } = await world.client.rawCallback(pip.id, messageId, payload());
    await world.settle();
    const answer = (await world.client.answers(pip.id)).find((each) => each.queryId === queryId);
    expect(answer?.text).toContain('That button is from an older message. Send /today or /class');
    expect(await storedAbout(world)).toBe(stored);
    expect(await pip.chat()).toEqual(before);
    expect(errors()).toEqual([]);
  });

  it('about an evening that does not exist is answered and stores nothing', async () => {
    const stored = await storedAbout(world);
    const ghost = pack({ kind: 'start', evening: '019a0000-0000-7000-8000-000000000001' });
    await world.client.rawCallback(pip.id, messageId, ghost);
    await world.settle();
    const answers = await world.client.answers(pip.id);
    expect(answers.at(-1)?.text).toContain('not yours to mark');
    expect(await storedAbout(world)).toBe(stored);
  });

  it.each(['ar', 'mk', 'dn'])(
    'on a part that the drill has not (%s) stores no mark',
    async (tag) => {
      await world.client.rawCallback(pip.id, messageId, `1:${tag}:${evening}:9`);
      await world.settle();
      expect(await readTable(world.store, 'mark')).toEqual([]);
      expect(await readTable(world.store, 'marking')).toEqual([]);
      expect(errors()).toEqual([]);
    },
  );

  it('that is longer than any button may be, and too old to answer, is no error', async () => {
    const stored = await storedAbout(world);
    const query = { id: '1', from: from(2005), chat_instance: '1', data: '1:st:'.repeat(100) };
    await world.client.injectUpdate({ callback_query: query });
    await world.settle();
    expect(errors()).toEqual([]);
    expect(await storedAbout(world)).toBe(stored);
    expect((await pip.last()).text).not.toContain('Something went wrong');
  });
});

describe('an update that makes no sense', () => {
  const updates: readonly (readonly [string, Record<string, unknown>])[] = [
    ['nothing', {}],
    ['a message that is nothing', { message: null }],
    ['an empty message', { message: {} }],
    ['an empty tap', { callback_query: {} }],
    ['a tap from nobody', { callback_query: { id: '5', data: '1:sy' } }],
    ['an empty membership', { my_chat_member: {} }],
    ['a sender whose id is a word', messageFrom('wren', { text: 'hello' })],
    ['a sender whose id is no whole number', messageFrom(0.5, { text: 'hello' })],
    ['a text that is a number', messageFrom(2006, { text: 7 })],
    ['a nought byte', messageFrom(2006, { text: 'he\u0000llo' })],
    ['half a character', messageFrom(2006, { text: 'he\ud800llo' })],
    ['a kind of update nobody asked for', { poll: { id: '1' } }],
    ['an update from a group', messageFrom(2006, { chat: { id: -5, type: 'group' }, text: 'hi' })],
    ['a list in place of a message', { message: [1, 2, 3] }],
  ];

  it.each(updates)('with %s does not stop the next person’s', async (_, update) => {
    await world.client.injectUpdate(update);
    await world.settle();
    expect(await ask(pip, '/help')).toContain('You help Pip.');
  });

  it('is set aside at once, without an error and another try', async () => {
    const rows = await readTable(world.store, 'inbox');
    expect(new Set(rows.map((row) => row.status))).toEqual(new Set(['done']));
    expect(new Set(rows.map((row) => row.tries))).toEqual(new Set([1]));
    expect(errors()).toEqual([]);
    expect(world.logged.filter(({ event }) => event === 'odd_update').length).toBeGreaterThan(5);
  });

  it('like a sticker or a place on the map gets a plain reply', async () => {
    await world.client.injectUpdate(messageFrom(2006, { sticker: { file_id: 'x' } }));
    await world.client.injectUpdate(messageFrom(2006, { location: { latitude: 1, longitude: 2 } }));
    await world.settle();
    expect(await new Phone(world, 2006).messagesWith('I can only read text and taps')).toHaveLength(
      2,
    );
  });
});

describe('a text that the database cannot keep', () => {
  it('is stored with the replacement character where a nought byte or half a character was', () => {
    expect(storableJson({ text: 'a\u0000b' })).toEqual({ text: 'a\ufffdb' });
    expect(storableJson([{ 'k\ud800': ['\udc00', 1, null, true] }])).toEqual([
      { 'k\ufffd': ['\ufffd', 1, null, true] },
    ]);
    expect(storableJson('Ace 👩‍🚀')).toBe('Ace 👩‍🚀');
  });
});

describe('an update that comes twice', () => {
  const update = { update_id: 400_000_000, ...messageFrom(2007, { text: '/help' }) };
  const replies = async () => new Phone(world, 2007).messagesWith('You help Bramble');

  it('is handled once when both come together', async () => {
    const before = (await replies()).length;
    await world.client.injectUpdate(update);
    await world.client.injectUpdate(update);
    await world.settle();
    expect(await replies()).toHaveLength(before + 1);
  });

  it('is handled once when the second comes after a restart', async () => {
    const before = (await replies()).length;
    const again = await world.restart();
    await world.client.injectUpdate(update);
    await again.settle();
    expect(await replies()).toHaveLength(before);
  });

  it('has told no name and no typed text to the log', async () => {
    expect(world.logged.length).toBeGreaterThan(10);
    expect(await leaksOf(world)).toEqual([]);
  });
});
