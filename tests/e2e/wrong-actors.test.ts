import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { TYPED_COMMANDS } from '../../bot/features/typed-commands.ts';
import { commands } from '../../bot/texts/commands.ts';
import { expectText } from '../../db/index.ts';
import { ACTION_KINDS, ACTION_RULES, type Owner } from '../support/action-rules.ts';
import { leaksOf } from '../support/leaks.ts';
import { readTable } from '../support/raw-rows.ts';
import { type SavedState, saveState } from '../support/saved-state.ts';
import { changedRows, shownOn, storedRows, type Tried, tapAll } from '../support/trying.ts';
import { COMMAND_TRIES, openQuestions } from '../support/typed-rules.ts';
import {
  openWrongedSchool,
  PEOPLE,
  type Person,
  type WrongedSchool,
} from '../support/wronged-school.ts';

let school: WrongedSchool;
let saved: SavedState;
beforeAll(async () => {
  school = await openWrongedSchool();
  saved = await saveState(school.world.store);
});
afterEach(() => saved.restore());
afterAll(async () => {
  await saved.drop();
  await school.world.close();
});

type OwnedBy = Exclude<Owner, 'self' | 'bearer'>;

/** Who may do what belongs to whom; everybody else is wrong. */
const RIGHT: Readonly<Record<OwnedBy, readonly [Person, ...Person[]]>> = {
  family: ['the child’s helper'],
  teacher: ['a co-teacher', 'the lead teacher'],
  lead: ['the lead teacher'],
};
/** People who know nothing of the family's and the class's things, and are to be told nothing. */
const OUTSIDERS: readonly Person[] = [
  'a co-teacher who was removed',
  'the teacher of another class',
  'a helper who has left',
  'another family’s helper',
  'a stranger',
];
const everybody = Object.keys(PEOPLE) as Person[];
const owners = Object.keys(RIGHT) as OwnedBy[];
const ownedBy = (owner: Owner) => ACTION_KINDS.filter((kind) => ACTION_RULES[kind].owner === owner);
/** A code as long as a right one, with another last letter. */
const wrongCode = () =>
  `${school.things.code.slice(0, -2)}${school.things.code.endsWith('Ag') ? 'AQ' : 'Ag'}`;

/** What was refused since a line of the log. */
function refusedSince(line: number): unknown[] {
  const lines = school.world.logged.slice(line);
  return lines.flatMap(({ event, fields }) => (event === 'tap_refused' ? [fields.action] : []));
}

const unanswered = (tried: readonly Tried[]) => tried.filter(({ answer }) => answer === null);

/** Secrets that a person's phone shows. */
async function toldTo(person: Person): Promise<string[]> {
  const shown = await shownOn(school.world, PEOPLE[person]);
  return school.secrets.filter((secret) => shown.includes(secret));
}

/** The ids of those whom a person helps now. */
async function helpedBy(person: Person): Promise<string[]> {
  const { store } = school.world;
  const own = (await readTable(store, 'helper')).find((row) => row.chat_id === PEOPLE[person]);
  return (await readTable(store, 'helper_child'))
    .filter((row) => row.helper_id === own?.id && row.left_at === null)
    .map((row) => String(row.child_id));
}

/**
 * Changed rows that have nothing of the person who caused them: neither account nor own id, class or child. `helped` are those
 * whom the person helped before: by the end they may have left.
 */
async function rowsOfOthers(
  person: Person,
  changed: readonly string[],
  helped: readonly string[],
): Promise<string[]> {
  const { store } = school.world;
  const chat = PEOPLE[person];
  const own = [...(await readTable(store, 'helper')), ...(await readTable(store, 'teacher'))]
    .filter((row) => row.chat_id === chat)
    .map((row) => String(row.id));
  const classes = (await readTable(store, 'class_teacher'))
    .filter((row) => own.includes(String(row.teacher_id)))
    .map((row) => String(row.class_id));
  const marks = [
    String(chat),
    ...own,
    ...helped,
    ...(await helpedBy(person)),
    ...classes.filter((id) => id !== school.things.classId),
  ];
  return changed.filter((row) => !marks.some((mark) => row.includes(mark)));
}

describe('a button that belongs to somebody else', () => {
  const pairs = owners.flatMap((owner) =>
    everybody
      .filter((person) => !RIGHT[owner].includes(person))
      .map((person) => [owner, person] as const),
  );

  it.each(pairs)(
    'for a %s, tapped by %s, is refused, changes and tells nothing',
    async (owner, person) => {
      const { world, things } = school;
      const kinds = ownedBy(owner);
      const before = await storedRows(world);
      const line = world.logged.length;
      const tried = await tapAll(world, PEOPLE[person], kinds, things);
      expect(unanswered(tried)).toEqual([]);
      expect(changedRows(before, await storedRows(world))).toEqual([]);
      const refused = refusedSince(line);
      const loud = kinds.filter((kind) => ACTION_RULES[kind].quiet === undefined);
      expect(loud.filter((kind) => !refused.includes(kind))).toEqual([]);
      if (OUTSIDERS.includes(person)) expect(await toldTo(person)).toEqual([]);
    },
  );

  it.each(everybody)(
    'with a code that is one letter off, tapped by %s, lets nobody in',
    async (person) => {
      const { world, things } = school;
      const before = await storedRows(world);
      const tried = await tapAll(world, PEOPLE[person], ownedBy('bearer'), {
        ...things,
        code: wrongCode(),
      });
      expect(tried.map(({ answer }) => answer)).toEqual(
        tried.map(() => expect.stringContaining('This join link is not valid')),
      );
      expect(changedRows(before, await storedRows(world))).toEqual([]);
    },
  );
});

describe('a button that belongs to somebody else, where more is at stake,', () => {
  it('that takes back a co-teacher’s removal is the lead’s alone', async () => {
    const { world, things, removal } = school;
    const before = await storedRows(world);
    const undo = { ...things, act: removal };
    for (const person of everybody.filter((each) => each !== 'the lead teacher')) {
      const line = world.logged.length;
      await tapAll(world, PEOPLE[person], ['undo'], undo);
      expect([person, ...refusedSince(line)]).toEqual([person, 'undo']);
    }
    expect(changedRows(before, await storedRows(world))).toEqual([]);
    await tapAll(world, PEOPLE['the lead teacher'], ['undo'], undo);
    expect(changedRows(before, await storedRows(world))).not.toEqual([]);
  });

  it.each(['a co-teacher who was removed', 'the teacher of another class'] as const)(
    'tapped by %s while a file or a recording of their own waits, changes nothing of the class',
    async (person) => {
      const { world, things } = school;
      const { classId } = things;
      const list = { fileId: 'f', classId, heading: 0, stamp: 'x', nicknames: ['Juniper'] };
      const recording = { kind: 'voice', fileId: 'f', messageId: 1 };
      const waiting = [
        ['fileAdd', { kind: 'file_list', data: list }],
        ['useRecording', { kind: 'recording', data: recording }],
      ] as const;
      for (const [kind, expectation] of waiting) {
        await expectText(world.store, { chatId: PEOPLE[person], expectation, now: world.now() });
        const before = await storedRows(world);
        const line = world.logged.length;
        await tapAll(world, PEOPLE[person], [kind], things);
        expect(refusedSince(line)).toEqual([kind]);
        expect(changedRows(before, await storedRows(world))).toEqual([]);
      }
      expect(await toldTo(person)).toEqual([]);
    },
  );
});

describe('a button about nobody but oneself', () => {
  it.each(everybody)(
    'tapped by %s changes nothing of anybody else and tells nothing',
    async (person) => {
      const { world, things } = school;
      const before = await storedRows(world);
      const helped = await helpedBy(person);
      const tried = await tapAll(world, PEOPLE[person], ownedBy('self'), things);
      expect(unanswered(tried)).toEqual([]);
      const changed = changedRows(before, await storedRows(world));
      expect(await rowsOfOthers(person, changed, helped)).toEqual([]);
      if (OUTSIDERS.includes(person)) expect(await toldTo(person)).toEqual([]);
    },
  );
});

describe('a command', () => {
  it('of the chat’s menu is one that is understood', () => {
    const known = Object.keys(TYPED_COMMANDS);
    expect(
      commands()
        .map(({ command }) => command)
        .filter((each) => !known.includes(each)),
    ).toEqual([]);
  });

  it.each(everybody)(
    'typed by %s is answered and changes nothing of anybody else',
    async (person) => {
      const { world } = school;
      const phone = PEOPLE[person];
      const before = await storedRows(world);
      const helped = await helpedBy(person);
      const { length } = await world.client.chat(phone);
      const typed = Object.entries(COMMAND_TRIES).flatMap(([name, tries]) =>
        tries(wrongCode()).map((rest) => `/${name} ${rest}`.trim()),
      );
      for (const text of typed) await world.client.say(phone, text);
      await world.settle();
      // What was typed, and at least one answer to each.
      expect((await world.client.chat(phone)).length).toBeGreaterThanOrEqual(
        length + 2 * typed.length,
      );
      const changed = changedRows(before, await storedRows(world));
      expect(await rowsOfOthers(person, changed, helped)).toEqual([]);
      if (OUTSIDERS.includes(person)) expect(await toldTo(person)).toEqual([]);
    },
  );
});

describe('an answer to a question about somebody else’s class', () => {
  /** Answers every question, as one that was open when the person still taught the class; returns what changed by each. */
  async function answerAll(person: Person): Promise<string[][]> {
    const { world, things } = school;
    const phone = PEOPLE[person];
    const changes: string[][] = [];
    for (const { wish, answer } of openQuestions(things)) {
      await expectText(world.store, { chatId: phone, expectation: wish, now: world.now() });
      const before = await storedRows(world);
      const { length } = await world.client.chat(phone);
      await world.client.say(phone, answer);
      await world.settle();
      expect((await world.client.chat(phone)).length).toBeGreaterThan(length + 1);
      const changed = changedRows(before, await storedRows(world));
      changes.push(changed.filter((row) => !row.startsWith('expectation ')));
    }
    return changes;
  }

  it.each(OUTSIDERS)(
    'typed by %s is answered, changes nothing and tells nothing',
    async (person) => {
      expect((await answerAll(person)).flat()).toEqual([]);
      expect(await toldTo(person)).toEqual([]);
    },
  );

  it('typed by a co-teacher changes the class each time', async () => {
    const { world } = school;
    const changes = await answerAll('a co-teacher');
    expect(changes.map((rows) => rows.length > 0)).toEqual(changes.map(() => true));
    expect(changes.length).toBeGreaterThan(10);
    expect(await leaksOf(world)).toEqual([]);
  });
});

describe('the right one', () => {
  it('is refused nothing that others are, of every kind of action there is', async () => {
    const { world, things } = school;
    for (const owner of owners) {
      const line = world.logged.length;
      const phone = PEOPLE[RIGHT[owner][0]];
      expect(unanswered(await tapAll(world, phone, ownedBy(owner), things))).toEqual([]);
      // An earlier tap of these may have closed the way to a later one: each such is tried by itself.
      const again = new Set(refusedSince(line));
      for (const kind of ownedBy(owner).filter((each) => again.has(each))) {
        const outcomes: unknown[][] = [];
        for (const person of RIGHT[owner]) {
          await saved.restore();
          const start = world.logged.length;
          expect(unanswered(await tapAll(world, PEOPLE[person], [kind], things))).toEqual([]);
          outcomes.push(refusedSince(start));
        }
        expect(outcomes).toContainEqual([]);
      }
      await saved.restore();
    }
    expect(world.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });
});
