import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import type { TeacherScope } from '../../db/index.ts';
import { mp4 } from '../rehearsal/support/mp4.ts';
import { ogg } from '../rehearsal/support/ogg.ts';
import { countOf, sendFile, since } from '../support/came.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, labelsOf, tapAndHear } from '../support/phones.ts';
import { readTable, runSql } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';
import {
  type Cast,
  forgedOwnWaySuite,
  ownWayPaperSuite,
  ownWaySuite,
  TWO_PARTS,
} from './own-way.suite.ts';

const WORDS = 'A good <b>week</b> to all of you.\n\nYours, Ms Harbour';

let world: World;
let teacher: Phone;
let both: Phone;
let robin: Phone;
let scope: TeacherScope;
const cast = (): Cast => ({ world, scope, teacher, both, robin });
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  const names = ['Wren', 'Otter', 'Robin'];
  const made = await makeSmallClass(world, names, { title: 'Kingfisher class', plan: TWO_PARTS });
  ({ teacher, scope } = made);
  both = await joinAs(world, 2001, made.links.get('Wren'));
  await both.open(made.links.get('Otter') ?? '');
  await both.tap(BUTTONS.agree);
  robin = await joinAs(world, 2002, made.links.get('Robin'));
});
afterAll(() => world.close());

const sendVoice = (phone: Phone, seconds: number) =>
  sendFile(world, phone, { kind: 'voice', bytes: ogg({ seconds }), seconds });

async function voiceCalls() {
  return (await world.client.log()).filter(({ method }) => method === 'sendVoice');
}

/** Evenings without a greeting, in the order of their names: they leave side by side. */
const EVENINGS = [['Otter', 'Wren'], ['Robin']];

/** Goes to an evening and says what came to each family. */
async function eveningOf(day: number): Promise<readonly [string[], string[]]> {
  const before = [await countOf(both), await countOf(robin)] as const;
  await world.goTo(`2026-09-${day}T16:30:00Z`);
  return [await since(both, before[0]), await since(robin, before[1])];
}

const inOrder = (came: readonly string[][]) => came.map((words) => words.toSorted());

const openGreeting = async () => {
  await teacher.say('/class');
  await teacher.tap(BUTTONS.greeting);
};

describe('a voice note of the teacher', () => {
  it('that is too long is refused with the limit, and the question stands', async () => {
    await openGreeting();
    expect((await teacher.last()).text).toContain('no greeting');
    await teacher.tap(BUTTONS.sendGreeting);
    await sendVoice(teacher, 75);
    expect((await teacher.last()).text).toContain('75 seconds long; a greeting has at most 60');
  });

  it('comes back to the teacher by its own id, as a family gets it, with when it goes out', async () => {
    const sent = await sendVoice(teacher, 7);
    const [preview, home] = (await teacher.chat()).slice(-2);
    expect(preview?.voice?.duration).toBe(7);
    expect(preview?.text).toBe('Kingfisher class: a greeting from the teacher');
    expect(home?.text).toContain('From Mon 14 Sept to Sun 20 Sept');
    expect((await voiceCalls()).map(({ params }) => params.voice)).toEqual([sent.voice?.fileId]);
  });

  it('goes once before the first evening of the week, one for two children', async () => {
    expect(await eveningOf(14)).toEqual([
      ['voice', 'Wren', 'Otter'],
      ['voice', 'Robin'],
    ]);
    expect(inOrder(await eveningOf(15))).toEqual(EVENINGS);
  });

  it('goes before every evening when the teacher says so; each tap says what shall be', async () => {
    await openGreeting();
    await teacher.tap(BUTTONS.everyEvening);
    await teacher.tap(BUTTONS.everyEvening);
    expect(labelsOf(await teacher.last())).toContain(`✓ ${BUTTONS.everyEvening}`);
  });
});

describe('the evening comes all the same', () => {
  it('when the service refuses the greeting, and when nobody knows whether it arrived', async () => {
    const error = { code: 400, description: 'Bad Request: VOICE_MESSAGES_FORBIDDEN' };
    await world.client.setFault({ method: 'sendVoice', mode: 'error', count: 1, error });
    await world.client.setFault({ method: 'sendVoice', mode: 'apply_then_drop', count: 1 });
    const came = (await eveningOf(16)).flat().toSorted();
    expect(came.filter((word) => word !== 'voice')).toEqual(['Otter', 'Robin', 'Wren']);
    const rows = (await readTable(world.store, 'ledger')).filter(
      (row) => row.kind === 'greeting' && row.day === '2026-09-16',
    );
    expect(rows.map((row) => row.status).toSorted()).toEqual(['failed', 'unknown']);
    expect(came.filter((word) => word === 'voice')).toHaveLength(1);
    const calls = await voiceCalls();
    await world.goTo('2026-09-16T16:40:00Z');
    expect(await voiceCalls()).toEqual(calls);
  });

  it('when it was recorded for another account of the bot: the teacher is told, once', async () => {
    await runSql(world.store, 'update note set bot_id = 77 where removed_at is null returning 1');
    const before = await countOf(teacher);
    expect(inOrder(await eveningOf(17))).toEqual(EVENINGS);
    expect(await since(teacher, before)).toEqual(['text']);
    expect((await teacher.last()).text).toContain('your greeting was not sent');
    await openGreeting();
    expect((await teacher.last()).text).toContain('Please send it again');
    const told = await countOf(teacher);
    await world.goTo('2026-09-18T16:30:00Z');
    expect(await countOf(teacher)).toBe(told);
  });
});

describe('a recording that nobody asked for', () => {
  it('is used once the teacher says so, and for the week to come when this one is over', async () => {
    await sendVoice(teacher, 9);
    expect((await teacher.last()).text).toContain('as the greeting of Kingfisher class?');
    await teacher.tap(BUTTONS.useIt);
    expect((await teacher.last()).text).toContain('From Mon 21 Sept to Sun 27 Sept');
    expect(labelsOf(await teacher.last())).toContain(BUTTONS.undo);
  });

  it('is left alone when the teacher says no, and an old button of it does nothing', async () => {
    await sendVoice(teacher, 5);
    const asked = await teacher.last();
    const { data = '' } = asked.buttons[0]?.[0] ?? {};
    await teacher.tap(BUTTONS.dontUse);
    const before = await readTable(world.store, 'note');
    await world.client.rawCallback(teacher.id, asked.id, data);
    await world.settle();
    expect((await world.client.answers(teacher.id)).at(-1)?.text).toContain('not waiting any more');
    expect(await readTable(world.store, 'note')).toEqual(before);
  });

  it('may be a video, which comes back as one', async () => {
    const bytes = mp4({ seconds: 12 });
    await sendFile(world, teacher, { kind: 'video', bytes, name: 'hello.mp4' });
    expect((await teacher.last()).text).toContain('Use this video');
    await teacher.tap(BUTTONS.useIt);
    const [preview, home] = (await teacher.chat()).slice(-2);
    expect(preview?.video?.duration).toBe(12);
    expect(home?.text).toContain('A video, just before');
  });

  it('from a helper is of no use', async () => {
    await sendVoice(robin, 5);
    expect((await robin.last()).text).toContain('I can only read text and taps');
  });
});

describe('a greeting in writing', () => {
  it('comes as it was typed: markup is no markup, and too much is refused with the number', async () => {
    await openGreeting();
    await teacher.tap(BUTTONS.otherGreeting);
    expect(await ask(teacher, 'a'.repeat(501))).toContain(
      '501 characters; a greeting has 1 to 500',
    );
    await teacher.say(WORDS);
    const preview = (await teacher.chat()).at(-2);
    expect(preview?.text).toBe(`Kingfisher class: a greeting from the teacher\n${WORDS}`);
  });

  it('removed it does not go out; a late button about it says so', async () => {
    const old = await teacher.last();
    await teacher.tap(BUTTONS.removeGreeting);
    expect(await tapAndHear(teacher, BUTTONS.undo)).toBe('');
    await openGreeting();
    await teacher.tap(BUTTONS.removeGreeting);
    const { data = '' } =
      old.buttons.flat().find(({ text }) => text === BUTTONS.everyEvening) ?? {};
    await world.client.rawCallback(teacher.id, old.id, data);
    await world.settle();
    expect((await world.client.answers(teacher.id)).at(-1)?.text).toContain('not in use any more');
    expect(inOrder(await eveningOf(21))).toEqual(EVENINGS);
  });
});

describe('what is for one child only', () => {
  ownWaySuite(cast, '2026-09-22T16:30:00Z');
  forgedOwnWaySuite(cast);
  ownWayPaperSuite(cast);

  it('is never told to the log, nor is a greeting, and nothing went wrong', async () => {
    expect(await leaksOf(world)).toEqual([]);
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });
});
