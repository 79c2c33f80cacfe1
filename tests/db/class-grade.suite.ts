import { expect, it } from 'vitest';
import { createClass, getClass, getRunningClass, type Store, updateClass } from '../../db/index.ts';
import type { ProfileId } from '../../drills/index.ts';
import { refusalOf } from '../support/code-of.ts';
import { aClass, SETTINGS } from '../support/people.ts';
import { runSql } from '../support/raw-rows.ts';
import { evening, MONDAY, MORNING } from '../support/term.ts';

/** The Monday evening after. */
const LATER = evening(MONDAY, 5);

/** By which curriculum and grade a class's steps are sorted. */
export function classGradeSuite(opened: () => Store): void {
  it('goes by no curriculum and no grade unless it names them', async () => {
    const { schoolClass, scope, teacher } = await aClass(opened());
    expect(await getClass(opened(), scope)).toMatchObject({ curriculum: 'own', grade: null });
    expect(schoolClass).toMatchObject({ curriculum: 'own', grade: null });
    const settings = { ...SETTINGS, curriculum: 'england', grade: '2' } as const;
    const input = { teacherId: teacher.id, settings, now: MORNING };
    const { id } = await createClass(opened(), input);
    expect(await getRunningClass(opened(), id)).toMatchObject({
      curriculum: 'england',
      grade: '2',
    });
  });

  it('another curriculum keeps a grade it names too, and clears one it does not', async () => {
    const { scope } = await aClass(opened(), { curriculum: 'ccss', grade: '1' });
    const goBy = async (curriculum: ProfileId) => {
      await updateClass(opened(), scope, { changes: { curriculum }, now: LATER });
      return (await getClass(opened(), scope)).grade;
    };
    expect(await goBy('caps')).toBe('1');
    const changes = { curriculum: 'ccss', grade: 'K' } as const;
    await updateClass(opened(), scope, { changes, now: LATER });
    expect(await goBy('england')).toBeNull();
    expect(await goBy('own')).toBeNull();
  });

  it('another setting leaves curriculum and grade as they are', async () => {
    const { scope } = await aClass(opened(), { curriculum: 'ccss', grade: 'K' });
    await updateClass(opened(), scope, { changes: { title: 'Heron' }, now: LATER });
    expect(await getClass(opened(), scope)).toMatchObject({ curriculum: 'ccss', grade: 'K' });
  });

  it.each([
    ["curriculum = 'moon'", 'stored curriculum is none of ours'],
    ["curriculum = 'caps', grade = 'K'", 'stored grade is none of its curriculum'],
  ])('a stored %s is not read as a class', async (set, why) => {
    const { scope, schoolClass } = await aClass(opened());
    await runSql(opened(), `update class set ${set} where id = '${schoolClass.id}'`);
    await expect(getClass(opened(), scope)).rejects.toThrow(why);
    // Other tests list every class.
    await runSql(opened(), `update class set archived_at = now() where id = '${schoolClass.id}'`);
  });

  it('a curriculum there is none of is refused', async () => {
    const { scope } = await aClass(opened());
    // What a caller without types could pass.
    const changes = { curriculum: 'moon' as ProfileId };
    expect(await refusalOf(updateClass(opened(), scope, { changes, now: LATER }))).toBe(
      'invalid: curriculum',
    );
  });
}
