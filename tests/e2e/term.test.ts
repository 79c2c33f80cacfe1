import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pack } from '../../bot/callback/codec.ts';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { partInList } from '../../bot/texts/part-title.ts';
import {
  activatePlan,
  addBreak,
  getPlans,
  getScheme,
  readWeek,
  saveDraftPlan,
  updateClass,
} from '../../db/index.ts';
import { makeScheme, type WeekPlan } from '../../drills/index.ts';
import { offerOf, tapAndHear } from '../support/phones.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { storedAbout } from '../support/stored.ts';
import { day } from '../support/term.ts';
import { openWorld, type World } from '../support/world.ts';

// September and October 2026 in London, British Summer Time until the 25th of October: 17:30 is 16:30 UTC.
const WEEKS = makeScheme({ curriculum: 'england', grade: '2', weeks: 6, share: 'first' });
const MIXED: WeekPlan = {
  parts: [{ rung: 'doubles.to10', also: ['halves.to20'], cards: 6, seconds: 3 }],
};

let world: World;
let heron: SmallClass;
let teacher: Phone;
let wren: Phone;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  heron = await makeSmallClass(world, ['Wren']);
  teacher = heron.teacher;
  const changes = { curriculum: 'england', grade: '2' } as const;
  await updateClass(world.store, heron.scope, { changes, now: world.now() });
  wren = await joinAs(world, 2001, heron.links.get('Wren'));
});
afterAll(() => world.close());

const textOf = async () => (await teacher.last()).text;
const inUse = async () => (await getPlans(world.store, heron.scope)).active;
const offered = async () => (await offerOf(wren, 'Wren')).text;
/** The first step that a week of the term has. */
const stepOf = (week: number) => partInList(WEEKS[week - 1]?.parts[0] ?? { rung: 'clock.half' });

async function openPlan(): Promise<void> {
  await teacher.say('/class');
  await teacher.tap(BUTTONS.plan);
}

async function tapTwice(label: string): Promise<void> {
  await world.client.tapLabel(teacher.id, label);
  await world.client.tapLabel(teacher.id, label);
  await world.settle();
}

describe('a term', () => {
  it('is made in a few taps from the class’s grade, and its first week is in use at once', async () => {
    await openPlan();
    await teacher.tap(BUTTONS.newTerm);
    await teacher.tap('6 weeks');
    await teacher.tap('First third');
    await tapTwice('Make it, from Mon 14 Sept');
    expect(await textOf()).toContain('the term, 6 weeks');
    expect((await getScheme(world.store, heron.scope))?.weeks).toEqual(WEEKS);
    expect(await inUse()).toMatchObject({ source: 'scheme', plan: WEEKS[0] });
    await openPlan();
    expect(await textOf()).toContain('In use, from the term: week 1 of 6.');
  });

  it('goes out week by week, and alters nothing that was sent', async () => {
    await world.goTo('2026-09-14T16:30:00Z');
    const first = await offered();
    expect(first).toContain(stepOf(1));
    await world.goTo('2026-09-20T16:30:00Z');
    expect((await inUse())?.plan).toEqual(WEEKS[0]);
    await world.goTo('2026-09-21T16:30:00Z');
    expect((await inUse())?.plan).toEqual(WEEKS[1]);
    expect(await offered()).toContain(stepOf(2));
    expect((await wren.messagesWith('Wren · Monday')).map(({ text }) => text)).toContain(first);
    expect(world.logged.filter(({ event }) => event === 'term_week_in_use')).toHaveLength(1);
  });

  it('gives way for a week to a plan that the teacher chose after its last evening', async () => {
    await world.goTo('2026-09-25T16:30:00Z');
    await saveDraftPlan(world.store, heron.scope, { plan: MIXED, now: world.now() });
    await world.goTo('2026-09-25T16:40:00Z');
    await activatePlan(world.store, heron.scope, world.now());
    await world.goTo('2026-09-28T16:30:00Z');
    expect(await offered()).toContain('doubles to 10 + 10 mixed with halves of even numbers to 20');
    await openPlan();
    expect(await textOf()).toContain('In use this week instead of the term’s week 3 of 6.');
  });

  it('moves on over a break', async () => {
    const fair = { first: day('2026-10-05'), last: day('2026-10-09') };
    await addBreak(world.store, heron.scope, { break: fair, title: 'Fair', now: world.now() });
    await teacher.tap(BUTTONS.term);
    expect(await textOf()).toContain('▸ 3. Mon 28 Sept');
    expect(await textOf()).toContain('4. Mon 12 Oct');
    await world.goTo('2026-10-07T16:30:00Z');
    expect((await inUse())?.plan).toEqual(MIXED);
    await world.goTo('2026-10-12T16:30:00Z');
    expect((await inUse())?.plan).toEqual(WEEKS[3]);
    expect(await offered()).toContain(stepOf(4));
  });

  it('is over after its last week: the last plan stays, and the plan’s screen says so', async () => {
    await world.goTo('2026-10-26T17:30:00Z');
    expect((await inUse())?.plan).toEqual(WEEKS[5]);
    await world.goTo('2026-11-02T17:30:00Z');
    expect((await inUse())?.plan).toEqual(WEEKS[5]);
    await openPlan();
    expect(await textOf()).toContain('The term is over; its last plan stays.');
  });
});

describe('a week of the term', () => {
  it('is changed with the plan’s own buttons, and asks for no other tap', async () => {
    await teacher.tap(BUTTONS.term);
    await teacher.tap('Week 2');
    await teacher.tap('1. ');
    await teacher.tap('− 1 (cards)');
    await teacher.tap(BUTTONS.back);
    expect(await textOf()).toContain('Week 2 of 6');
    const [part] = (await getScheme(world.store, heron.scope))?.weeks[1]?.parts ?? [];
    expect(part?.cards).toBe((WEEKS[1]?.parts[0]?.cards ?? 0) - 1);
    expect((await getPlans(world.store, heron.scope)).draft).toBeNull();
  });

  it('is repeated and taken out once by two quick taps, and can be taken back', async () => {
    const weeks = async () => (await getScheme(world.store, heron.scope))?.weeks.length;
    await tapTwice(BUTTONS.repeatWeek);
    expect(await weeks()).toBe(7);
    await teacher.tap('Week 2');
    await tapTwice(BUTTONS.removeWeek);
    expect(await weeks()).toBe(6);
    await openPlan();
    await teacher.tap(BUTTONS.term);
    await teacher.tap('Week 2');
    await teacher.tap(BUTTONS.removeWeek);
    expect(await weeks()).toBe(5);
    await teacher.tap(BUTTONS.undo);
    expect(await textOf()).toContain('Taken back: week 2 of the term taken out.');
    expect(await weeks()).toBe(6);
  });

  it('is not found by another teacher, who changes nothing', async () => {
    const kite = await makeSmallClass(world, ['Otter'], { teacherId: 1002, title: 'Kite class' });
    const stored = await storedAbout(world);
    const { id: messageId } = await kite.teacher.last();
    const { classId } = heron.scope;
    for (const action of [
      { kind: 'term', classId, page: 0 },
      { kind: 'termWeek', classId, week: 1 },
      { kind: 'termRemove', classId, week: 1, of: 6 },
      { kind: 'planRung', classId, part: 100, rung: 'clock.half' },
      { kind: 'planSource', classId, from: 'term' },
      { kind: 'preview', classId, at: 'o' },
    ] as const) {
      await world.client.rawCallback(kite.teacher.id, messageId, pack(action));
      await world.settle();
      const [answer] = (await world.client.answers(kite.teacher.id)).slice(-1);
      expect(answer?.text, action.kind).toContain('not yours to change');
    }
    expect(await storedAbout(world)).toBe(stored);
  });

  it('and the term are ended and brought back', async () => {
    await openPlan();
    await teacher.tap(BUTTONS.term);
    await tapTwice(BUTTONS.endTerm);
    expect(await getScheme(world.store, heron.scope)).toBeNull();
    await teacher.say('/undo');
    await teacher.tap('term ended');
    expect((await getScheme(world.store, heron.scope))?.weeks).toHaveLength(6);
    await openPlan();
    await teacher.tap(BUTTONS.term);
    await teacher.tap(BUTTONS.endTerm);
  });
});

describe('a whole plan', () => {
  it('taken from last week can be dropped again, and says why when there is nothing to take', async () => {
    await openPlan();
    expect(await tapAndHear(teacher, BUTTONS.fromLastWeek)).toContain('in use already');
    expect(await tapAndHear(teacher, BUTTONS.fromDigest)).toContain('proposes no change');
    await teacher.tap('1. ');
    await teacher.tap(BUTTONS.removePart);
    expect(await textOf()).toContain('Changed, not in use yet.');
    await teacher.tap(BUTTONS.dropPlan);
    expect(await textOf()).toContain('In use');
    await teacher.tap(BUTTONS.undo);
    expect((await getPlans(world.store, heron.scope)).draft?.plan.parts).toHaveLength(4);
  });
});

describe('a mixed part', () => {
  it('is put together by tapping, and takes no step that another part has', async () => {
    await openPlan();
    await teacher.tap(BUTTONS.dropPlan);
    await saveDraftPlan(world.store, heron.scope, {
      plan: { parts: [{ rung: 'doubles.to10', cards: 6, seconds: 3 }] },
      now: world.now(),
    });
    await openPlan();
    await teacher.tap('1. ');
    await teacher.tap(BUTTONS.mixIn);
    await teacher.tap('halves');
    await teacher.tap('halves of even numbers to 20');
    expect(await textOf()).toContain('mixed: doubles to 10 + 10 and halves of even numbers to 20');
    await teacher.tap(BUTTONS.back);
    await teacher.tap(BUTTONS.addPart);
    await teacher.tap('doubles');
    expect(await tapAndHear(teacher, 'doubles to 10')).toContain('Part 1 practises that already');
  });

  it('is taken apart once by two quick taps, or loses one step and stays', async () => {
    const parts = async () => (await getPlans(world.store, heron.scope)).draft?.plan.parts;
    const before = await parts();
    expect(before).toHaveLength(1);
    await openPlan();
    await teacher.tap('1. ');
    await tapTwice(BUTTONS.keepApart);
    expect((await parts())?.map(({ rung }) => rung)).toEqual(['doubles.to10', 'halves.to20']);
    await saveDraftPlan(world.store, heron.scope, {
      plan: { parts: before ?? [] },
      now: world.now(),
    });
    await openPlan();
    await teacher.tap('1. ');
    await tapTwice('✗ halves of even numbers to 20');
    expect(await parts()).toEqual([{ rung: 'doubles.to10', cards: 6, seconds: 3 }]);
    const plan = { parts: before ?? [] };
    await saveDraftPlan(world.store, heron.scope, { plan, now: world.now() });
  });
});

describe('an evening with a mixed part', () => {
  it('is previewed as a family gets it, and nothing of that is stored', async () => {
    await openPlan();
    await teacher.tap(BUTTONS.preview);
    expect(await textOf()).toContain('once you put it in use. Nothing you tap here is kept.');
    const before = await storedAbout(world);
    await teacher.tap(BUTTONS.start);
    expect((await teacher.last()).photo).toBeDefined();
    await teacher.tap(BUTTONS.someMissed);
    await teacher.tap('1. ');
    await teacher.tap(BUTTONS.done);
    expect(await textOf()).toContain('5 of 6');
    await teacher.tap(BUTTONS.previewEnd);
    expect(await textOf()).toContain('week plan');
    expect(await storedAbout(world)).toBe(before);
  });

  it('goes out, is marked, and counts for each of its strands in the digest', async () => {
    await teacher.tap(BUTTONS.usePlan);
    await world.goTo('2026-11-03T17:30:00Z');
    await wren.playEvening((part) => (part === 1 ? [1] : []), (await offerOf(wren, 'Wren')).id);
    const days = [day('2026-11-03')];
    const { classId } = heron.scope;
    const { children } = await readWeek(world.store, { classId, days, now: world.now() });
    const parts = children[0]?.evenings[0]?.parts ?? [];
    expect(parts.map(({ rung, asked }) => [rung, asked])).toEqual([
      ['doubles.to10', 3],
      ['halves.to20', 3],
    ]);
    expect(parts.reduce((total, { right }) => total + right, 0)).toBe(5);
  });

  it('left no errors behind', () => {
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });
});
