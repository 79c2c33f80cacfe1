import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { addBook, listBooks } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { storedAbout } from '../support/stored.ts';
import { openWorld, type World } from '../support/world.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC. The 14th is a Monday.
let world: World;
let heron: SmallClass;
let teacher: Phone;
let wren: Phone;
let otter: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  heron = await makeSmallClass(world, ['Wren', 'Otter', 'Robin']);
  teacher = heron.teacher;
  wren = await joinAs(world, 2001, heron.links.get('Wren'));
  otter = await joinAs(world, 2002, heron.links.get('Otter'));
});
afterAll(() => world.close());

const toBooks = async () => {
  await teacher.say('/class');
  await teacher.tap(BUTTONS.books);
};
const text = async (phone = teacher) => (await phone.last()).text;
const titles = async () => (await listBooks(world.store, heron.scope)).map(({ title }) => title);

/** Plays an evening to the question about pages, answers it, and returns the result. */
async function tellPages(phone: Phone, pages: string): Promise<string> {
  await phone.tap(BUTTONS.start);
  await phone.tap(BUTTONS.allRight);
  await phone.tap(BUTTONS.allSaid);
  await phone.tap(pages);
  return text(phone);
}

describe('a teacher’s workbooks', () => {
  it('are typed in one line; a bad one is shown back with the range, and the question stays', async () => {
    await toBooks();
    await teacher.tap(BUTTONS.addBook);
    const before = await readTable(world.store, 'book');
    expect(await ask(teacher, 'Pebble Path')).toContain('I could not read “Pebble Path”');
    expect(await ask(teacher, 'Pebble Path 1-4000 2')).toMatch(
      /^“Pebble Path 1-4000 2”\n.*1 to 999/,
    );
    expect(await ask(teacher, 'Pebble Path 1-6 9')).toContain('Pages a day are from 1 to 5');
    expect(await readTable(world.store, 'book')).toEqual(before);
    expect(await ask(teacher, 'Pebble Path 1-6 2')).toContain(
      'Pebble Path is in line: pages 1 to 6, 2 a day.',
    );
    await teacher.tap(BUTTONS.back);
    await teacher.tap(BUTTONS.addBook);
    expect(await ask(teacher, 'pebble path 1-9 1')).toContain('with that title is in line already');
    expect(await ask(teacher, 'Pebble Path 2 1-40 2')).toContain(
      'Pebble Path 2 is in line: pages 1 to 40, 2 a day.',
    );
    expect(await titles()).toEqual(['Pebble Path', 'Pebble Path 2']);
  });

  it('are moved once by two quick taps, and put away once, with the way back on the screen', async () => {
    await toBooks();
    await teacher.tap('1. Pebble Path');
    await world.client.tapLabel(teacher.id, BUTTONS.bookLater);
    await world.client.tapLabel(teacher.id, BUTTONS.bookLater);
    await world.settle();
    expect(await titles()).toEqual(['Pebble Path 2', 'Pebble Path']);
    await teacher.tap(BUTTONS.bookEarlier);
    await world.client.tapLabel(teacher.id, BUTTONS.putAway);
    await world.client.tapLabel(teacher.id, BUTTONS.putAway);
    await world.settle();
    expect(await titles()).toEqual(['Pebble Path 2']);
    expect((await teacher.buttons())[0]).toBe(BUTTONS.undo);
    await teacher.tap(BUTTONS.undo);
    expect(await text()).toMatch(/^Taken back: Pebble Path put away\./);
    expect(await titles()).toEqual(['Pebble Path', 'Pebble Path 2']);
  });

  it('change by a tap or a typed line, which is taken back', async () => {
    await toBooks();
    await teacher.tap('2. Pebble Path 2');
    await teacher.tap('3');
    expect(await text()).toContain('Pages 1 to 40, 3 a day.');
    await teacher.tap(BUTTONS.changeBook);
    expect(await text()).toContain('\nPebble Path 2 1-40 3');
    await teacher.say('Pebble Path 3 1-50 1');
    expect(await titles()).toEqual(['Pebble Path', 'Pebble Path 3']);
    await teacher.tap(BUTTONS.undo);
    expect(await titles()).toEqual(['Pebble Path', 'Pebble Path 2']);
  });
});

describe('a child that begins in the middle', () => {
  it('is set to its page, and its evening asks for the pages from there; another’s does not', async () => {
    await toBooks();
    await teacher.tap(BUTTONS.whoIsWhere);
    await teacher.tap('1. Wren');
    await teacher.tap(BUTTONS.setChildPage);
    const before = await storedAbout(world);
    expect(await ask(teacher, '7')).toBe(
      '“7” is no page of Pebble Path. Send a page from 1 to 6, or “done”.',
    );
    expect(await storedAbout(world)).toBe(before);
    expect(await ask(teacher, '4')).toContain('Wren: page 4 of Pebble Path is next.');
    await world.goTo('2026-09-14T16:31:00Z');
    expect(await text(wren)).toContain('Then Pebble Path, pages 4 and 5.');
    expect(await text(otter)).toContain('Then Pebble Path, pages 1 and 2.');
  });

  it('is praised for a page more than planned, told of the next book, and never of one too few', async () => {
    expect(await tellPages(otter, '1')).toContain('Pebble Path: 1 page done\n');
    const result = await tellPages(wren, '3');
    expect(result).toContain('Pebble Path: 3 pages done, one more than planned. Well done!');
    expect(result).toContain('Pebble Path is done! Next: Pebble Path 2, from page 1.');
    await world.goTo('2026-09-15T16:31:00Z');
    expect(await text(wren)).toContain('Then Pebble Path 2, pages 1 to 3.');
    expect(await text(otter)).toContain('Then Pebble Path, pages 2 and 3.');
  });

  it('has a workbook of its own before the class’s', async () => {
    await toBooks();
    await teacher.tap(BUTTONS.whoIsWhere);
    await teacher.tap('2. Otter');
    await teacher.tap(BUTTONS.addOwnBook);
    expect(await text()).toContain('Send Otter’s own workbook');
    await teacher.say('Little Pebbles 1-12 1');
    await teacher.tap(BUTTONS.back);
    expect(await text()).toContain('Then Pebble Path, from page 2.');
    await world.goTo('2026-09-16T16:31:00Z');
    expect(await text(otter)).toContain('Then Little Pebbles, page 1.');
  });
});

describe('the whole class', () => {
  it('is set to a page but for those further on, and set back by Undo', async () => {
    await toBooks();
    await teacher.tap('1. Pebble Path');
    await teacher.tap(BUTTONS.setClassPage);
    expect(await ask(teacher, 'page 5')).toBe(
      '2 children: page 5 of Pebble Path is next. It counts from the next evening.\n1 child was further on and stays there.',
    );
    await teacher.tap(BUTTONS.undo);
    await teacher.tap(BUTTONS.books);
    await teacher.tap(BUTTONS.whoIsWhere);
    expect((await text()).split('\n').slice(1, -1)).toEqual([
      '1. Wren: Pebble Path 2, page 1 of 40, too early to say',
      '2. Otter: Little Pebbles, page 1 of 12, too early to say',
      '3. Robin: Pebble Path, page 1 of 6, too early to say',
    ]);
  });

  it('of another teacher is out of reach for every button about workbooks', async () => {
    const kingfisher = await makeSmallClass(world, ['Juniper'], {
      teacherId: 1002,
      title: 'Kingfisher class',
    });
    const book = { title: 'Pebble Path', firstPage: 1, lastPage: 48, pagesADay: 2 };
    const now = world.now();
    await addBook(world.store, kingfisher.scope, { book, now });
    const other = kingfisher.teacher;
    await other.say('/class');
    await other.tap(BUTTONS.books);
    await other.tap('1. Pebble Path');
    const before = await storedAbout(world);
    const { buttons, id } = await other.last();
    for (const { data } of buttons.flat()) {
      const mine = await teacher.last();
      await world.client.rawCallback(teacher.id, mine.id, data ?? '');
      await world.settle();
      expect((await world.client.answers(teacher.id)).at(-1)?.text).toContain('not');
    }
    expect(await storedAbout(world)).toBe(before);
    expect(await tapAndHear(other, BUTTONS.back, id)).toBe('');
  });

  it('leaves no name and no typed text in the log', async () => {
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
    expect(await leaksOf(world)).toEqual([]);
  });
});
