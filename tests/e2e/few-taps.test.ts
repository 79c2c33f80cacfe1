import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import {
  closePart,
  findHelperByChat,
  findTeacherByChat,
  getPlans,
  issueTeacherInvite,
  listClasses,
} from '../../db/index.ts';
import { settleEvening } from '../support/deliveries.ts';
import { linksOn, newPhone } from '../support/phones.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { papersOn } from '../support/print-out.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs } from '../support/small-class.ts';
import { day } from '../support/term.ts';
import { openWorld, type World } from '../support/world.ts';

/**
 * How many taps and typed messages things take, counted on phones of the stand-in. The goals are ours: they say when a bot is
 * quick enough for five minutes a week.
 */
const GOALS = { setUpTaps: 12, setUpTyped: 4, weekTaps: 3, partTaps: 2 } as const;

let world: World;
let teacher: Counted;
const counts: Record<string, number> = {};

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
});
afterAll(async () => {
  await world.close();
  process.stdout.write(`taps and typed messages: ${JSON.stringify(counts)}\n`);
});

/** A phone that counts what its owner does. */
interface Counted {
  readonly phone: Phone;
  readonly done: { taps: number; typed: number };
  tap(label: string, messageId?: number): Promise<void>;
  say(text: string): Promise<void>;
}

function counted(phone: Phone): Counted {
  const done = { taps: 0, typed: 0 };
  return {
    phone,
    done,
    tap: async (label, messageId) => {
      done.taps += 1;
      await phone.tap(label, messageId);
    },
    say: async (text) => {
      done.typed += 1;
      await phone.say(text);
    },
  };
}

async function theClass() {
  const known = await findTeacherByChat(world.store, 1001);
  const [schoolClass] = known ? await listClasses(world.store, known.id) : [];
  if (!known || !schoolClass) throw new Error('the class was not made');
  return { teacherId: known.id, classId: schoolClass.id };
}

const activePlan = async () => (await getPlans(world.store, await theClass())).active;

describe('setting up a class of 24', () => {
  it('takes at most 12 taps and 4 typed messages, from the first word to printed slips and a plan in use', async () => {
    const phone = await newPhone(world, 1001);
    await phone.open(world.app.linkOf(`t-${await issueTeacherInvite(world.store, world.now())}`));
    teacher = counted(phone);
    await teacher.tap(BUTTONS.newClass);
    await teacher.say('Kingfisher class');
    await teacher.tap('London · 10:00');
    await teacher.tap(BUTTONS.addChildren);
    await teacher.say(Array.from({ length: 24 }, (_, at) => `Wren${at + 1}`).join('\n'));
    await teacher.tap(BUTTONS.firstPlan);
    await teacher.tap('Year 2');
    await teacher.tap(BUTTONS.usePlan);
    await teacher.tap(BUTTONS.print);
    await teacher.tap(BUTTONS.printSlips);
    expect(await papersOn(phone)).toHaveLength(1);
    expect(await readTable(world.store, 'child')).toHaveLength(24);
    expect((await activePlan())?.plan.parts).toHaveLength(5);
    Object.assign(counts, { setUpTaps: teacher.done.taps, setUpTyped: teacher.done.typed });
    expect(teacher.done.taps).toBeLessThanOrEqual(GOALS.setUpTaps);
    expect(teacher.done.typed).toBeLessThanOrEqual(GOALS.setUpTyped);
  });
});

describe('a family whose child knows everything', () => {
  it('marks with at most 2 taps a part', async () => {
    // The slips are on paper; one child is given a link to send on instead.
    await teacher.phone.say('/class');
    for (const label of [BUTTONS.children, '1. Wren1', BUTTONS.newLink, BUTTONS.makeLink]) {
      await teacher.phone.tap(label);
    }
    const family = counted(await joinAs(world, 2001, (await linksOn(teacher.phone)).get('Wren1')));
    await world.goTo('2026-09-14T16:30:00Z');
    await family.tap(BUTTONS.start);
    const parts = (await activePlan())?.plan.parts.length ?? 0;
    for (let part = 1; part <= parts; part += 1) {
      expect((await family.phone.last()).text).toContain(`Part ${part} of ${parts}`);
      const labels = await family.phone.buttons();
      await family.tap(labels.includes(BUTTONS.allSaid) ? BUTTONS.allSaid : BUTTONS.allRight);
    }
    expect(await readTable(world.store, 'part_score')).toHaveLength(parts);
    Object.assign(counts, { parts, eveningTaps: family.done.taps });
    expect(family.done.taps).toBeLessThanOrEqual(GOALS.partTaps * parts);
    // Start is one tap for the whole evening; every part is one more.
    expect(family.done.taps).toBe(parts + 1);
  });
});

describe('planning the next week as the digest proposes', () => {
  it('takes at most 3 taps from the digest to the plan in use', async () => {
    const stage = await openQuickStage({ families: 3 });
    try {
      await knowAllDoubles(stage);
      await stage.world.goTo(FRIDAY.digest);
      const phone = counted(new Phone(stage.world, stage.school.teacher));
      const [digest] = await phone.phone.messagesWith('Right of asked');
      await phone.tap(BUTTONS.proposals, digest?.id);
      await phone.tap('Accept: doubles', digest?.id);
      expect((await phone.phone.message(digest?.id ?? 0)).text).toContain('In use from the next');
      Object.assign(counts, { weekTaps: phone.done.taps });
      expect(phone.done.taps).toBeLessThanOrEqual(GOALS.weekTaps);
    } finally {
      await stage.world.close();
    }
  });
});

/** Three families practise from Monday to Thursday, and everything is right. */
async function knowAllDoubles({ world: { store }, school }: QuickStage): Promise<void> {
  const found = await findTeacherByChat(store, school.teacher);
  const [schoolClass] = found ? await listClasses(store, found.id) : [];
  if (!found || !schoolClass) throw new Error('the stage has a class');
  const scope = { teacherId: found.id, classId: schoolClass.id };
  const classroom = { teacher: found, schoolClass, scope };
  for (const on of ['2026-09-14', '2026-09-15', '2026-09-16', '2026-09-17'].map(day)) {
    for (const [place, { childId, nickname, phones }] of school.families.entries()) {
      const helper = await findHelperByChat(store, phones[0]);
      if (!helper) throw new Error('every family of the stage has a helper');
      const child = { id: childId, number: place + 1, nickname };
      const family = { child, code: '', helpers: [helper], helper };
      const { view, scope: own } = await anEvening(store, classroom, family, { on });
      const now = new Date(`${on}T17:00:00Z`);
      await settleEvening(store, view.id, 'sent', now);
      await markPart(store, own, { part: 0, missed: [], now });
      await closePart(store, own, { part: 1, verdict: { kind: 'said', said: 6 }, now });
    }
  }
}
