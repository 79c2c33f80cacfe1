import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pack } from '../../bot/callback/codec.ts';
import { STEPS_A_PAGE } from '../../bot/screens/step-screens.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { getClass, getPlans } from '../../db/index.ts';
import { rungsOf, usualRungs } from '../../drills/index.ts';
import { newPhone, offerOf } from '../support/phones.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { storedAbout } from '../support/stored.ts';
import { openWorld, type World } from '../support/world.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC.
let world: World;
let heron: SmallClass;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  heron = await makeSmallClass(world, ['Wren']);
});
afterAll(() => world.close());

const classOf = () => getClass(world.store, heron.scope);
const steps = async () =>
  (await heron.teacher.buttons()).filter((label) => /(?:to|within) \d+$/.test(label));

async function openPlan(): Promise<void> {
  await heron.teacher.say('/class');
  await heron.teacher.tap(BUTTONS.plan);
}

async function goBy(curriculum: string, grade: string): Promise<void> {
  await openPlan();
  await heron.teacher.tap('Usual steps: ');
  await heron.teacher.tap(curriculum);
  await heron.teacher.tap(grade);
}

describe('a class’s grade', () => {
  it('is chosen from the week plan in three taps, and shown there', async () => {
    await openPlan();
    expect(await heron.teacher.buttons()).toContain('Usual steps: choose a grade');
    await heron.teacher.tap('Usual steps: ');
    expect((await heron.teacher.last()).text).toContain('your school’s own curriculum decides');
    await heron.teacher.tap('England');
    await heron.teacher.tap('Year 2');
    expect(await heron.teacher.buttons()).toContain('Usual steps: Year 2, England');
    expect(await classOf()).toMatchObject({ curriculum: 'england', grade: '2' });
  });

  it('can be given up again, and chosen in another curriculum', async () => {
    await heron.teacher.tap('Usual steps: ');
    await heron.teacher.tap(BUTTONS.noCurriculum);
    expect(await classOf()).toMatchObject({ curriculum: 'own', grade: null });
    await goBy('South Africa', 'Grade 2');
    expect(await heron.teacher.buttons()).toContain('Usual steps: Grade 2, South Africa');
  });

  it('that the curriculum does not name is refused, and nothing changes', async () => {
    const stored = await storedAbout(world);
    const { id: messageId } = await heron.teacher.last();
    const { classId } = heron.scope;
    const forged = [
      [{ kind: 'chooseGrade', classId, curriculum: 'england', grade: '9' }, 'no such grade'],
      [{ kind: 'chooseGrade', classId, curriculum: 'caps', grade: 'K' }, 'no such grade'],
      [{ kind: 'chooseGrade', classId, curriculum: 'moon', grade: '1' }, 'not know that curric'],
    ] as const;
    for (const [action, why] of forged) {
      await world.client.rawCallback(heron.teacher.id, messageId, pack(action));
      await world.settle();
      expect((await world.client.answers(heron.teacher.id)).at(-1)?.text).toContain(why);
    }
    expect(await storedAbout(world)).toBe(stored);
  });
});

describe('choosing a step', () => {
  it('shows what is usual in the grade first, page by page, each step once', async () => {
    await openPlan();
    await heron.teacher.tap(BUTTONS.addPart);
    await heron.teacher.tap('counting');
    const pages = [await steps()];
    while ((await heron.teacher.buttons()).includes(BUTTONS.harder)) {
      await heron.teacher.tap(BUTTONS.harder);
      pages.push(await steps());
    }
    const usual = usualRungs('caps', '2', 'counting');
    expect(pages.flat()).toHaveLength(usual.length);
    expect(new Set(pages.flat()).size).toBe(usual.length);
    expect(pages.length).toBe(Math.ceil(usual.length / STEPS_A_PAGE));
    expect(pages.flat().filter((label) => !label.startsWith('● '))).toEqual([]);
    await heron.teacher.tap(BUTTONS.easier);
    expect(await steps()).toEqual(pages.at(-2));
  });

  it('reaches every step of counting in two more taps', async () => {
    await heron.teacher.tap(BUTTONS.allSteps);
    const kinds = (await heron.teacher.buttons()).filter((label) => /in \w+/.test(label));
    expect(kinds).toHaveLength(8);
    const found: string[] = [];
    for (const kind of kinds) {
      await heron.teacher.tap(kind);
      found.push(...(await steps()));
      await heron.teacher.tap(BUTTONS.allSteps);
    }
    expect(found).toHaveLength(rungsOf('counting').length);
  });

  it('puts it in the plan, which goes out with it from the next evening', async () => {
    await heron.teacher.tap('in threes');
    await heron.teacher.tap('back within 200');
    const { text } = await heron.teacher.last();
    expect(text).toContain('counting back in threes within 200');
    await heron.teacher.tap(BUTTONS.back);
    await heron.teacher.tap(BUTTONS.usePlan);
    const { active } = await getPlans(world.store, heron.scope);
    expect(active?.plan.parts.map(({ rung }) => rung)).toEqual([
      'bonds.to10',
      'counting.fives',
      'counting.threesback',
    ]);
    const wren = await joinAs(world, 2001, heron.links.get('Wren'));
    await world.goTo('2026-09-14T16:30:00Z');
    expect((await offerOf(wren, 'Wren')).text).toContain('counting');
    await wren.playEvening();
    expect((await wren.last()).text).toContain('counting back in threes within 200');
  });

  it('tells where the grade asks for it, and forbids nothing where it does not', async () => {
    await openPlan();
    await heron.teacher.tap('3. count back in threes within 200');
    const { text } = await heron.teacher.last();
    expect(text).toMatch(/Grade 2, South Africa/);
    await heron.teacher.tap(BUTTONS.changeRung);
    await heron.teacher.tap(BUTTONS.allStrands);
    await heron.teacher.tap('times tables');
    expect((await heron.teacher.last()).text).toContain('None of these is marked usual');
    await heron.teacher.tap('ten times table');
    expect((await heron.teacher.last()).text).toContain('ten times table: 10 cards');
  });
});

describe('the steps of a class', () => {
  it('are not found by another teacher, neither to look at nor to sort', async () => {
    const kite = await makeSmallClass(world, ['Otter'], { teacherId: 1002, title: 'Kite class' });
    const stored = await storedAbout(world);
    const { id: messageId } = await kite.teacher.last();
    const { classId } = heron.scope;
    for (const action of [
      { kind: 'curriculum', classId },
      { kind: 'grades', classId, curriculum: 'england' },
      { kind: 'chooseGrade', classId, curriculum: 'england', grade: '1' },
      { kind: 'planStrand', classId, part: 0, strand: 'counting' },
      { kind: 'planSteps', classId, part: 0, strand: 'counting', of: 'all', page: 0 },
    ] as const) {
      await world.client.rawCallback(kite.teacher.id, messageId, pack(action));
      await world.settle();
      expect((await world.client.answers(kite.teacher.id)).at(-1)?.text).toContain(
        'not yours to change',
      );
    }
    expect(await storedAbout(world)).toBe(stored);
    expect((await kite.teacher.last()).text).not.toContain('Heron');
  });

  it('are answered by buttons of an older message: a strand, a step, and what is not there', async () => {
    const { teacher } = heron;
    const { id: messageId } = await teacher.last();
    const { classId } = heron.scope;
    for (const [data, said] of [
      [pack({ kind: 'planStrand', classId, part: 2, strand: 'clock' }), 'Clock: which step?'],
      [pack({ kind: 'planStrand', classId, part: 2, strand: 'all' }), 'What shall be practised?'],
      [pack({ kind: 'planStrand', classId, part: 2, strand: 'algebra' }), 'What shall be'],
      [
        pack({ kind: 'planSteps', classId, part: 2, strand: 'algebra', of: 'all', page: 0 }),
        'What shall be practised?',
      ],
      [
        pack({ kind: 'planSteps', classId, part: 2, strand: 'counting', of: '7', page: 99 }),
        'Counting: in what?',
      ],
      [pack({ kind: 'grades', classId, curriculum: 'moon' }), 'Which curriculum is nearest'],
      [pack({ kind: 'planRung', classId, part: 2, rung: 'clock.half' }), 'clock (half past)'],
    ] as const) {
      await world.client.rawCallback(teacher.id, messageId, data);
      await world.settle();
      expect((await teacher.last()).text).toContain(said);
    }
  });

  it('are not found from a family’s phone', async () => {
    const phone = await newPhone(world, 3001);
    await phone.say('/start');
    const { id: messageId } = await phone.last();
    const data = pack({ kind: 'curriculum', classId: heron.scope.classId });
    await world.client.rawCallback(phone.id, messageId, data);
    await world.settle();
    expect((await world.client.answers(phone.id)).at(-1)?.text).toContain('not yours to change');
  });
});
