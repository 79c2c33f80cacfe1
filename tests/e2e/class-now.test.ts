import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pack } from '../../bot/callback/codec.ts';
import { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { earlierWeek, inUseAlready, movedOn } from '../../bot/texts/proposals.ts';
import {
  archiveChild,
  closePart,
  findHelperByChat,
  findTeacherByChat,
  getActivePlan,
  leaveAll,
  listActs,
  listClasses,
  undoAct,
} from '../../db/index.ts';
import { readPng } from '../bot/media/read-png.ts';
import { wordsOf } from '../bot/paper/open-pdf.ts';
import { settleEvening } from '../support/deliveries.ts';
import { leaksOf } from '../support/leaks.ts';
import type { Classroom, Family } from '../support/people.ts';
import { labelsOf, tapAndHear } from '../support/phones.ts';
import { anEvening, markPart } from '../support/practice.ts';
import { newestPaper, papersOn } from '../support/print-out.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { day } from '../support/term.ts';

const EVENINGS = ['2026-09-14', '2026-09-15', '2026-09-16', '2026-09-17'].map(day);

let stage: QuickStage;
let teacher: Phone;
let classroom: Classroom;
/** The message of Friday's digest. */
let digestId: number;

beforeAll(async () => {
  stage = await openQuickStage({ families: 4 });
  teacher = new Phone(stage.world, stage.school.teacher);
  classroom = await theClass();
  // Wren1 to Wren3 practise every evening and know all doubles; Wren4 is silent on each.
  for (const on of EVENINGS) {
    for (const place of [0, 1, 2, 3]) await live(place, on);
  }
  await stage.world.goTo(FRIDAY.evening);
  await stage.family(0).playEvening();
  await stage.world.goTo(FRIDAY.digest);
  const [digest] = await teacher.messagesWith('Right of asked');
  digestId = digest?.id ?? 0;
}, 60_000);
afterAll(async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
  expect(stage.world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  await stage.world.close();
});

async function theClass(): Promise<Classroom> {
  const { store } = stage.world;
  const found = await findTeacherByChat(store, stage.school.teacher);
  const [schoolClass] = found ? await listClasses(store, found.id) : [];
  if (!found || !schoolClass) throw new Error('the stage has a class');
  return { teacher: found, schoolClass, scope: { teacherId: found.id, classId: schoolClass.id } };
}

async function live(place: number, on: (typeof EVENINGS)[number]): Promise<void> {
  const { store } = stage.world;
  const { childId, nickname, phones } = stage.school.families[place] ?? nobody();
  const helper = (await findHelperByChat(store, phones[0])) ?? nobody();
  const child = { id: childId, number: place + 1, nickname };
  const family: Family = { child, code: '', helpers: [helper], helper };
  const { view, scope } = await anEvening(store, classroom, family, { on });
  const now = new Date(`${on}T17:00:00Z`);
  await settleEvening(store, view.id, 'sent', now);
  if (place === 3) return;
  await markPart(store, scope, { part: 0, missed: [], now });
  await closePart(store, scope, { part: 1, verdict: { kind: 'said', said: 6 + place }, now });
}

function nobody(): never {
  throw new Error('there is no such family');
}

/** What stands on the digest's own message now. */
async function shown(id = digestId): Promise<{ text: string; labels: string[] }> {
  const message = await teacher.message(id);
  const labels = labelsOf(message);
  expect(message.text.split('\n').length).toBeLessThan(10);
  return { text: message.text, labels };
}

async function tap(label: string, id = digestId): Promise<{ text: string; labels: string[] }> {
  await teacher.tap(label, id);
  return shown(id);
}

const doublesInUse = async () =>
  (await getActivePlan(stage.world.store, classroom.schoolClass.id))?.plan.parts[0]?.rung;

describe('Friday’s digest', () => {
  it('gives the answer in its first line and has everything else behind buttons', async () => {
    const { text, labels } = await shown();
    expect(text.split('\n')[0]).toBe(
      'Kingfisher class, Harbour Lane School: 3 of 4 practised on three days or more; ready to move up: doubles to 5 + 5; families to call: 1.',
    );
    expect(text).toContain('To call: 4. Wren4 (4 evenings in a row without an answer).');
    expect(text).toMatch(/doubles 65 of 65; .*\. All new this week\.\n/);
    expect(labels).toContain(BUTTONS.proposals);
  });

  it('is followed by its picture and its table, in this order', async () => {
    const files = (await teacher.chat()).flatMap(({ document }) => document?.fileName ?? []);
    expect(files).toHaveLength(2);
    expect(files[0]).toMatch(/^digest-.*\.png$/);
    expect(files[1]).toMatch(/^digest-.*\.csv$/);
  });

  it.each([
    [BUTTONS.wobbles, 'Facts to look at'],
    [BUTTONS.byStrand, 'doubles 65 of 65, new this week; 3 of 3 secure'],
    [BUTTONS.families, '4. Wren4: 4 evenings in a row without an answer. Would another time suit'],
  ])('shows behind %s what stands there, and leads back', async (label, part) => {
    expect((await tap(label)).text).toContain(part);
    expect((await tap(BUTTONS.back)).text).toContain('Right of asked');
  });
});

describe('accepting a proposal', () => {
  it('takes two taps from the digest to a plan in use, and says what it changes before it is done', async () => {
    const before = await tap(BUTTONS.proposals);
    expect(before.text).toContain(
      'doubles to 5 + 5: move up to doubles to 10 + 10 (3 of 3 children secure).',
    );
    expect(await doublesInUse()).toBe('doubles.to5');
    const after = await tap('Accept: doubles');
    expect(after.text).toContain('In use from the next evening: doubles to 10 + 10.');
    expect(await doublesInUse()).toBe('doubles.to10');
    expect(after.labels).toContain(BUTTONS.undo);
  });

  it('a second tap of the same button changes nothing and keeps the way to undo', async () => {
    const plan = await getActivePlan(stage.world.store, classroom.schoolClass.id);
    await teacher.tap(BUTTONS.undo, digestId);
    expect(await doublesInUse()).toBe('doubles.to5');
    // Undo has put the class's home over the digest; the day's button brings it back.
    await teacher.tap(BUTTONS.classNow, digestId);
    await teacher.tap('Digest of Fri 18 Sept', digestId);
    expect((await shown()).text).toContain('3 of 4 practised');
    await teacher.tap(BUTTONS.proposals, digestId);
    const [button] = (await teacher.message(digestId)).buttons.flat();
    const data = button?.data ?? '';
    await stage.world.client.rawCallback(teacher.id, digestId, data);
    await stage.world.client.rawCallback(teacher.id, digestId, data);
    await stage.world.settle();
    expect(await doublesInUse()).toBe('doubles.to10');
    expect((await stage.world.client.answers(teacher.id)).at(-1)?.text).toBe(inUseAlready());
    expect((await shown()).labels).toContain(BUTTONS.undo);
    expect(await getActivePlan(stage.world.store, classroom.schoolClass.id)).not.toEqual(plan);
  });

  it('a button whose change is not the one it showed makes none', async () => {
    const classId = classroom.schoolClass.id;
    const act = { classId, day: 'now', of: 'doubles', sign: '00000000' } as const;
    const { store, now, client, settle } = stage.world;
    const [undo] = await listActs(store, { teacherId: classroom.scope.teacherId, now: now() });
    await undoAct(store, { ...classroom.scope, actId: undo?.id ?? '', now: now() });
    await client.rawCallback(teacher.id, digestId, pack({ kind: 'acceptSteps', ...act }));
    await settle();
    expect((await client.answers(teacher.id)).at(-1)?.text).toBe(movedOn());
    expect(await doublesInUse()).toBe('doubles.to5');
    // What it could do is offered afresh.
    await teacher.tap('Accept: doubles', digestId);
    expect(await doublesInUse()).toBe('doubles.to10');
  });
});

it('“/class now” shows the same as the button of the class', async () => {
  await teacher.say('/class');
  await teacher.tap(BUTTONS.classNow);
  const { text, buttons } = await teacher.last();
  await teacher.say('/class now');
  const typed = await teacher.last();
  expect(typed.text).toBe(text);
  expect(labelsOf(typed)).toEqual(buttons.flat().map((each) => each.text));
});

describe('files of a week', () => {
  it.each([
    [BUTTONS.digestPicture, /^digest-.*\.png$/],
    [BUTTONS.digestMap, /^class-map-.*\.png$/],
    [BUTTONS.digestTrend, /^four-weeks-.*\.png$/],
  ])('%s comes as a picture', async (label, name) => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.classNow);
    await teacher.tap(BUTTONS.weekSoFar);
    await teacher.tap(label);
    const { fileName, fileId } = (await teacher.last()).document ?? {};
    expect(fileName).toMatch(name);
    expect(readPng(await stage.world.client.file(fileId ?? '')).width).toBeGreaterThan(100);
  });

  it('prints the week on one page with every child on it', async () => {
    await teacher.tap('Print A4', (await teacher.messagesWith('Right of asked')).at(-1)?.id);
    const { name, pages, first } = await newestPaper(stage.world, teacher);
    expect(name).toMatch(/^digest-.*\.pdf$/);
    expect(pages).toHaveLength(1);
    const words = wordsOf(first);
    for (const part of ['3 of 4 practised', 'Wren1', 'Wren4', 'doubles', 'counting']) {
      expect(words).toContain(part);
    }
  });
});

describe('Class now', () => {
  let id: number;
  beforeAll(async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.classNow);
    ({ id } = await teacher.last());
  });

  it('says who has practised today, what is in the plan and what wobbles', async () => {
    const { text } = await shown(id);
    expect(text).toContain('now, Fri 18 Sept');
    expect(text).toContain('Practised today: 1 of 4: Wren1.');
    expect(text).toContain('3 not marked yet.');
    expect(text).toContain('In the plan: doubles to 10 + 10; counting in fives to 200.');
    expect(text).toContain('4 of 4 children with a helper.');
  });

  it('leads to each child’s page, with a sign before who has practised', async () => {
    const { labels } = await tap(BUTTONS.childPages, id);
    expect(labels.slice(0, 4)).toEqual(['✓ 1. Wren1', '2. Wren2', '3. Wren3', '4. Wren4']);
    const { text } = await tap('✓ 1. Wren1', id);
    expect(text).toContain('Practised on 5 of 5 school days since Mon 14 Sept.');
    expect(text).toContain('Sure of: doubles to 5 + 5');
    expect(text).toContain('Family: 1 helper, last heard from on Fri 18 Sept.');
    for (const other of ['Wren2', 'Wren3', 'Wren4']) expect(text).not.toContain(other);
  });

  it('gives five to ten facts to say together, with their answers', async () => {
    const { text } = await tap(BUTTONS.sayTogether, id);
    const facts = text
      .split('\n')
      .slice(1, -1)
      .flatMap((line) => line.split(' · '));
    expect(facts.length).toBeGreaterThanOrEqual(5);
    expect(facts.length).toBeLessThanOrEqual(10);
    for (const fact of facts) expect(fact).toMatch(/ = \d+$|, \d+$/);
    await tap(BUTTONS.back, id);
  });

  it('draws a child’s own past', async () => {
    await teacher.tap(BUTTONS.childPicture, id);
    expect((await teacher.last()).text).toContain('1. Wren1: own evenings');
    expect((await teacher.last()).photo).toBeDefined();
  });

  it('says plainly that there is nothing to draw of a child without marks', async () => {
    await tap(BUTTONS.back, id);
    await tap('4. Wren4', id);
    expect(await tapAndHear(teacher, BUTTONS.childPicture, id)).toContain('nothing to draw yet');
    await tap(BUTTONS.back, id);
    await tap('✓ 1. Wren1', id);
  });
});

describe('a report', () => {
  it('is about one child and nobody else, on the paper and for the weeks chosen', async () => {
    const id = (await teacher.messagesWith('1. Wren1\n')).at(-1)?.id ?? 0;
    const menu = await tap(BUTTONS.report, id);
    expect(menu.labels).toContain('✓ Last 6 weeks');
    await tap('Since the start', id);
    const { labels } = await tap('Letter', id);
    expect(labels).toContain('✓ Since the start');
    await teacher.tap(BUTTONS.makeReport, id);
    const { name, pages, first } = await newestPaper(stage.world, teacher);
    expect(name).toBe('report-1-kingfisher-class-harbour-lane-school-2026-09-18.pdf');
    expect([pages.length, first.width]).toEqual([1, 612]);
    const words = wordsOf(first);
    expect(words).toContain('practised mental maths at home on 5 of 5');
    expect(words).toContain('Knows this well: doubles to 5 + 5.');
    expect(words).toContain('It is no test and no diagnosis.');
    expect(words).not.toMatch(/Wren[2-9]/);
  });

  it('of a class is one document with pages of its own for every child', async () => {
    await teacher.say('/class');
    await teacher.tap(BUTTONS.classNow);
    await teacher.tap(BUTTONS.reports);
    await teacher.tap(BUTTONS.makeReport);
    const { caption, pages } = await newestPaper(stage.world, teacher);
    expect(caption).toContain('Reports on 4 children');
    const named = pages.map((page) => [...new Set(wordsOf(page).match(/Wren\d/g))]);
    expect(named).toEqual([['Wren1'], ['Wren2'], ['Wren3'], ['Wren4']]);
  });
});

describe('somebody who does not teach the class', () => {
  it('is told nothing of a child and gets no paper', async () => {
    const papers = (await papersOn(teacher)).length;
    const message = (await teacher.messagesWith('reports')).at(-1);
    const data =
      message?.buttons.flat().find(({ text }) => text === BUTTONS.makeReport)?.data ?? '';
    const helper = stage.family(0);
    await stage.world.client.rawCallback(helper.id, (await helper.last()).id, data);
    await stage.world.settle();
    expect((await stage.world.client.answers(helper.id)).at(-1)?.text).toContain('not here');
    expect(await papersOn(helper)).toEqual([]);
    expect(await papersOn(teacher)).toHaveLength(papers);
  });
});

describe('a digest after the world has moved on', () => {
  it('leaves an archived child out, and counts the others as before', async () => {
    await archiveChild(stage.world.store, classroom.scope, { number: 3, now: stage.world.now() });
    await teacher.say('/class');
    await teacher.tap(BUTTONS.classNow);
    await teacher.tap(BUTTONS.weekSoFar);
    const { text } = await shown((await teacher.last()).id);
    expect(text).toContain('2 of 3 practised on three days or more');
    expect(text).not.toContain('Wren3');
  });

  it('says that every helper has left, not that nobody joined', async () => {
    for (const place of [0, 1, 3]) {
      const [phone = 0] = stage.school.families[place]?.phones ?? [];
      const helper = (await findHelperByChat(stage.world.store, phone)) ?? nobody();
      await leaveAll(stage.world.store, { helperId: helper.id, now: stage.world.now() });
    }
    const { text } = await tap(BUTTONS.back, (await teacher.last()).id);
    expect(text).toContain('0 of 3 children with a helper.');
    const week = await tap(BUTTONS.weekSoFar, (await teacher.last()).id);
    expect(week.text).toContain(': every helper has left;');
    expect(week.text).toContain('Not receiving: 1. Wren1 (the helper has left)');
  });

  it('of an earlier week proposes nothing any more', async () => {
    await stage.world.goTo('2026-09-25T09:00:00Z');
    const classId = classroom.schoolClass.id;
    const data = pack({ kind: 'proposals', classId, day: '2026-09-18' });
    await stage.world.client.rawCallback(teacher.id, digestId, data);
    await stage.world.settle();
    const { text, labels } = await shown();
    expect(text).toContain(earlierWeek());
    expect(labels).toEqual([BUTTONS.plan, BUTTONS.back]);
  });
});
