import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import {
  acceptTeacherInvite,
  addBook,
  addBreaks,
  createClass,
  findTeacherByChat,
  getClass,
  inviteColleague,
  listClasses,
} from '../../db/index.ts';
import { addDays } from '../../drills/index.ts';
import type { ChatMessage } from '../../rehearsal/client.ts';
import { tapEverythingTwice } from '../support/crawl.ts';
import { labelsOf } from '../support/phones.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { day } from '../support/term.ts';

/** What fits on a phone at a glance. Our own choice. */
const MOST_LINES = 9;
/** Ten rows of a list, one to its other pages and one back. */
const MOST_ROWS = 12;
const CHILDREN = 40;
/** One of these leads back, out of a question, or to everything. */
const WAYS_BACK: readonly string[] = [
  BUTTONS.back,
  BUTTONS.cancel,
  BUTTONS.classes,
  BUTTONS.children,
  BUTTONS.newClass,
  BUTTONS.teachers,
  BUTTONS.previewEnd,
];

let stage: QuickStage;
let teacher: Phone;
/** Every screen and message seen, by its text and buttons. */
const seen = new Map<string, ChatMessage>();

beforeAll(async () => {
  stage = await openQuickStage({ families: CHILDREN });
  teacher = new Phone(stage.world, stage.school.teacher);
  await fill();
  await stage.world.goTo(FRIDAY.evening);
  await stage.family(0).playEvening();
  await teacher.say('/class');
  for (const { title } of (await listClasses(stage.world.store, await teacherId())).slice(0, 1)) {
    await teacher.tap(title);
  }
}, 60_000);
afterAll(() => stage.world.close());

async function teacherId(): Promise<string> {
  const found = await findTeacherByChat(stage.world.store, stage.school.teacher);
  if (!found) throw new Error('the stage has a teacher');
  return found.id;
}

/** Long lists of everything a class can have many of. */
async function fill(): Promise<void> {
  const { store } = stage.world;
  const now = stage.world.now();
  const own = await teacherId();
  const [schoolClass] = await listClasses(store, own);
  const scope = { teacherId: own, classId: schoolClass?.id ?? '' };
  const { id: _id, digestSince: _since, ...settings } = await getClass(store, scope);
  for (let at = 1; at <= 9; at += 1) {
    await createClass(store, {
      teacherId: own,
      settings: { ...settings, title: `Heron class ${at}` },
      now,
    });
  }
  const breaks = Array.from({ length: 30 }, (_, at) => {
    const first = addDays(day('2026-10-05'), at * 7);
    return { break: { first, last: first }, title: `A day off with a rather long name ${at + 1}` };
  });
  await addBreaks(store, scope, { breaks, now });
  for (let at = 1; at <= 6; at += 1) {
    const book = { title: `Pebble Path ${at}`, firstPage: 1, lastPage: 48, pagesADay: 2 };
    await addBook(store, scope, { book, now });
  }
  const code = await inviteColleague(store, scope, { role: 'co', now });
  await acceptTeacherInvite(store, { code, chatId: 1_900, now });
}

function look(messages: readonly ChatMessage[]): void {
  for (const message of messages) {
    if (message.from === 'bot') seen.set(`${message.text}\n${labelsOf(message)}`, message);
  }
}

describe('every screen of a class of forty', () => {
  it('is reached by tapping, and every tap is answered', async () => {
    const except = [
      BUTTONS.archiveClass,
      BUTTONS.reallyLeave,
      BUTTONS.printSlips,
      BUTTONS.makeReport,
    ];
    const { unanswered } = await tapEverythingTwice(stage.world, teacher, {
      except,
      ofAKind: 2,
      look,
    });
    expect(unanswered).toEqual([]);
    expect(stage.world.logged.filter(({ level }) => level === 'error')).toEqual([]);
    expect(seen.size).toBeGreaterThan(80);
  }, 120_000);

  it('is sent for commands and for what nobody asked for', async () => {
    for (const text of [
      '/undo',
      '/help',
      'hello',
      '/class',
      '/newclass',
      'x'.repeat(70),
      '/class',
    ]) {
      await teacher.say(text);
    }
    const family = stage.family(1);
    for (const text of ['/help', 'hello', '/today', '/time 4', '/show', '/stop']) {
      await family.say(text);
    }
    look(await teacher.chat());
    const helps = (await family.chat()).filter(({ from }) => from === 'bot');
    for (const { text } of helps) expect(text.split('\n').length).toBeLessThanOrEqual(MOST_LINES);
    const { text } = await teacher.last();
    expect(text).toContain('Your classes');
  });

  it('has less than ten lines; only a list of join links, which are passed on, is longer', () => {
    const long = [...seen.values()]
      .filter(({ text }) => (text.match(/\?start=/g) ?? []).length < 2)
      .filter(({ text }) => text.split('\n').length > MOST_LINES);
    expect(long.map(({ text }) => text)).toEqual([]);
  });

  it('has at most ten rows of a list, and two that lead on and back', () => {
    const tall = [...seen.values()].filter(({ buttons }) => buttons.length > MOST_ROWS);
    expect(tall.map((message) => [message.text.split('\n')[0], labelsOf(message)])).toEqual([]);
  });

  it('has a way back wherever it has buttons', () => {
    const stuck = [...seen.values()].filter((message) => {
      const labels = labelsOf(message);
      return labels.length > 0 && !labels.some((label) => WAYS_BACK.includes(label));
    });
    expect(stuck.map((message) => [message.text.split('\n')[0], labelsOf(message)])).toEqual([]);
  });
});
