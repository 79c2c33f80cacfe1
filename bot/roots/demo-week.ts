import { mkdir, rm } from 'node:fs/promises';
import { instantAt, localTimeAt } from '../../db/index.ts';
import { addDays, parseSchoolDay, parseTimeOfDay, type SchoolDay } from '../../drills/index.ts';
import { BUTTONS } from '../texts/buttons.ts';
import { DEMO_FAMILIES, DEMO_TEACHER, loadDemoClass } from './demo-class.ts';
import { type Habit, habitOf, inventedChild } from './demo-families.ts';
import { type Story, tellStory } from './demo-story.ts';
import { Phone } from './phone.ts';
import { openStage, type Stage } from './stage.ts';

const ZONE = 'Europe/London';
const MONDAY = '2026-09-14';
const SCHOOL_DAYS = 5;

/**
 * Plays one school week of the demo class and leaves what everybody saw in a folder, whose content is replaced. Returns how many
 * phones. `onDay` hears how many of the five days are done.
 */
export async function playDemoWeek(
  folder: string,
  onDay: (done: number, all: number) => void = () => {},
): Promise<number> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const week = await openWeek(folder);
  try {
    onDay(0, SCHOOL_DAYS);
    await loadDemoClass({ ...week, zone: ZONE });
    for (let day = 0; day < SCHOOL_DAYS; day += 1) {
      await playDay(week, day);
      onDay(day + 1, SCHOOL_DAYS);
    }
    await tellDigest(week);
    return await week.story.write();
  } finally {
    await week.close();
  }
}

interface Week extends Stage {
  readonly story: Story;
}

async function openWeek(folder: string): Promise<Week> {
  const stage = await openStage(at(0, '09:00'));
  const time = () => {
    const local = localTimeAt(stage.clock.now(), ZONE);
    return `${local.day} ${local.time}`;
  };
  return { ...stage, story: tellStory(folder, stage.client, time) };
}

async function playDay(week: Week, day: number): Promise<void> {
  await week.goTo(at(day, '17:30'));
  await everyFamily(week, day, 'plays');
  await everyFamily(week, day, 'not today');
  await everyFamily(week, day, 'asks for later');
  await week.goTo(at(day, '18:00'));
  await week.goTo(at(day, '19:00'));
  await everyFamily(week, day, 'plays after the nudge');
  await week.goTo(at(day, '20:00'));
}

async function everyFamily(week: Week, day: number, habit: Habit): Promise<void> {
  for (const { id, helps } of DEMO_FAMILIES) {
    if (habitOf(id, day) !== habit) continue;
    const phone = new Phone(week, id, (did, sees) =>
      week.story.note(`${helps.join(' and ')} ${id}`, did, sees),
    );
    for (const nickname of helps) await playChild(phone, nickname, habit, day);
  }
}

async function playChild(phone: Phone, nickname: string, habit: Habit, day: number): Promise<void> {
  const offers = (await phone.messagesWith(`${nickname} · `)).filter((message) =>
    message.buttons.flat().some((button) => button.text === BUTTONS.start),
  );
  const offer = offers.at(-1)?.id;
  if (habit === 'not today') return phone.tap(BUTTONS.notToday, offer);
  if (habit === 'asks for later') await phone.tap(BUTTONS.later, offer);
  await phone.playEvening(inventedChild(nickname, day), offer);
}

/** The teacher's phone on Friday evening: every message of the digest. */
async function tellDigest(week: Week): Promise<void> {
  const messages = await week.client.chat(DEMO_TEACHER);
  for (const message of messages.filter((each) => each.from === 'bot').slice(-4)) {
    await week.story.note('Class teacher', 'reads', message);
  }
}

function at(day: number, time: string): Date {
  const monday = parseSchoolDay(MONDAY);
  const timeOfDay = parseTimeOfDay(time);
  if (!monday || !timeOfDay) throw new TypeError('the demo week has a date or time that is none');
  const date: SchoolDay = addDays(monday, day);
  return instantAt(date, timeOfDay, ZONE);
}
