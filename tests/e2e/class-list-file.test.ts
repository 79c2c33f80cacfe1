import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import writeXlsx from 'write-excel-file/node';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { createClass, type SchoolClass } from '../../db/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { SETTINGS } from '../support/people.ts';
import { labelsOf, newPhone, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { makeSmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let teacher: Phone;
let heron: SchoolClass;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  const school = await makeSmallClass(world, ['Wren', 'Otter'], { title: 'Kingfisher class' });
  teacher = school.teacher;
  const { teacherId } = school.scope;
  const settings = { ...SETTINGS, title: 'Heron class' };
  heron = await createClass(world.store, { teacherId, settings, now: world.now() });
});
afterAll(() => world.close());

/** Opens Kingfisher class and asks for its children. */
async function askForChildren(): Promise<void> {
  await teacher.say('/class');
  await teacher.tap('Kingfisher class');
  await teacher.tap(BUTTONS.children);
  await teacher.tap(BUTTONS.addChildren);
}

async function send(name: string, file: Uint8Array | string, from = teacher): Promise<void> {
  const bytes = typeof file === 'string' ? Buffer.from(file) : file;
  await world.client.sendFile(from.id, { kind: 'document', name, bytes });
  await world.settle();
}

const last = async () => (await teacher.last()).text;
const childRow = async (nickname: string) =>
  (await readTable(world.store, 'child')).find((row) => row.nickname === nickname);

/** As a spreadsheet program saves it: semicolons, Windows-1252, blank cells, a comma in quotation marks. */
const CSV = Buffer.from(
  'No;First name;Surname\r\n1;D\x92Arcy;"Baker, A"\r\n2;Zo\xeb;Cook\r\n;;\r\n3;Jay;Reed\r\n',
  'latin1',
);

describe('a class list for one of several classes', () => {
  it('asks which class it is for, and shows what it would add before anything is stored', async () => {
    const before = await readTable(world.store, 'child');
    await send('list.csv', CSV);
    expect((await teacher.last()).text).toContain('For which class is this list?');
    await teacher.tap('Heron class');
    expect((await teacher.last()).text).toBe(
      '3 nicknames for Heron class\nColumn B “First name”: D’Arcy, Zoë and Jay\nNothing is added until you tap the button.',
    );
    expect(await readTable(world.store, 'child')).toEqual(before);
    const waiting = JSON.stringify(await readTable(world.store, 'expectation'));
    expect(waiting).toContain('D’Arcy');
    for (const surname of ['Baker', 'Cook', 'Reed']) expect(waiting).not.toContain(surname);
  });

  it('is added by one tap, and not again by a second; no link is made yet', async () => {
    const { id } = await teacher.last();
    await world.client.tapLabel(teacher.id, 'Add all 3', id);
    await world.client.tapLabel(teacher.id, 'Add all 3', id);
    await world.settle();
    expect((await world.client.answers(teacher.id)).at(-1)?.text).toContain('not waiting any more');
    const added = await teacher.last();
    expect(added.text).toContain('3 children added.');
    expect(added.text.split('\n').length).toBeLessThan(10);
    expect(labelsOf(added)).toEqual(
      expect.arrayContaining([BUTTONS.slipsToPrint, BUTTONS.missingLinks, BUTTONS.firstPlan]),
    );
    const children = (await readTable(world.store, 'child')).filter(
      (row) => row.class_id === heron.id,
    );
    expect(children.map(({ number, nickname }) => `${number} ${nickname}`).sort()).toEqual([
      '1 D’Arcy',
      '2 Zoë',
      '3 Jay',
    ]);
    const ids = new Set(children.map(({ id }) => id));
    const slips = await readTable(world.store, 'slip');
    expect(slips.filter((row) => ids.has(row.child_id))).toEqual([]);
  });

  it('that went into the wrong class is taken out again by Undo', async () => {
    const { id } = await teacher.last();
    await teacher.tap(BUTTONS.undo, id);
    expect((await teacher.message(id)).text).toMatch(
      /^Taken back: 3 children added\.\n\nHeron class/,
    );
    expect((await childRow('Jay'))?.archived_at).not.toBeNull();
  });
});

describe('a class list for the class that was asked about', () => {
  it('goes to the class whose children were asked for, and names its problems by row', async () => {
    await askForChildren();
    await send('list.csv', 'Nickname,Group\nOwl,red\notter,red\nOwl,blue\n');
    const text = await last();
    expect(text).toContain('Nothing can be added yet.\nColumn A “Nickname”:');
    expect(text).toContain('Row 3: “otter” is in the class already.');
    expect(text).toContain('Row 4: “Owl” is also on row 2.');
    expect((await teacher.buttons()).join()).not.toContain('Add');
    expect(await childRow('Owl')).toBeUndefined();
  });

  it('can have its nicknames in another column, of which the teacher is shown each', async () => {
    await teacher.tap(BUTTONS.otherColumn);
    expect(await teacher.buttons()).toEqual(['A: Nickname · Owl', 'B: Group · red', BUTTONS.back]);
    await teacher.tap('B: Group');
    expect(await last()).toContain('Row 3: “red” is also on row 2.');
    await teacher.tap(BUTTONS.noHeading);
    expect(await last()).toContain('Column B:\n');
  });

  it('mended and sent again is for the same class, now as a workbook, and warns of a surname', async () => {
    const rows = ['Nickname', 'Owl', 'Otto Baker'].map((value) => [{ value }]);
    await send('list.xlsx', new Uint8Array(await writeXlsx(rows).toBuffer()));
    expect(await last()).toContain(
      '2 nicknames for Kingfisher class\nColumn A “Nickname”: Owl and',
    );
    expect(await last()).toContain('“Otto Baker”. Nicknames only, please, no surnames.');
  });

  it('waits no longer after a command, nor for a tap on an older list', async () => {
    const { id } = await teacher.last();
    await askForChildren();
    expect(await tapAndHear(teacher, 'Add all 2', id)).toContain('not waiting any more');
    expect(await tapAndHear(teacher, BUTTONS.otherColumn, id)).toContain('not waiting any more');
    await send('list.csv', 'Owl\nDove\n');
    expect(await tapAndHear(teacher, 'Add all 2', id)).toContain('not waiting any more');
    expect(await childRow('Owl')).toBeUndefined();
    expect(await childRow('Dove')).toBeUndefined();
  });
});

describe('a file', () => {
  it('that cannot be read is refused in words, and so is one that is too large', async () => {
    await askForChildren();
    await send('list.xls', new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0, 1]));
    expect(await last()).toContain('spreadsheet in an old format, or locked');
    await send('large.csv', new Uint8Array(1_000_001).fill(0x41));
    expect(await last()).toContain('too large for a class list: at most 1 MB');
    expect(await readTable(world.store, 'expectation')).toMatchObject([{ kind: 'class' }]);
  });

  it('from somebody who is no teacher is nothing we can use', async () => {
    const stranger = await newPhone(world, 3001);
    await stranger.say('/start');
    await send('list.csv', CSV, stranger);
    expect((await stranger.last()).text).toContain('I can only read text and taps');
  });

  it('that cannot be fetched at once is fetched a little later', async () => {
    await askForChildren();
    await world.client.setFault({ method: 'getFile', mode: 'error', count: 3 });
    await send('list.csv', 'Dove\n');
    await world.client.clearFaults();
    await world.goTo('2026-09-14T09:05:00Z');
    expect(await last()).toContain('1 nickname for Kingfisher class');
  });

  it('leaves no name, no typed word and no key to the chat service in the log', async () => {
    expect(await leaksOf(world)).toEqual([]);
    const logged = JSON.stringify(world.logged);
    for (const secret of [world.rehearsal.token, 'D’Arcy', 'Baker', 'Dove']) {
      expect(logged).not.toContain(secret);
    }
  });
});
