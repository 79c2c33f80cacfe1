import { expect, it } from 'vitest';
import { sheetPapers } from '../../bot/features/print-papers.ts';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { getClass, listChildren, storedDay, type TeacherScope } from '../../db/index.ts';
import type { WeekPlan } from '../../drills/index.ts';
import { labelsOf, offerOf } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import type { World } from '../support/world.ts';

/** One step that has an easier one, and one that has none. */
export const TWO_PARTS: WeekPlan = {
  parts: [
    { rung: 'halves.to20', cards: 10, seconds: 3 },
    { rung: 'takeaway.within5', cards: 8, seconds: 3 },
  ],
};

/** The people of a class with {@link TWO_PARTS}: its teacher, the helper of Wren and Otter, and that of Robin. */
export interface Cast {
  readonly world: World;
  readonly scope: TeacherScope;
  readonly teacher: Phone;
  readonly both: Phone;
  readonly robin: Phone;
}

/** What is for one child only, set by the teacher and met by the families on the evening of `at`. */
export function ownWaySuite(cast: () => Cast, at: string) {
  it('a teacher sees in words what changes for one child; a second tap changes nothing back', async () => {
    const { teacher } = cast();
    await teacher.say('/class');
    for (const label of [BUTTONS.children, 'Wren', BUTTONS.ownWay]) await teacher.tap(label);
    const wishes = [BUTTONS.easier, BUTTONS.easier, BUTTONS.fewerCards, BUTTONS.untimed];
    for (const label of wishes) await teacher.tap(label);
    const { text } = await teacher.last();
    expect(text).toContain('halves of even numbers to 10, 5 cards, instead of');
    expect(text).toContain('take away within 5, 5 cards (no easier step here)');
    expect(text).toContain('No timing');
    expect(labelsOf(await teacher.last())).toEqual([
      `✓ ${BUTTONS.easier}`,
      BUTTONS.harder,
      BUTTONS.classSteps,
      `✓ ${BUTTONS.fewerCards}`,
      `✓ ${BUTTONS.untimed}`,
      BUTTONS.back,
    ]);
  });

  it('taps that come twice before they are answered set it once', async () => {
    const { world, teacher } = cast();
    await world.client.tapLabel(teacher.id, BUTTONS.untimed);
    await world.client.tapLabel(teacher.id, BUTTONS.untimed);
    await world.settle();
    expect(labelsOf(await teacher.last())).toContain(BUTTONS.untimed);
    await teacher.tap(BUTTONS.untimed);
    await teacher.tap(BUTTONS.back);
    expect((await teacher.last()).text).toContain(
      'For this child only: easier steps, fewer cards, no timing',
    );
  });

  it('the child’s family reads kind words and gets the cards without a pace; no other family does', async () => {
    const { world, both, robin } = cast();
    await world.goTo(at);
    const { id, text } = await offerOf(both, 'Wren');
    expect(text).toContain('Picked for Wren: a little shorter today. No timing');
    expect(text).not.toMatch(/easier|harder|class/i);
    expect((await offerOf(both, 'Otter')).text).not.toContain('Picked');
    await both.tap(BUTTONS.start, id);
    const part = (await both.message(id)).text;
    expect(part).toContain('as long as it takes');
    expect(part).not.toContain('seconds');
    await both.say('/show');
    expect((await both.last()).text).toContain('For Wren without timing');
    await robin.tap(BUTTONS.start);
    expect((await robin.last()).text).toContain('about 3 seconds a card');
    await robin.say('/show');
    const seen = (await robin.chat()).map((message) => message.text).join('\n');
    expect(seen).not.toMatch(/Picked for|Wren|For \S+ without timing/);
  });
}

/** What is printed for a child with a way of its own. */
export function ownWayPaperSuite(cast: () => Cast) {
  it('practice sheets on paper have the child’s own steps, and the others’ the class’s', async () => {
    const { world, scope } = cast();
    const schoolClass = await getClass(world.store, scope);
    const children = await listChildren(world.store, scope);
    const sheetsOf = async (nickname: string) => {
      const one = children.filter((child) => child.nickname === nickname);
      const today = storedDay('2026-09-23');
      const order = { schoolClass, paper: 'a4', today, children: one } as const;
      const pages = await sheetPapers(world.store, scope, order);
      if (typeof pages === 'string') throw new Error(pages);
      return pages.map(({ svg }) => svg).join('');
    };
    const isEasier = async (nickname: string) =>
      (await sheetsOf(nickname)).includes('>numbers to 10<');
    expect(await isEasier('Wren')).toBe(true);
    expect(await isEasier('Otter')).toBe(false);
  });
}

/** Buttons that somebody made up. */
export function forgedOwnWaySuite(cast: () => Cast) {
  it('a forged button of another’s child or of no meaning changes nothing', async () => {
    const { world, teacher, robin } = cast();
    const before = await readTable(world.store, 'adjustment');
    const [schoolClass] = await readTable(world.store, 'class');
    const bytes = Buffer.from(String(schoolClass?.id).replaceAll('-', ''), 'hex');
    const classId = bytes.toString('base64url');
    const { id } = await robin.last();
    for (const data of [`1:jb:${classId}:1:harder`, `1:ja:${classId}:1`]) {
      await world.client.rawCallback(robin.id, id, data);
    }
    const screen = await teacher.last();
    await world.client.rawCallback(teacher.id, screen.id, `1:jb:${classId}:1:nonsense`);
    await world.settle();
    expect(await readTable(world.store, 'adjustment')).toEqual(before);
    const heard = (await world.client.answers(robin.id)).slice(-2).map((answer) => answer.text);
    const refused = 'That is not here any more, or it is not yours to change.';
    expect(heard).toEqual([refused, refused]);
  });
}
