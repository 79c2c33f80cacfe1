import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ACTIONS } from '../../bot/callback/actions.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { WAYS } from '../../db/index.ts';
import { tapEverythingTwice } from '../support/crawl.ts';
import { DEMO_TEACHER, loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, newPhone } from '../support/phones.ts';
import { type RawRow, readTable } from '../support/raw-rows.ts';
import { openWorld, type World } from '../support/world.ts';

let world: World;
let teacher: Phone;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world);
  teacher = new Phone(world, DEMO_TEACHER);
  await world.goTo('2026-09-14T16:30:00Z');
});
afterAll(() => world.close());

const errors = () => world.logged.filter((line) => line.level === 'error');
const rows = (table: string) => readTable(world.store, table);

/** How often each value comes, by some columns. */
function tally(found: readonly RawRow[], ...columns: string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const row of found) {
    const key = columns.map((column) => row[column]).join(' ');
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  return counts;
}

const tagsOf = (tapped: readonly string[]) => new Set(tapped.map((data) => data.split(':')[1]));

describe('every button of a family’s evening, tapped twice in quick succession', () => {
  let tapped: readonly string[] = [];

  it('is answered each time, and nothing goes wrong', async () => {
    const crawl = await tapEverythingTwice(world, new Phone(world, 2005), { ofAKind: 6 });
    tapped = crawl.tapped;
    expect(crawl.unanswered).toEqual([]);
    expect(errors()).toEqual([]);
  });

  it('reached every kind of button an evening has', () => {
    const { start, later, notToday, allRight, mark, toggle, done, said, pages, fix } = ACTIONS;
    const family = [start, later, notToday, allRight, mark, toggle, done, said, pages, fix];
    const kinds = [...family, ACTIONS.stopToday];
    const tags = tagsOf(tapped);
    expect(kinds.map(({ tag }) => tag).filter((tag) => !tags.has(tag))).toEqual([]);
  });

  it('left whole sets of marks, numbered without gaps, and scores that agree with them', async () => {
    const marks = await rows('mark');
    const scores = await rows('part_score');
    expect(scores).toHaveLength(5);
    for (const score of scores.filter(({ strand }) => strand !== 'counting')) {
      const own = marks.filter((mark) => mark.part === score.part);
      const sets = tally(own, 'revision');
      const revisions = [...sets.keys()].map(Number).sort((a, b) => a - b);
      expect(revisions).toEqual(revisions.map((_, index) => index + 1));
      expect(new Set(sets.values())).toEqual(new Set([score.asked]));
      const latest = own.filter((mark) => mark.revision === score.revision);
      expect(score.revision).toBe(revisions.at(-1));
      expect(latest.filter((mark) => mark.right)).toHaveLength(Number(score.right));
    }
    expect((await rows('marking')).length).toBeLessThanOrEqual(1);
  });
});

describe('every way to show an evening, tapped twice in quick succession', () => {
  it('is answered each time, and the last one holds', async () => {
    const phone = new Phone(world, 2010);
    await phone.say('/show');
    const except = [BUTTONS.start, BUTTONS.later, BUTTONS.notToday];
    const crawl = await tapEverythingTwice(world, phone, { except, ofAKind: WAYS.length });
    const ways = crawl.tapped.filter((data) => data.startsWith('1:wy:'));
    expect(ways).toEqual(WAYS.map((way) => `1:wy:${way}`));
    expect(crawl.unanswered).toEqual([]);
    expect(errors()).toEqual([]);
    // The phone that tapped every button of its evening has the choices of joining in its chat too.
    const others = (await rows('helper')).filter(
      ({ way, chat_id }) => way !== 'clip' && chat_id !== 2005,
    );
    expect(others.map(({ chat_id, way }) => [chat_id, way])).toEqual([[2010, 'words']]);
  });
});

describe('every button of a teacher’s class, tapped twice in quick succession', () => {
  let tapped: readonly string[] = [];

  it('is answered each time, and nothing goes wrong', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.greeting);
    await teacher.tap(BUTTONS.sendGreeting);
    await teacher.say('A good week to all of you.');
    await teacher.say('/class');
    // An archived class has no buttons any more (see teachers.test.ts).
    const crawl = await tapEverythingTwice(world, teacher, { except: [BUTTONS.archiveClass] });
    tapped = crawl.tapped;
    expect(crawl.unanswered).toEqual([]);
    expect(errors()).toEqual([]);
  });

  it('reached every kind of button a class has', () => {
    // There is no break to remove, every child has a helper, there is no other class, and nobody sent a file.
    const { agree, disagree, leave, stay, chooseWay, removeBreak, makeLinks, ...rest } = ACTIONS;
    const { moveChildTo, fileClasses, fileClass, fileColumns, fileColumn, ...more1 } = rest;
    // Nobody sent a recording either (see greeting.test.ts).
    const { useRecording, dropRecording, ...more3 } = more1;
    // Nothing is ready to move up, and whose report is asked for is archived by then (see class-now.test.ts).
    const { acceptSteps, makeReport, ...more4 } = more3;
    // So is whoever's workbooks are asked for (see workbooks.test.ts).
    const { askOwnBook, askChildPage, ...more2 } = more4;
    // Whoever is archived here is brought back by Undo; the list of the archived is in children.test.ts.
    const { fileAdd, undoList, archivedChildren, bringBack, ...more5 } = more2;
    // The grade that a term is made from is given up on the way, and no part is mixed by chance (see term.test.ts).
    const { termWeek, termRepeat, termRemove, termShift, termEnd, ...more6 } = more5;
    const { planTakeOut, planApart, ...more7 } = more6;
    // There is no co-teacher, and neither grade nor zone are asked for twice (see teachers.test.ts and few-taps.test.ts).
    const { removeTeacher, askToLeave, leaveClass, archiveClass, chooseZone, ...more8 } = more7;
    // There is a plan in use, and the reply that offered a first one leads on to the links (see enrolment.test.ts).
    const { firstPlan, firstPlanFor, breaksAt, ...more9 } = more8;
    // A teacher erases nothing by a button (see rights.test.ts).
    const { eraseAsk, erase, eraseUndo, eraseNot, ...more10 } = more9;
    // How often the drill comes is the family's to say, and nobody was silent for two weeks (see pace.test.ts).
    const { pauseOpen, pauseUntil, pauseAsk, pauseEnd, everyDay, everyDayNow, ...more11 } = more10;
    const { drillDays, drillDay, fewerEvenings, keepDaily, ...more12 } = more11;
    // So are joining, settings and passing a link on (see families.test.ts).
    const { joinAs, joinTime, joinWay, joinNext, leaveChild, shareAsk, shareLink, ...more13 } =
      more12;
    const { settings, timeChoices, chooseTime, wayChoices, settleWay, setSwitch, ...more14 } =
      more13;
    // So are a language of one's own, one card at a time, turns and stopping (see languages.test.ts and one-by-one.test.ts).
    const { noticeIn, chooseLanguage, stopToday, showAnswer, cardRight, ...more15 } = more14;
    const { cardNotYet, cardBack, nextChild, ...others } = more15;
    const family = [ACTIONS.start, ACTIONS.later, ACTIONS.notToday, ACTIONS.allRight, ACTIONS.mark];
    const more = [ACTIONS.toggle, ACTIONS.done, ACTIONS.said, ACTIONS.pages, ACTIONS.fix];
    const away = new Set([...family, ...more, ACTIONS.fixPages].map(({ tag }): string => tag));
    const kinds = Object.values(others).map(({ tag }): string => tag);
    const tags = tagsOf(tapped);
    expect(kinds.filter((tag) => !away.has(tag) && !tags.has(tag))).toEqual([]);
  });

  it('left a class that can be used: its days, its children, and one link at most for each', async () => {
    const [schoolClass] = await rows('class');
    expect(schoolClass?.weekdays).not.toEqual([]);
    expect(await rows('child')).toHaveLength(12);
    const live = (await rows('slip')).filter((slip) => slip.revoked_at === null);
    expect(Math.max(...tally(live, 'child_id').values())).toBe(1);
    expect((await rows('week_plan')).filter((plan) => plan.status === 'draft').length).toBeLessThan(
      2,
    );
    expect(await ask(teacher, '/class')).toContain('Kingfisher class');
  });
});

describe('two quick taps', () => {
  it('on “Remove this part” remove one part', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.plan);
    const parts = async () => (await teacher.buttons()).filter((label) => /^\d\. /.test(label));
    const before = await parts();
    await teacher.tap(before[0] ?? '');
    await world.client.tapLabel(teacher.id, BUTTONS.removePart);
    await world.client.tapLabel(teacher.id, BUTTONS.removePart);
    await world.settle();
    expect(await parts()).toHaveLength(before.length - 1);
  });

  it('on a break remove that break only', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.breaks);
    for (const text of ['2026-10-26 to 2026-10-30 Half term', '2026-12-21 to 2027-01-01 Winter']) {
      await teacher.tap(BUTTONS.addBreak);
      await teacher.say(text);
      await teacher.tap(BUTTONS.back);
      await teacher.tap(BUTTONS.breaks);
    }
    await world.client.tapLabel(teacher.id, '✗ Half term');
    await world.client.tapLabel(teacher.id, '✗ Half term');
    await world.settle();
    const typed = (await rows('break')).map((row) => row.title);
    expect(typed).toContain('Winter');
    expect(typed).not.toContain('Half term');
  });

  it('on “I agree” join once, with one agreement and one use of the link', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    await teacher.tap('6. Pip');
    await teacher.tap(BUTTONS.newLink);
    await teacher.tap(BUTTONS.makeLink);
    const link = /\S+\?start=\S+/.exec((await teacher.last()).text)?.[0] ?? '';
    const before = [(await rows('helper_child')).length, (await rows('consent')).length];
    const aunt = await newPhone(world, 2050);
    await aunt.open(link);
    await world.client.tapLabel(aunt.id, BUTTONS.agree);
    await world.client.tapLabel(aunt.id, BUTTONS.agree);
    await world.settle();
    const after = [(await rows('helper_child')).length, (await rows('consent')).length];
    expect(after).toEqual(before.map((count) => count + 1));
    const [slip] = (await rows('slip')).filter((row) => row.uses_left === 3 && !row.revoked_at);
    expect(slip).toBeDefined();
    expect((await aunt.last()).text).toContain('You are Pip’s helper now');
  });

  it('on “Yes, stop for good” end it once', async () => {
    const aunt = new Phone(world, 2050);
    await aunt.say('/stop');
    await world.client.tapLabel(aunt.id, BUTTONS.leave);
    await world.client.tapLabel(aunt.id, BUTTONS.leave);
    await world.settle();
    expect((await aunt.last()).text).toContain('No more messages will come');
    expect((await rows('helper_child')).filter((row) => row.left_at)).toHaveLength(1);
  });

  it('never tell a name or a typed text to the log', async () => {
    expect(errors()).toEqual([]);
    expect(await leaksOf(world)).toEqual([]);
  });
});
