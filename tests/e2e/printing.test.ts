import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { noDays, noPlan, noSlips } from '../../bot/texts/print.ts';
import { wordsOf } from '../bot/paper/open-pdf.ts';
import { leaksOf } from '../support/leaks.ts';
import { labelsOf, newPhone, tapAndHear } from '../support/phones.ts';
import { newestPaper, papersOn, toPrint } from '../support/print-out.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let teacher: Phone;

// A Monday.
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  const school = await makeSmallClass(world, ['Wren', 'Otto', 'Juniper']);
  teacher = school.teacher;
  await joinAs(world, 2001, school.links.get('Wren'));
});
afterAll(async () => {
  expect(await leaksOf(world)).toEqual([]);
  expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  await world.close();
});

describe('cards, sheets and squares', () => {
  it('come for the plan in use: cards with answers behind them, and all answers last', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printCards);
    const { name, pages, first } = await newestPaper(world, teacher);
    expect(name).toBe('cards-heron-class-2026-09-14.pdf');
    // Five bonds and one counting run: six cards on one leaf, then the answers.
    expect(pages).toHaveLength(3);
    expect(wordsOf(first)).toContain('Count on in fives.');
    expect(wordsOf(pages[2] ?? first)).toContain('Heron class · Answers');
  });

  it('come as a sheet for each child whose family gets no messages, and one without a name', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printSheets);
    const { caption, pages } = await newestPaper(world, teacher);
    expect(caption).toContain('2 children');
    const words = pages.map(wordsOf).join('\n');
    for (const part of ['2 · Otto', '3 · Juniper', 'Name ____', 'Mon 14 Sept', 'Fri 18 Sept']) {
      expect(words).toContain(part);
    }
    expect(words).not.toContain('Wren');
    expect(words).not.toContain('Workbook');
  });

  it('come as two number squares', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printSquares);
    expect((await newestPaper(world, teacher)).pages.map(({ texts }) => texts.length)).toEqual([
      100, 100,
    ]);
  });

  it('come on the paper chosen, A4 unless said otherwise', async () => {
    const id = await toPrint(teacher);
    expect(labelsOf(await teacher.message(id))).toContain('✓ A4');
    await teacher.tap(BUTTONS.printSquares);
    expect((await newestPaper(world, teacher)).first.width).toBe(595.28);
    await teacher.tap('Letter', id);
    expect(labelsOf(await teacher.message(id))).toContain('✓ Letter');
    await teacher.tap(BUTTONS.printSquares, id);
    expect((await newestPaper(world, teacher)).first.width).toBe(612);
  });

  it('are the same cards all week', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printCards);
    const monday = (await newestPaper(world, teacher)).pages.map(wordsOf);
    await world.goTo('2026-09-17T09:00:00Z');
    await teacher.tap(BUTTONS.printCards);
    expect((await newestPaper(world, teacher)).pages.map(wordsOf)).toEqual(monday);
  });
});

describe('another teacher, a family and a stranger', () => {
  it('get the not-found answer to every print button, no document, and change nothing', async () => {
    const papers = await papersOn(teacher);
    const id = await toPrint(teacher);
    const buttons = (await teacher.message(id)).buttons.flat();
    const printing = buttons.filter(({ text }) => text !== BUTTONS.back);
    expect(printing).toHaveLength(6);
    const other = await makeSmallClass(world, ['Saffron'], {
      teacherId: 1002,
      title: 'Robin class',
    });
    const stranger = await newPhone(world, 3001);
    await stranger.say('/start');
    const before = (await readTable(world.store, 'slip')).length;
    for (const phone of [other.teacher, await newPhone(world, 2001), stranger]) {
      const mine = (await phone.last()).id;
      for (const { data = '' } of printing) {
        await world.client.rawCallback(phone.id, mine, data);
        await world.settle();
        const answer = (await world.client.answers(phone.id)).at(-1);
        expect(answer?.text).toContain('not yours to change');
      }
      expect(await papersOn(phone)).toEqual([]);
    }
    expect(await readTable(world.store, 'slip')).toHaveLength(before);
    expect(await papersOn(teacher)).toEqual(papers);
  });
});

describe('a long break', () => {
  it('leaves no school day to print a sheet for, and that is said', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.breaks);
    await teacher.tap(BUTTONS.addBreak);
    await teacher.say('2026-09-14 to 2026-10-02 Long break');
    await toPrint(teacher);
    expect(await tapAndHear(teacher, BUTTONS.printSheets)).toBe(noDays());
  });
});

describe('a new class', () => {
  it('without children and plan is told what is missing, and prints number squares', async () => {
    for (const text of ['/newclass', 'Robin class', 'Europe/London', '/class'])
      await teacher.say(text);
    await teacher.tap('Robin class');
    await teacher.tap(BUTTONS.print);
    const before = (await papersOn(teacher)).length;
    expect(await tapAndHear(teacher, BUTTONS.printSlips)).toBe(noSlips());
    expect(await tapAndHear(teacher, BUTTONS.printCards)).toBe(noPlan());
    expect(await tapAndHear(teacher, BUTTONS.printSheets)).toBe(noPlan());
    expect(await papersOn(teacher)).toHaveLength(before);
    await teacher.tap(BUTTONS.printSquares);
    expect(await papersOn(teacher)).toHaveLength(before + 1);
  });
});
