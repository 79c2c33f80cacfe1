import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Phone } from '../../bot/roots/phone.ts';
import { leftOut } from '../../bot/texts/limits.ts';
import { GUESS_LIMITS, MOST_WAITING } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, newPhone } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { openWrongedSchool, PEOPLE, type WrongedSchool } from '../support/wronged-school.ts';

const FLOOD = 200;
const GUESSER = 800_001;
const CALM = 800_002;

let school: WrongedSchool;
beforeAll(async () => {
  school = await openWrongedSchool();
});
afterAll(() => school.world.close());

/** A code that opens nothing: the right one with its letters the other way round. */
const wrongCode = () => [...school.things.code].reverse().join('');

describe('an account that tries codes', () => {
  it('is told each time that the link is not valid, and after ten times when to try again', async () => {
    const guesser = await newPhone(school.world, GUESSER);
    await guesser.say('/start');
    for (let i = 0; i < GUESS_LIMITS.ofOne; i += 1) {
      expect(await ask(guesser, `/start ${i % 2 === 0 ? '' : 't-'}${wrongCode()}`)).toContain(
        'not valid',
      );
    }
    expect(await ask(guesser, `/start ${wrongCode()}`)).toContain('Try again in 60 minutes');
    expect(await ask(guesser, `/start t-${wrongCode()}`)).toContain('Try again in 60 minutes');
  });

  it('is not let in with a right code before that, by link or by tap, and learns nothing from it', async () => {
    const { world, things } = school;
    const guesser = new Phone(world, GUESSER);
    expect(await ask(guesser, `/start ${things.code}`)).toContain('Try again in 60 minutes');
    const { id } = await guesser.last();
    await world.client.rawCallback(GUESSER, id, `1:ag:${things.code}:en`);
    await world.settle();
    expect((await world.client.answers(GUESSER)).at(-1)?.text).toContain('Try again in 60 minutes');
    const chats = (await readTable(world.store, 'helper')).map((row) => row.chat_id);
    expect(chats).not.toContain(GUESSER);
  });

  it('does not keep others out: a calm account joins meanwhile', async () => {
    const { world, things } = school;
    const calm = await newPhone(world, CALM);
    await calm.say('/start');
    expect(await ask(calm, `/start ${things.code}`)).toContain('Wren1');
    expect(await leaksOf(world)).toEqual([]);
  });

  it('may try again an hour later', async () => {
    const { world, things } = school;
    await world.goTo(new Date(world.now().getTime() + 60 * 60_000).toISOString());
    expect(await ask(new Phone(world, GUESSER), `/start ${things.code}`)).toContain('Wren1');
  });
});

describe('an account that sends two hundred messages at once', () => {
  it('gets as many answers as may wait, one word about the rest, and others get theirs', async () => {
    const { world } = school;
    const chat = () => world.client.chat(GUESSER);
    const before = (await chat()).filter(({ from }) => from === 'bot').length;
    for (let i = 0; i < FLOOD; i += 1) await world.client.say(GUESSER, '/show');
    const other = new Phone(world, PEOPLE['another family’s helper']);
    await world.client.say(other.id, '/help');
    await world.settle();
    const said = (await chat()).filter(({ from }) => from === 'bot').slice(before);
    // The service hands over a hundred at a time; the second hundred finds the first one answered.
    expect(said).toHaveLength(2 * MOST_WAITING + 1);
    expect(said.filter(({ text }) => text === leftOut().text)).toHaveLength(1);
    expect((await other.last()).text).toContain('You help Wren2');
    expect(world.logged.filter(({ event }) => event === 'updates_left_out')).toHaveLength(1);
  });
});
