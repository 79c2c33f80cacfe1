import { describe, expect, it } from 'vitest';
import {
  addChildren,
  isEveningTime,
  listChildren,
  listClasses,
  listFamilyChildren,
  MAX_CHILDREN,
  markUnreachable,
  type Store,
  setEveningTime,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aChild, aClass, aFamily, aHelper, aSlip, aTeacher, onBot } from '../support/people.ts';
import { runSql } from '../support/raw-rows.ts';
import { MORNING, time } from '../support/term.ts';

/** Children and their families. Runs on the store that classes.test.ts opens. */
export function rosterSuite(opened: () => Store): void {
  describe('of children', () => children(opened));
  describe('of families', () => families(opened));
}

function children(opened: () => Store) {
  const names = async (scope: Parameters<typeof listChildren>[1]) =>
    (await listChildren(opened(), scope)).map((row) => `${row.number} ${row.nickname}`);

  it('children are numbered in the order given, after those already there', async () => {
    const { scope } = await aClass(opened());
    await addChildren(opened(), scope, { nicknames: ['Wren', 'Otto'], now: MORNING });
    await addChildren(opened(), scope, { nicknames: [], now: MORNING });
    await addChildren(opened(), scope, { nicknames: ['Juniper'], now: MORNING });
    expect(await names(scope)).toEqual(['1 Wren', '2 Otto', '3 Juniper']);
  });

  it.each([
    ['is in the class already', ['Juniper', 'wREN']],
    ['comes twice in one list', ['Juniper', 'Otto', 'otto']],
  ])(
    'a nickname that %s is a conflict in any case, and nobody is added',
    async (_how, nicknames) => {
      const classroom = await aClass(opened());
      await aChild(opened(), classroom, 'Wren');
      const adding = addChildren(opened(), classroom.scope, { nicknames, now: MORNING });
      expect(await codeOf(adding)).toBe('conflict');
      expect(await names(classroom.scope)).toEqual(['1 Wren']);
    },
  );

  it('an archived child’s nickname is free again, its number is not', async () => {
    const classroom = await aClass(opened());
    const { id } = await aChild(opened(), classroom, 'Wren');
    await runSql(
      opened(),
      `update child set archived_at = '2026-09-14T08:00:00Z' where id = '${id}'`,
    );
    await aChild(opened(), classroom, 'wren');
    expect(await names(classroom.scope)).toEqual(['2 wren']);
  });

  it('a class is full at the limit, and one too many adds nobody', async () => {
    const { scope } = await aClass(opened());
    const nicknames = Array.from({ length: MAX_CHILDREN }, (_, index) => `Wren ${index}`);
    const tooMany = addChildren(opened(), scope, {
      nicknames: [...nicknames, 'Otto'],
      now: MORNING,
    });
    expect(await codeOf(tooMany)).toBe('invalid');
    expect(await names(scope)).toEqual([]);
    await addChildren(opened(), scope, { nicknames, now: MORNING });
    const one = addChildren(opened(), scope, { nicknames: ['Otto'], now: MORNING });
    expect(await codeOf(one)).toBe('invalid');
    expect(await names(scope)).toHaveLength(MAX_CHILDREN);
  });

  it('a child’s helpers are counted, and those within reach, but never named', async () => {
    const classroom = await aClass(opened());
    const { helper } = await aFamily(opened(), classroom, { helpers: 2 });
    await markUnreachable(opened(), onBot(helper.chatId), MORNING);
    const [listed] = await listChildren(opened(), classroom.scope);
    expect(listed).toMatchObject({ helpers: 2, reachable: 1, eveningTime: null });
    expect(Object.keys(listed ?? {}).sort()).toEqual([
      'eveningTime',
      'helpers',
      'id',
      'left',
      'nickname',
      'number',
      'reachable',
    ]);
  });
}

function families(opened: () => Store) {
  it('a family’s own time holds for all its children and for no other family', async () => {
    const classroom = await aClass(opened());
    const { helper } = await aFamily(opened(), classroom);
    const sibling = await aChild(opened(), classroom, 'Otto');
    await aHelper(opened(), await aSlip(opened(), classroom, sibling.id), helper.chatId);
    const neighbour = await aFamily(opened(), classroom, { nickname: 'Juniper' });
    const input = { helperId: helper.id, time: time('19:10'), now: MORNING };
    expect(await setEveningTime(opened(), input)).toBe(2);
    const times = async (helperId: string) =>
      (await listFamilyChildren(opened(), helperId)).map((row) => row.eveningTime);
    expect(await times(helper.id)).toEqual(['19:10', '19:10']);
    expect(await times(neighbour.helper.id)).toEqual(['17:30']);
  });

  it.each(['05:59', '20:01'])('a family’s time of %s is refused', async (wrong) => {
    const { helper } = await aFamily(opened(), await aClass(opened()));
    expect(isEveningTime(time(wrong))).toBe(false);
    const setting = setEveningTime(opened(), {
      helperId: helper.id,
      time: time(wrong),
      now: MORNING,
    });
    expect(await refusalOf(setting)).toBe('invalid: evening time');
  });

  it('a teacher without a class has none', async () => {
    const { id } = await aTeacher(opened());
    expect(await listClasses(opened(), id)).toEqual([]);
  });
}
