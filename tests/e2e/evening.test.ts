import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createPainter } from '../../bot/media/index.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { labelsOf, offerOf } from '../support/phones.ts';
import { type RawRow, readTable } from '../support/raw-rows.ts';
import { embedded } from '../support/stores.ts';
import { picturesIn, uploadsIn } from '../support/uploads.ts';
import { openWorld, type World } from '../support/world.ts';

// Monday 14 September 2026, British Summer Time: 17:30 in London is 16:30 UTC.
let world: World;
beforeAll(async () => {
  const painter = createPainter();
  world = await openWorld({ start: '2026-09-14T09:00:00Z', backend: embedded, painter });
  await loadSchool(world);
});
afterAll(() => world.close());

const phone = (id: number) => new Phone(world, id);

/** A child's marks on a day, oldest first. */
async function marksOf(nickname: string, day: string): Promise<RawRow[]> {
  const { store } = world;
  const child = (await readTable(store, 'child')).find((row) => row.nickname === nickname);
  const evening = (await readTable(store, 'evening')).find(
    (row) => row.child_id === child?.id && row.day === day,
  );
  const marks = await readTable(store, 'mark');
  return marks
    .filter((row) => row.evening_id === evening?.id)
    .sort((a, b) => (String(a.id) < String(b.id) ? -1 : 1));
}

describe('an evening arriving', () => {
  it('sends nothing before the evening time', async () => {
    await world.goTo('2026-09-14T16:29:00Z');
    expect(await phone(2005).messagesWith('Monday')).toHaveLength(0);
  });

  it('sends one message per child to each of its helpers, however often the clock ticks', async () => {
    for (const minute of ['30', '30', '31', '32']) {
      await world.goTo(`2026-09-14T16:${minute}:00Z`);
    }
    expect(await phone(2001).messagesWith('Monday')).toHaveLength(2);
    expect(await phone(2003).messagesWith('Monday')).toHaveLength(1);
    expect(await phone(2004).messagesWith('Monday')).toHaveLength(1);
    const pip = await phone(2005).last();
    expect(pip.text).toContain('Pip · Monday');
    expect(pip.text).toContain('Pebble Path, pages 1 and 2');
    expect(labelsOf(pip)).toEqual([BUTTONS.start, BUTTONS.later, BUTTONS.notToday]);
  });
});

describe('marking an evening', () => {
  it('goes from Start to a result in the same message', async () => {
    const pip = phone(2005);
    const before = (await pip.chat()).length;
    await pip.playEvening((part) => ({ 1: [2, 5], 5: [4] })[part] ?? []);
    const result = await pip.last();
    expect((await pip.chat()).length).toBe(before);
    expect(result.text).toContain('8 of 10, first time at this');
    expect(result.text).toContain('4 of 10');
    expect(result.text).toContain('Pebble Path: 2 pages done');
    expect(await pip.buttons()).toEqual([BUTTONS.fix]);
  });

  it('shows the cards as a photo in the message that offered them', async () => {
    const saffron = phone(2006);
    const { id, photo } = await saffron.last();
    expect(photo).toBeUndefined();
    await saffron.tap(BUTTONS.start);
    const shown = await saffron.last();
    expect(shown.id).toBe(id);
    expect(shown.photo?.width).toBe(720);
    expect(shown.text).toContain('Part 1 of 5');
  });

  it('undoes a wrong tap before Done', async () => {
    const saffron = phone(2006);
    await saffron.tap(BUTTONS.someMissed);
    for (const card of ['1. ', '3. ']) await saffron.tap(card);
    expect((await saffron.last()).text).toContain('Now: 8 of 10');
    await saffron.tap('✗ 1. ');
    expect((await saffron.last()).text).toContain('Now: 9 of 10');
    expect(await marksOf('Saffron', '2026-09-14')).toHaveLength(0);
    await saffron.tap(BUTTONS.done);
    const marks = await marksOf('Saffron', '2026-09-14');
    expect(marks.filter((mark) => !mark.right).map((mark) => mark.card)).toEqual([2]);
    expect(marks).toHaveLength(10);
  });

  it('takes one tap a part when all is right', async () => {
    const bramble = phone(2007);
    await bramble.playEvening();
    // Start, five parts, and the pages.
    expect(await world.client.answers(bramble.id)).toHaveLength(1 + 1 + 5 + 1);
    expect((await bramble.last()).text.match(/10 of 10/g)).toHaveLength(2);
  });

  it('takes the last number said of a counting run, or none yet', async () => {
    await phone(2008).playEvening((_, isRun) => (isRun ? [7] : []));
    expect((await phone(2008).last()).text).toMatch(/fives.*: 7 of 10/);
    await phone(2009).playEvening((_, isRun) => (isRun ? [0] : []));
    expect((await phone(2009).last()).text).toMatch(/fives.*: 0 of 10, first time at this/);
    const runs = await readTable(world.store, 'run_result');
    expect(runs.map((run) => run.said)).toEqual(expect.arrayContaining([0, 4, 7, 10]));
  });

  it('takes no pages, or more than were asked for', async () => {
    await phone(2010).tap(BUTTONS.start);
    for (let part = 1; part <= 4; part += 1) await phone(2010).tap(BUTTONS.allRight);
    await phone(2010).tap(BUTTONS.allSaid);
    expect(await phone(2010).buttons()).toEqual(['None', '1', '2', '3', '4']);
    await phone(2010).tap('None');
    expect((await phone(2010).last()).text).toContain('Pebble Path: 0 pages done');
    await phone(2010).tap(BUTTONS.fix);
    await phone(2010).tap('Pebble Path');
    await phone(2010).tap('4');
    expect((await phone(2010).last()).text).toContain('4 pages done, 2 more than planned');
  });

  it('has uploaded each picture once, however often it is shown', async () => {
    await phone(2005).say('/today');
    const log = await world.client.log();
    const uploads = uploadsIn(log);
    expect(uploads).toHaveLength((await readTable(world.store, 'media')).length);
    expect(picturesIn(log).length).toBeGreaterThan(uploads.length);
  });
});

describe('two helpers of one child', () => {
  it('stores one set of marks when both have the part open: the first Done wins', async () => {
    const [mother, brother] = [phone(2003), phone(2004)];
    await mother.tap(BUTTONS.start);
    await mother.tap(BUTTONS.someMissed);
    await mother.tap('2. ');
    await brother.tap(BUTTONS.start);
    expect((await brother.last()).text).toContain('Now: 9 of 10');
    await world.client.tapLabel(mother.id, BUTTONS.done);
    await world.client.tapLabel(brother.id, BUTTONS.done);
    await world.settle();
    const marks = await marksOf('Kestrel', '2026-09-14');
    expect(marks).toHaveLength(10);
    expect(new Set(marks.map((mark) => mark.revision))).toEqual(new Set([1]));
    expect((await mother.last()).text).toContain('9 of 10');
    expect((await brother.last()).text).toContain('9 of 10');
  });

  it('uploads no picture again for the second helper', async () => {
    const [mother, brother] = [phone(2003), phone(2004)];
    // Who of the two sees the part and who is told that it goes on elsewhere is a matter of who was last.
    if ((await brother.buttons()).includes(BUTTONS.openHere)) await brother.tap(BUTTONS.openHere);
    await brother.tap(BUTTONS.allRight);
    expect((await mother.last()).text).toContain('Another helper is marking this just now');
    const before = uploadsIn(await world.client.log()).length;
    await mother.tap(BUTTONS.openHere);
    expect((await mother.last()).photo).toBeDefined();
    expect((await mother.last()).text).toContain('Part 3 of 5');
    expect(uploadsIn(await world.client.log())).toHaveLength(before);
  });

  it('shows the result on the copy of the one who did not finish it', async () => {
    const [mother, brother] = [phone(2003), phone(2004)];
    for (let part = 3; part <= 4; part += 1) await brother.tap(BUTTONS.allRight);
    await brother.tap(BUTTONS.allSaid);
    await brother.tap('2');
    const copy = await mother.last();
    expect(copy.text).toContain('Practised with another helper');
    expect(copy.text).toContain('9 of 10');
    expect(copy.text).toContain('Pebble Path: 2 pages done');
    expect(labelsOf(copy)).toEqual([]);
  });
});

describe('a score beside the child’s own best', () => {
  it('says how many more than the best so far, or the same', async () => {
    await world.goTo('2026-09-15T16:30:00Z');
    const pip = phone(2005);
    await pip.playEvening((part) => ({ 2: [3] })[part] ?? [], (await offerOf(pip, 'Pip')).id);
    const { text } = await pip.last();
    expect(text).toContain('10 of 10, 2 more than the best so far');
    expect(text).toContain('7 of 8, best so far 8');
    expect(text).toContain('6 of 6, same as the best so far');
  });

  it('follows a mark that is changed after the result, and keeps the earlier marks', async () => {
    const pip = phone(2005);
    await pip.tap(BUTTONS.fix);
    const [firstPart] = await pip.buttons();
    await pip.tap(firstPart ?? '');
    await pip.tap('4. ');
    await pip.tap(BUTTONS.done);
    expect((await pip.last()).text).toContain('9 of 10, 1 more than the best so far');
    const marks = (await marksOf('Pip', '2026-09-15')).filter((mark) => mark.part === 0);
    expect(marks.map((mark) => [mark.revision, mark.right]).filter(([, right]) => !right)).toEqual([
      [2, false],
    ]);
    expect(marks).toHaveLength(20);
    const changed = marks.find((mark) => !mark.right);
    const memory = (await readTable(world.store, 'fact_memory')).find(
      (row) => row.child_id === changed?.child_id && row.fact === changed?.fact,
    );
    expect(memory).toMatchObject({ last_right: false, streak: 0, last_day: '2026-09-15' });
  });

  it('compares with the corrected best on the day after', async () => {
    await world.goTo('2026-09-16T16:30:00Z');
    const pip = phone(2005);
    await pip.playEvening((part) => (part === 1 ? [1, 2, 3, 4] : []));
    expect((await pip.last()).text).toContain('6 of 10, best so far 9');
    expect((await pip.last()).text).toContain('8 of 8, same as the best so far');
  });

  it('tells no name and no typed text to the log', async () => {
    expect(await leaksOf(world)).toEqual([]);
  });
});
