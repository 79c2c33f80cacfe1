import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readIn } from '../../bot/language/index.ts';
import { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { stranger } from '../../bot/texts/family.ts';
import { whichLanguage } from '../../bot/texts/languages.ts';
import type { Language, WeekPlan } from '../../drills/index.ts';
import { labelsOf } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

/** Cards with words: doubles, and clocks. */
const PLAN: WeekPlan = {
  parts: [
    { rung: 'doubles.to5', cards: 4, seconds: 3 },
    { rung: 'clock.half', cards: 4, seconds: 5 },
  ],
};

let world: World;
let school: SmallClass;
let mother: Phone;
let brother: Phone;

/** What a button says in a language. */
const says = (language: Language, button: keyof typeof BUTTONS) =>
  readIn(language, () => BUTTONS[button]);

async function phoneSetTo(id: number, languageCode: string): Promise<Phone> {
  await world.client.addAccount({ id, name: `Phone ${id}`, languageCode });
  return new Phone(world, id);
}

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  school = await makeSmallClass(world, ['Wren'], { plan: PLAN });
  mother = await phoneSetTo(2101, 'es-419');
  brother = await phoneSetTo(2102, 'pt-BR');
});
afterAll(() => world.close());

const link = () => school.links.get('Wren') ?? '';

describe('somebody new', () => {
  it('is spoken to in the language of their phone, or in English where we have none of theirs', async () => {
    await mother.say('/start');
    expect((await mother.last()).text).toBe(readIn('es', () => stranger().text));
    await brother.say('/start');
    expect((await brother.last()).text).toBe(stranger().text);
  });

  it('reads the notice in that language, and in any other at a tap, before anything is stored', async () => {
    await mother.open(link());
    expect(await mother.buttons()).toEqual([
      says('es', 'agree'),
      says('es', 'disagree'),
      'English',
      'Afrikaans',
      'Deutsch',
      'Français',
    ]);
    await mother.tap('Deutsch');
    expect((await mother.buttons())[0]).toBe(says('de', 'agree'));
    expect(await readTable(world.store, 'helper')).toEqual([]);
  });

  it('agrees in the language that is read, which is kept with the agreement and goes on', async () => {
    await mother.tap(says('de', 'agree'));
    expect(await readTable(world.store, 'consent')).toMatchObject([{ language: 'de' }]);
    expect(await readTable(world.store, 'helper')).toMatchObject([{ language: 'de' }]);
    await mother.say('/today');
    expect((await mother.last()).text).toMatch(/^Wren: /);
    expect((await mother.last()).text).not.toContain('no drill yet');
  });
});

describe('“/language”', () => {
  it('offers each language under its own name, with the one in use ticked, and moves the tick', async () => {
    await mother.say('/language');
    const offered = ['English', 'Afrikaans', 'Español', '✓ Deutsch', 'Français'];
    expect(await mother.buttons()).toEqual(offered);
    await mother.tap('Español');
    expect((await mother.last()).text).toBe(readIn('es', () => whichLanguage().text));
    expect(await mother.buttons()).toContain('✓ Español');
    expect(await readTable(world.store, 'helper')).toMatchObject([{ language: 'es' }]);
  });

  it('refuses a language that a forged button names, and keeps the one in use', async () => {
    const { id } = await mother.last();
    await world.client.rawCallback(mother.id, id, '1:gm:xx');
    await world.settle();
    expect((await world.client.answers(mother.id)).at(-1)?.text).toBeTruthy();
    expect(await readTable(world.store, 'helper')).toMatchObject([{ language: 'es' }]);
  });
});

describe('an evening', () => {
  beforeAll(async () => {
    await brother.open(link());
    await brother.tap(BUTTONS.agree);
    await world.goTo('2026-09-14T16:30:00Z');
  });

  it('comes to each helper in their own language', async () => {
    expect(await mother.buttons()).toContain(says('es', 'start'));
    expect(await brother.buttons()).toContain('Start');
    expect((await mother.last()).text).not.toBe((await brother.last()).text);
  });

  it('is marked by one, and the other’s copy says so in the other’s language', async () => {
    const offer = await brother.last();
    await mother.tap(says('es', 'start'));
    await mother.tap(says('es', 'allRight'));
    const copy = await brother.message(offer.id);
    expect(copy.text).toContain('Another helper is marking this just now.');
    expect(labelsOf(copy)).toEqual(['Continue here']);
  });
});

describe('a teacher', () => {
  it('chooses a language for themselves, and another for the class’s cards', async () => {
    const { teacher } = school;
    await teacher.say('/language');
    await teacher.tap('Afrikaans');
    await teacher.say('/class');
    await teacher.tap(says('af', 'times'));
    const [cards] = (await teacher.buttons()).filter((label) => label.endsWith('English'));
    await teacher.tap(cards ?? '');
    await teacher.tap('Deutsch');
    expect(await readTable(world.store, 'class')).toMatchObject([{ language: 'de' }]);
    expect(await teacher.buttons()).toContain(cards?.replace('English', 'Deutsch'));
  });

  it('gets the digest in their own language', async () => {
    await world.goTo('2026-09-18T19:00:00Z');
    const words = (await school.teacher.chat()).map(({ text }) => text).join('\n');
    expect(words).not.toContain('To call');
    const buttons = (await school.teacher.chat()).flatMap((message) => labelsOf(message));
    expect(buttons).toContain(says('af', 'families'));
  });
});

describe('cards in another language than the helper’s', () => {
  beforeAll(async () => {
    await world.goTo('2026-09-21T16:30:00Z');
    await brother.say('/show');
    await brother.tap('Words only');
    await brother.say('/today');
    await brother.tap('Start');
  });

  it('carry their meaning in words', async () => {
    const { text } = await brother.last();
    expect(text).toMatch(/^1\. verdopple (\d+) \(double \1\)$/m);
  });

  it('carry the meaning of a clock beside its answer', async () => {
    await brother.tap(BUTTONS.allRight);
    await brother.tap(BUTTONS.someMissed);
    const clocks = (await brother.buttons()).filter((label) => label.startsWith('1. '));
    expect(clocks).toEqual([expect.stringMatching(/^1\. halb \S+ \(half past \S+\)$/)]);
  });

  it('carry none for a helper who reads the class’s language', async () => {
    await mother.say('/language');
    await mother.tap('Deutsch');
    await mother.say('/today');
    const clocks = (await mother.buttons()).filter((label) => label.startsWith('1. '));
    expect(clocks).toEqual([expect.stringMatching(/^1\. halb \S+$/)]);
  });
});
