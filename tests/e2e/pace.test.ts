import { afterAll, beforeAll, expect, it } from 'vitest';
import { Phone } from '../../bot/roots/phone.ts';
import { addDays, isSchoolDay } from '../../drills/index.ts';
import { leaksOf } from '../support/leaks.ts';
import { labelsOf } from '../support/phones.ts';
import { FRIDAY, openQuickStage, type QuickStage } from '../support/quick-stage.ts';
import { day } from '../support/term.ts';

// London, British Summer Time: the drill comes at 16:30 UTC, the nudge at 18:00. It begins on Friday 18 September 2026.
let stage: QuickStage;
let wren: Phone;
let silent: Phone;
let teacher: Phone;
beforeAll(async () => {
  stage = await openQuickStage({ families: 2 });
  [wren, silent] = [stage.family(0), stage.family(1)];
  teacher = new Phone(stage.world, stage.school.teacher);
});
afterAll(() => stage.world.close());

/** How many evenings came to a phone; a nudge is none. */
const drills = async (phone: Phone) =>
  (await phone.messagesWith('About')).filter(({ text }) => !text.includes('Still time')).length;
const at = (date: string, time: string) => stage.world.goTo(`${date}T${time}:00Z`);

it('/pause stops everything until its day, and "Start again now" ends it', async () => {
  await wren.say('/pause');
  await wren.tap('One week');
  expect((await wren.last()).text).toContain('Wren1: the drill comes again on Fri 25 Sept.');
  await wren.say('/today');
  expect((await wren.last()).text).toBe('Wren1: a pause until Fri 25 Sept. /pause ends it.');
  await stage.world.goTo(FRIDAY.evening);
  expect(await drills(wren)).toBe(0);
  expect(await drills(silent)).toBe(1);
  await silent.tap('Not today');
  await stage.world.goTo(FRIDAY.minuteLater);
  await wren.say('/pause');
  await wren.tap('Start again now');
  expect((await wren.last()).text).toContain('A pause for Wren1?');
  // Tonight's time has passed: it counts from the next evening.
  await stage.world.goTo('2026-09-18T16:32:00Z');
  expect(await drills(wren)).toBe(0);
});

it('a typed day is asked for again until it can be taken', async () => {
  await wren.say('/pause');
  await wren.tap('Until another day');
  await wren.say('some day');
  expect((await wren.last()).text).toContain('I could not read “some day” as a day');
  expect(labelsOf(await wren.last())).toEqual(['Cancel']);
  await wren.say('18 Sept 2026');
  expect((await wren.last()).text).toBe(
    '18 Sept 2026 is over already. Send a day from 19 Sept 2026 to 16 Jan 2027.',
  );
  await wren.say('/pause Tue 23 Sept');
  expect((await wren.last()).text).toBe('23 Sept 2026 is a Wednesday. Please send the day again.');
  await wren.say('Wed 23 Sept');
  expect((await wren.last()).text).toContain('comes again on Wed 23 Sept.');
});

it('/days takes days in and out with one tap, and one day stays', async () => {
  await wren.say('/days');
  for (const label of ['✓ Mon', '✓ Tue', '✓ Thu', '✓ Fri']) await wren.tap(label);
  expect((await wren.buttons()).filter((label) => label.includes('✓'))).toEqual(['✓ Wed']);
  await wren.tap('✓ Wed');
  expect(await wren.buttons()).toContain('✓ Wed');
});

it('two silent weeks: nudges end after two evenings, and nobody gets more than one a day and three a week', async () => {
  for (let on = day('2026-09-21'); on < '2026-10-03'; on = addDays(on, 1)) {
    if (!isSchoolDay(on, { weekdays: [1, 2, 3, 4, 5], breaks: [] })) continue;
    await at(on, '16:30');
    await at(on, '18:00');
  }
  // The first Friday was put off, and its message says so now.
  expect(await drills(silent)).toBe(10);
  expect(await silent.messagesWith('Still time')).toHaveLength(2);
  // A pause until Wednesday, then Wednesdays alone.
  expect(await drills(wren)).toBe(2);
  expect(await wren.messagesWith('Still time')).toHaveLength(2);
});

it('the teacher is told first, once, and three days later the drill comes less often', async () => {
  await at('2026-10-05', '09:00');
  expect(await teacher.messagesWith('fewer evenings')).toHaveLength(0);
  await at('2026-10-05', '14:00');
  await at('2026-10-05', '16:30');
  const told = await teacher.messagesWith('fewer evenings');
  expect(told).toHaveLength(1);
  expect(told[0]?.text).toContain(
    '2. Wren2: no answer for two weeks. From Thu 8 Oct on three evenings a week.',
  );
  await at('2026-10-08', '05:30');
  await at('2026-10-12', '16:30');
  expect((await silent.last()).text).toContain('We send the drill on three evenings a week now.');
  expect(await silent.buttons()).toContain('Every school day');
  await at('2026-10-13', '16:30');
  expect(
    (await silent.messagesWith('About')).filter(({ text }) => text.includes('Tuesday 13')),
  ).toEqual([]);
});

it('the digest’s families name it without calling an evening that did not come silent', async () => {
  await teacher.say('/class now');
  await teacher.tap('Last seven days');
  await teacher.tap('Families');
  const { text } = await teacher.last();
  expect(text).toContain(
    'Fewer evenings: 1. Wren1 (Wed only, the family’s choice); 2. Wren2 (three',
  );
  await teacher.tap('Fewer evenings');
  await teacher.tap('Keep daily: 2. Wren2');
  expect((await teacher.last()).text).toContain('2. Wren2: every school day');
  await teacher.tap('Not any more: 2. Wren2');
  expect((await teacher.last()).text).toContain('From Fri 16 Oct on three evenings a week');
});

it('let go, it comes less often from the day on that was named; one tap brings every school day back', async () => {
  const before = await drills(silent);
  for (const date of ['2026-10-14', '2026-10-15', '2026-10-16']) await at(date, '16:30');
  expect(await drills(silent)).toBe(before + 2);
  await at('2026-10-19', '16:30');
  expect((await silent.last()).text).toContain('three evenings a week');
  await silent.tap('Every school day');
  const message = await silent.last();
  expect(message.text).not.toContain('evenings a week');
  expect(labelsOf(message)).toContain('Start');
  await at('2026-10-20', '16:30');
  expect((await silent.last()).text).toContain('Tuesday');
  expect((await silent.last()).text).not.toContain('evenings a week');
});

it('no name is left in the log', async () => {
  expect(await leaksOf(stage.world)).toEqual([]);
});
