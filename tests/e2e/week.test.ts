import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { addBook, localTimeAt } from '../../db/index.ts';
import {
  createRandom,
  rungById,
  strandTitle,
  type WeekPlan,
  weekdayOf,
} from '../../drills/index.ts';
import { readPng } from '../bot/media/read-png.ts';
import { drawIntention, type Intention } from '../support/intention.ts';
import { leaksOf } from '../support/leaks.ts';
import { countEvening, emptyCount, sumOf } from '../support/own-count.ts';
import { playTogether } from '../support/play-together.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { parseTable } from '../support/table-text.ts';
import { openWorld, type World } from '../support/world.ts';

const ZONE = 'Europe/London';
const HALF_HOUR = 30 * 60_000;
const NAMES = [
  ...['Wren', 'Juniper', 'Otto', 'Mabel', 'Kestrel', 'Pip'],
  ...['Saffron', 'Bramble', 'Indigo', 'Tamsin', 'Ziggy', 'Clover'],
];
const SIZES = [6, 5, 5];
const PLAN: WeekPlan = {
  parts: [
    { rung: 'bonds.to10', cards: 6, seconds: 3 },
    { rung: 'takeaway.to10', cards: 5, seconds: 3 },
    { rung: 'counting.fives', cards: 5, seconds: 3 },
  ],
};

let world: World;
let school: SmallClass;
const phones: Awaited<ReturnType<typeof joinAs>>[] = [];
const counts = NAMES.map((nickname) => emptyCount(nickname, SIZES.length));

beforeAll(async () => {
  world = await openWorld({ start: '2026-10-18T12:00:00Z' });
  school = await makeSmallClass(world, NAMES, { zone: ZONE, plan: PLAN });
  const book = { title: 'Pebble Path', firstPage: 1, lastPage: 64, pagesADay: 2 };
  await addBook(world.store, school.scope, { book, now: world.now() });
  for (const [index, name] of NAMES.entries()) {
    phones.push(await joinAs(world, 2001 + index, school.links.get(name)));
  }
});
afterAll(() => world.close());

/** Looks at the clock every half hour, day and night, and lets the families answer at their times. */
async function live(from: string, until: string): Promise<void> {
  let meant: Intention[] = [];
  for (let at = Date.parse(from); at <= Date.parse(until); at += HALF_HOUR) {
    await world.goTo(new Date(at).toISOString());
    const { day, time } = localTimeAt(world.now(), ZONE);
    if (time === '17:30' && weekdayOf(day) <= 5) {
      const random = createRandom(`families on ${day}`);
      meant = NAMES.map(() => drawIntention(random, [6, 5], 5));
      for (const [index, child] of counts.entries()) {
        const own = meant[index];
        if (own) countEvening(child, own, SIZES);
      }
      await play(meant, ['plays', 'not today']);
    }
    if (time === '19:30') await play(meant, ['plays after the nudge']);
  }
}

async function play(meant: readonly Intention[], habits: readonly string[]): Promise<void> {
  const families = phones.flatMap((phone, index) => {
    const intention = meant[index];
    return intention && habits.includes(intention.habit) ? [{ phone, intention }] : [];
  });
  await playTogether(world, families);
}

/** Everything the bot wrote to a phone on a weekday, as the phone dates it. */
async function arrivals(id: number, word: string): Promise<string[]> {
  const chat = await world.client.chat(id);
  return chat
    .filter((message) => message.from === 'bot' && message.text.includes(word))
    .map((message) => message.date);
}

/** Five evenings at most are too few for a word on growth. */
function tooLittle(days: readonly string[]): string {
  const evenings = days.filter((day) => day === 'practised').length;
  return `too little to tell (${evenings} ${evenings === 1 ? 'evening' : 'evenings'})`;
}

const teacherSees = async () => (await school.teacher.chat()).filter(({ from }) => from === 'bot');

describe('a school week, looked at every half hour day and night', () => {
  it('sends every family one drill each school day at its own clock’s half past five', async () => {
    await live('2026-10-18T23:00:00Z', '2026-10-25T23:30:00Z');
    for (const { id } of phones) {
      const drills = await Promise.all(
        ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday'].map((day) => arrivals(id, day)),
      );
      expect(drills.map(([first]) => first)).toEqual(
        ['19', '20', '21', '22', '23'].map((day) => `2026-10-${day}T16:30:00.000Z`),
      );
      // The second, where there is one, is the nudge at seven.
      for (const [, second, third] of drills) {
        expect([undefined, second?.slice(0, 11).concat('18:00:00.000Z')]).toContain(second);
        expect(third).toBeUndefined();
      }
      expect(await arrivals(id, 'Saturday')).toEqual([]);
      expect(await arrivals(id, 'Sunday')).toEqual([]);
    }
  }, 180_000);

  it('brings the digest once, on Friday at eight, as a text, a picture and a table', async () => {
    const since = (await teacherSees()).filter((message) => message.date > '2026-10-19');
    expect(since.map((message) => message.date)).toEqual(
      Array.from({ length: 3 }, () => '2026-10-23T19:00:00.000Z'),
    );
    expect(
      since.map((message) => message.document?.fileName ?? message.text.split(':')[0]),
    ).toEqual([
      'Heron class',
      'digest-heron-class-2026-10-23.png',
      'digest-heron-class-2026-10-23.csv',
    ]);
    const before = (await teacherSees()).length;
    await world.goTo(world.now().toISOString());
    expect(await teacherSees()).toHaveLength(before);
  });
});

describe('the digest of that week', () => {
  it('counts in words what the families tapped', async () => {
    const [digest] = await school.teacher.messagesWith('Right of asked');
    const often = counts.filter(
      ({ days }) => days.filter((day) => day === 'practised').length >= 3,
    ).length;
    expect(digest?.text.split('\n')[0]).toMatch(
      new RegExp(`^Heron class: ${often} of 12 practised on three days or more; `),
    );
    for (const [index, { rung }] of PLAN.parts.entries()) {
      const { right, asked } = sumOf(counts.flatMap((child) => child.parts[index] ?? []));
      const strand = rungById(rung)?.strand ?? 'words';
      expect(asked).toBeGreaterThan(100);
      expect(digest?.text).toContain(`${strandTitle(strand)} ${right} of ${asked}`);
    }
    expect(digest?.text).toContain('. All new this week.\n');
    const pages = counts.reduce((sum, child) => sum + child.pages, 0);
    expect(digest?.text).toContain(`Workbook: ${pages} pages done.`);
  });

  it('counts in the table what the families tapped, cell by cell', async () => {
    const files = (await teacherSees()).flatMap((message) => message.document ?? []);
    const file = files.find(({ fileName }) => fileName?.endsWith('.csv'));
    const bytes = await world.client.file(file?.fileId ?? '');
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    expect(text.startsWith('\ufeff')).toBe(true);
    const [header, ...rows] = parseTable(text);
    expect(header?.slice(2, 8)).toEqual([
      ...['Mon 19 Oct', 'Tue 20 Oct', 'Wed 21 Oct', 'Thu 22 Oct', 'Fri 23 Oct'],
      'days practised',
    ]);
    expect(rows).toEqual(
      counts.map(({ nickname, days, parts, pages }, index) => [
        `${index + 1}`,
        nickname,
        ...days,
        `${days.filter((day) => day === 'practised').length}`,
        ...parts.flatMap(({ right, asked }) => (asked > 0 ? [`${right}`, `${asked}`] : ['', ''])),
        `${pages}`,
        ...parts.map(({ asked }) => (asked > 0 ? tooLittle(days) : '')),
      ]),
    );
  });

  it('sends the picture as a PNG file', async () => {
    const files = (await teacherSees()).flatMap((message) => message.document ?? []);
    const picture = files.find((file) => file.fileName?.endsWith('.png'));
    expect(picture?.mimeType).toBe('image/png');
    expect(readPng(await world.client.file(picture?.fileId ?? '')).width).toBeGreaterThan(720);
  });

  it('stores one row for each card that was answered, and no more', async () => {
    const marks = await readTable(world.store, 'mark');
    const runs = await readTable(world.store, 'run_result');
    for (const part of [0, 1]) {
      const own = marks.filter((mark) => mark.part === part);
      const expected = sumOf(counts.flatMap((child) => child.parts[part] ?? []));
      expect({ right: own.filter((mark) => mark.right).length, asked: own.length }).toEqual(
        expected,
      );
    }
    const said = runs.reduce((sum, run) => sum + Number(run.said), 0);
    expect({ right: said, asked: runs.length * 5 }).toEqual(
      sumOf(counts.flatMap((child) => child.parts[2] ?? [])),
    );
  });
});

describe('the Monday after the clocks went back', () => {
  it('brings the drill an hour later by UTC, at half past five by the family’s clock', async () => {
    await live('2026-10-26T00:00:00Z', '2026-10-26T18:30:00Z');
    const drills = await Promise.all(phones.map(({ id }) => arrivals(id, 'Monday')));
    for (const dates of drills) expect(dates).toContain('2026-10-26T17:30:00.000Z');
    expect(drills.flat().filter((date) => date === '2026-10-26T16:30:00.000Z')).toEqual([]);
  });

  it('has told no name and no typed text to the log', async () => {
    expect(await leaksOf(world)).toEqual([]);
    expect(world.logged.filter((line) => line.level === 'error')).toEqual([]);
  });
});
