import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { noSlips } from '../../bot/texts/print.ts';
import { linksMade } from '../../bot/texts/roster.ts';
import { wordsOf } from '../bot/paper/open-pdf.ts';
import { scanSlip } from '../bot/paper/scan.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, newPhone, openAndRead, tapAndHear } from '../support/phones.ts';
import { codesOn, newestPaper, papersOn, toPrint } from '../support/print-out.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let school: SmallClass;
let teacher: Phone;

beforeEach(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  school = await makeSmallClass(world, ['Wren', 'Otto', 'Juniper']);
  teacher = school.teacher;
  await joinAs(world, 2001, school.links.get('Wren'));
});
afterEach(async () => {
  expect(await leaksOf(world)).toEqual([]);
  await world.close();
});

describe('join slips', () => {
  it('come as one document for the children without a helper, each with a link that joins', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printSlips);
    const { name, caption, first } = await newestPaper(world, teacher);
    expect(name).toBe('join-slips-heron-class-2026-09-14.pdf');
    expect(caption).toContain('2 children');
    const words = wordsOf(first);
    expect(words).toContain('2 · Otto');
    expect(words).toContain('3 · Juniper');
    expect(words).not.toContain('Wren');
    expect(words).toContain('t.me/harbour_lane_bot');
    const link = (await scanSlip(first, 0)) ?? '';
    const otto = await joinAs(world, 2010, link);
    expect((await otto.last()).text).toContain('You are Otto’s helper now');
  });

  it('can be typed: the printed code does what the link does', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printSlips);
    const [, juniper = ''] = codesOn((await newestPaper(world, teacher)).first);
    const phone = await newPhone(world, 2010);
    expect(await ask(phone, '/start')).toContain('the code on your join slip');
    expect(await ask(phone, juniper.toLowerCase())).toContain('Juniper · Heron class');
    await phone.tap(BUTTONS.agree);
    expect((await phone.last()).text).toContain('You are Juniper’s helper now');
    const other = await newPhone(world, 2011);
    expect(await ask(other, `/start ${juniper}`)).toContain('Juniper · Heron class');
  });

  it('typed with a mistake are not taken for another’s, and say what to look at', async () => {
    const otto = 'F4GJ NG31 TARW EGS0 A37H QW7Q 8WHC';
    const phone = await newPhone(world, 2010);
    await phone.say('/start');
    expect(await ask(phone, otto.replace('G', 'H'))).toContain('one letter or figure is not right');
    expect(await ask(phone, otto.slice(0, -1))).toContain('27 letters and figures; a code has 28');
    expect(await readTable(world.store, 'helper_child')).toHaveLength(1);
  });

  it('end the earlier links of their children and of nobody else', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printSlips);
    const phone = await newPhone(world, 2010);
    expect(await openAndRead(phone, school.links.get('Otto') ?? '')).toContain('not valid');
    expect(await openAndRead(phone, school.links.get('Wren') ?? '')).toContain(
      'Wren · Heron class',
    );
  });

  it('work until the day they say, in the class’s own zone', async () => {
    await toPrint(teacher);
    await teacher.tap(BUTTONS.printSlips);
    const { first } = await newestPaper(world, teacher);
    expect(wordsOf(first)).toContain('12 November 2026');
    const link = (await scanSlip(first, 0)) ?? '';
    const phone = await newPhone(world, 2010);
    await world.goTo('2026-11-12T23:59:00Z');
    expect(await openAndRead(phone, link)).toContain('Otto · Heron class');
  });
});

describe('join slips of children just added', () => {
  it('are two taps away, and no link was made before that they could end', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap(BUTTONS.addChildren);
    const before = await readTable(world.store, 'slip');
    expect(await ask(teacher, 'Robin')).toContain('1 child added');
    await teacher.tap(BUTTONS.slipsToPrint);
    expect((await teacher.last()).text).toContain('Links given out before');
    expect(await readTable(world.store, 'slip')).toEqual(before);
    expect(await teacher.messagesWith('Robin\nhttps://')).toEqual([]);
    await teacher.tap(BUTTONS.printSlips);
    expect(wordsOf((await newestPaper(world, teacher)).first)).toContain('4 · Robin');
  });
});

describe('a set of join slips', () => {
  it('is made once by two quick taps, and again from the screen that follows', async () => {
    const id = await toPrint(teacher);
    await world.client.tapLabel(teacher.id, BUTTONS.printSlips, id);
    await world.client.tapLabel(teacher.id, BUTTONS.printSlips, id);
    await world.settle();
    expect(await papersOn(teacher)).toHaveLength(1);
    await teacher.tap(BUTTONS.printSlips, id);
    expect(await papersOn(teacher)).toHaveLength(2);
  });

  it('from a screen older than the newest links is not made, and that is said', async () => {
    const id = await toPrint(teacher);
    const old = (await teacher.message(id)).buttons
      .flat()
      .find(({ text }) => text === BUTTONS.printSlips);
    await teacher.tap(BUTTONS.printSlips, id);
    await world.client.rawCallback(teacher.id, id, old?.data ?? '');
    await world.settle();
    expect((await world.client.answers(teacher.id)).at(-1)?.text).toBe(linksMade());
    expect(await papersOn(teacher)).toHaveLength(1);
  });

  it('that surely did not arrive ends no earlier link and comes a little later', async () => {
    await toPrint(teacher);
    await world.client.setFault({ method: 'sendDocument', mode: 'error', count: 3 });
    await teacher.tap(BUTTONS.printSlips);
    await world.client.clearFaults();
    expect(await papersOn(teacher)).toHaveLength(0);
    const phone = await newPhone(world, 2010);
    expect(await openAndRead(phone, school.links.get('Otto') ?? '')).toContain(
      'Otto · Heron class',
    );
    await world.goTo('2026-09-14T09:05:00Z');
    expect(await papersOn(teacher)).toHaveLength(1);
    const link = (await scanSlip((await newestPaper(world, teacher)).first, 0)) ?? '';
    expect(await openAndRead(phone, link)).toContain('Otto · Heron class');
  });

  it('that came without an answer from the service works, and comes once', async () => {
    await toPrint(teacher);
    await world.client.setFault({ method: 'sendDocument', mode: 'apply_then_drop', count: 1 });
    await teacher.tap(BUTTONS.printSlips);
    await world.client.clearFaults();
    await world.goTo('2026-09-14T09:05:00Z');
    expect(await papersOn(teacher)).toHaveLength(1);
    const link = (await scanSlip((await newestPaper(world, teacher)).first, 0)) ?? '';
    expect(await openAndRead(await newPhone(world, 2010), link)).toContain('Otto · Heron class');
  });

  it('is not made when every child has a helper', async () => {
    await joinAs(world, 2002, school.links.get('Otto'));
    await joinAs(world, 2003, school.links.get('Juniper'));
    await toPrint(teacher);
    expect((await teacher.last()).text).toContain('every child has a helper');
    expect(await tapAndHear(teacher, BUTTONS.printSlips)).toBe(noSlips());
    expect(await papersOn(teacher)).toHaveLength(0);
  });
});
