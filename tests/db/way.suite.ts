import { describe, expect, it } from 'vitest';
import { getWay, leaveAll, type Store, setWay, WAYS } from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { aChild, aClass, aFamily, aHelper, aSlip } from '../support/people.ts';
import { dumpAll, runSql } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

const NOBODY = '00000000-0000-7000-8000-000000000000';

/** How an evening is shown to a helper. Runs on the store that joining.test.ts opens. */
export function waySuite(opened: () => Store): void {
  describe('is chosen', () => choosing(opened));
  describe('is refused', () => refusing(opened));
  describe('belongs to one helper', () => owning(opened));
}

async function aHelperOf(store: Store) {
  const { helper } = await aFamily(store, await aClass(store));
  return helper.id;
}

function choosing(opened: () => Store) {
  it('a helper who never chose is shown a clip', async () => {
    expect(await getWay(opened(), await aHelperOf(opened()))).toBe('clip');
  });

  it.each(WAYS)('%s is kept once chosen, and chosen twice is the same', async (way) => {
    const helperId = await aHelperOf(opened());
    await setWay(opened(), { helperId, way: way === 'words' ? 'pictures' : 'words' });
    expect(await setWay(opened(), { helperId, way })).toBe(way);
    const once = await dumpAll(opened());
    expect(await setWay(opened(), { helperId, way })).toBe(way);
    expect(await dumpAll(opened())).toEqual(once);
    expect(await getWay(opened(), helperId)).toBe(way);
  });
}

function refusing(opened: () => Store) {
  it.each(['', 'Clip', 'clips', 'words ', 'constructor'])(
    '%j is no way to show an evening, and changes nothing',
    async (way) => {
      const helperId = await aHelperOf(opened());
      const before = await dumpAll(opened());
      expect(await refusalOf(setWay(opened(), { helperId, way }))).toBe('invalid: way');
      expect(await dumpAll(opened())).toEqual(before);
    },
  );

  it('a helper there is none of has no way and sets none', async () => {
    const before = await dumpAll(opened());
    expect(await refusalOf(getWay(opened(), NOBODY))).toBe('not_found: helper');
    const setting = setWay(opened(), { helperId: NOBODY, way: 'words' });
    expect(await refusalOf(setting)).toBe('not_found: helper');
    expect(await dumpAll(opened())).toEqual(before);
  });

  it('a teacher has none either', async () => {
    const { teacher } = await aClass(opened());
    expect(await codeOf(getWay(opened(), teacher.id))).toBe('not_found');
    expect(await codeOf(setWay(opened(), { helperId: teacher.id, way: 'words' }))).toBe(
      'not_found',
    );
  });

  it('a stored way that no verb writes is not passed on', async () => {
    const helperId = await aHelperOf(opened());
    await runSql(opened(), `update helper set way = 'smoke' where id = '${helperId}'`);
    await expect(getWay(opened(), helperId)).rejects.toThrow('stored way is none of ours');
  });
}

function owning(opened: () => Store) {
  it('the other helper of the same child and another family keep theirs', async () => {
    const classroom = await aClass(opened());
    const { helper, helpers } = await aFamily(opened(), classroom, { helpers: 2 });
    const neighbour = await aFamily(opened(), classroom, { nickname: 'Otter' });
    await setWay(opened(), { helperId: helper.id, way: 'words' });
    expect(await getWay(opened(), helper.id)).toBe('words');
    expect(await getWay(opened(), helpers[1]?.id ?? '')).toBe('clip');
    expect(await getWay(opened(), neighbour.helper.id)).toBe('clip');
  });

  it('one who left changes nothing, and finds the old choice after joining again', async () => {
    const classroom = await aClass(opened());
    const { helper } = await aFamily(opened(), classroom);
    await setWay(opened(), { helperId: helper.id, way: 'pictures' });
    await leaveAll(opened(), { helperId: helper.id, now: MORNING });
    const setting = setWay(opened(), { helperId: helper.id, way: 'words' });
    expect(await codeOf(setting)).toBe('not_found');
    const sibling = await aChild(opened(), classroom, 'Robin');
    await aHelper(opened(), await aSlip(opened(), classroom, sibling.id), helper.chatId);
    expect(await getWay(opened(), helper.id)).toBe('pictures');
  });
}
