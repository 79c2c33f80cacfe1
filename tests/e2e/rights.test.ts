import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { heldData } from '../../db/index.ts';
import { leaksIn } from '../support/leaks.ts';
import { newPhone } from '../support/phones.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable } from '../support/raw-rows.ts';
import { tablesWith } from '../support/whole-database.ts';

const SATURDAY = { morning: '2026-09-19T08:00:00Z', evening: '2026-09-19T17:05:00Z' };

let stage: QuickStage;
const other = () => new Phone(stage.world, stage.school.families[0]?.phones[1] ?? 0);
const teacher = () => new Phone(stage.world, stage.school.teacher);

beforeAll(async () => {
  stage = await openQuickStage({ families: 2, helpers: 2 });
  await stage.world.goTo(FRIDAY.evening);
  await stage.family(0).playEvening(() => [2]);
});
afterAll(() => stage.world.close());

/** The documents on a phone, as text. */
async function files(phone: Phone): Promise<{ name: string; text: string }[]> {
  const documents = (await phone.chat()).flatMap((message) => message.document ?? []);
  return Promise.all(
    documents.map(async ({ fileName, fileId }) => ({
      name: fileName ?? '',
      text: Buffer.from(await stage.world.client.file(fileId)).toString('utf8'),
    })),
  );
}

describe('“/mydata”', () => {
  it('sends a table and a file for programs about the own child, and nothing of another', async () => {
    await stage.family(0).say('/mydata');
    const [table, json, ...more] = await files(stage.family(0));
    expect(more).toEqual([]);
    expect([table?.name, json?.name]).toEqual([
      'child-1-2026-09-18.csv',
      'child-1-2026-09-18.json',
    ]);
    const data = heldData.parse(JSON.parse(json?.text ?? ''));
    expect(data.child).toMatchObject({ nickname: 'Wren1', number: 1 });
    expect(data.evenings[0]?.marks.filter(({ right }) => !right)).toHaveLength(1);
    expect(table?.text).toContain('what,when,name,value,more\r\n');
    expect(table?.text.match(/\r\nmark,/g)).toHaveLength(5);
    expect(`${table?.text}${json?.text}`).not.toContain('Wren2');
    expect(`${table?.text}${json?.text}`).not.toContain(String(other().id));
  });

  it('tells somebody who helps nobody that nothing is kept', async () => {
    const stranger = await newPhone(stage.world, 3001);
    await stranger.say('/start');
    for (const text of ['/mydata', '/erase']) {
      await stranger.say(text);
      expect((await stranger.last()).text).toContain('Nothing about a child is kept for you');
    }
  });
});

describe('“/erase”', () => {
  it('asks once, and “No” changes nothing', async () => {
    await stage.family(0).say('/erase');
    expect((await stage.family(0).last()).text).toContain('Erase everything about Wren1?');
    await stage.family(0).tap(BUTTONS.eraseNot);
    expect((await readTable(stage.world.store, 'child')).map((row) => row.erasing_since)).toEqual([
      null,
      null,
    ]);
  });

  it('calls off what is still to come, tells the others, and Undo within the day brings all back', async () => {
    await stage.family(0).say('/erase');
    await stage.family(0).tap(BUTTONS.erase);
    expect(await stage.family(0).buttons()).toEqual([BUTTONS.undo]);
    expect((await other().last()).text).toContain('Everything kept about Wren1 is being erased');
    const told = (await teacher().last()).text;
    expect(told).toContain('No. 1 of Kingfisher class');
    expect(told).not.toContain('Wren1');
    await other().say('/erase');
    expect((await other().last()).text).toContain('Only they can take it back');
    await other().say('/today');
    expect((await other().last()).text).not.toContain('Wren1');
    await stage.family(0).tap(BUTTONS.undo);
    expect((await stage.family(0).last()).text).toContain('Wren1 stays.');
    expect((await other().last()).text).toContain('not erased after all');
    expect((await teacher().last()).text).toContain('is back on the list');
  });

  it('a day later nothing is left in the database, and no log line ever named the child', async () => {
    const { store } = stage.world;
    await stage.family(0).say('/erase');
    await stage.family(0).tap(BUTTONS.erase);
    const { id: messageId } = await stage.family(0).last();
    const phones = stage.school.families[0]?.phones ?? [];
    const childId = stage.school.families[0]?.childId ?? '';
    await stage.world.goTo(SATURDAY.morning);
    expect(await tablesWith(store, 'Wren1')).not.toEqual([]);
    await stage.world.goTo(SATURDAY.evening);
    expect(await tablesWith(store, 'Wren1')).toEqual([]);
    expect(await tablesWith(store, childId)).toEqual(['public.erasure']);
    for (const phone of phones) expect(await tablesWith(store, String(phone))).toEqual([]);
    expect(leaksIn(stage.world.logged, ['Wren1', ...phones.map(String)])).toEqual([]);
    expect(stage.events()).toContain('children_erased');
    await stage.family(0).tap(BUTTONS.undo, messageId);
    const heard = (await stage.world.client.answers(phones[0] ?? 0)).at(-1)?.text;
    expect(heard).toContain('gone already');
    await stage.family(1).say('/today');
    expect((await stage.family(1).last()).text).toContain('Wren2');
  });
});
