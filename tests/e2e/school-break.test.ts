import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask } from '../support/phones.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { openWorld, type World } from '../support/world.ts';

const HALF_HOUR = 30 * 60_000;

let world: World;
let london: SmallClass;
let wren: Phone;
let otto: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-03-05T15:00:00Z' });
  const names = { title: 'Heron class', teacherId: 1001, zone: 'America/New_York' };
  const newYork = await makeSmallClass(world, ['Otto'], names);
  otto = await joinAs(world, 2002, newYork.links.get('Otto'));
});
afterAll(() => world.close());

/** Looks at the clock every half hour, day and night. */
async function live(from: string, until: string): Promise<void> {
  for (let at = Date.parse(from); at <= Date.parse(until); at += HALF_HOUR) {
    await world.goTo(new Date(at).toISOString());
  }
}

/** When the bot wrote to a phone from some instant on, as the phone dates it. */
async function arrivals(phone: Phone, since: string): Promise<string[]> {
  const chat = await phone.chat();
  return chat.filter(({ from, date }) => from === 'bot' && date >= since).map(({ date }) => date);
}

describe('a class in New York when the clocks go forward', () => {
  it('keeps half past five and seven by its own clock', async () => {
    await live('2026-03-06T20:00:00Z', '2026-03-10T03:30:00Z');
    expect(await arrivals(otto, '2026-03-06')).toEqual([
      // Friday in winter time: five hours behind UTC. The nudge follows at seven.
      '2026-03-06T22:30:00.000Z',
      '2026-03-07T00:00:00.000Z',
      // Monday in summer time: four hours behind.
      '2026-03-09T21:30:00.000Z',
      '2026-03-09T23:00:00.000Z',
    ]);
  });
});

describe('a school break', () => {
  beforeAll(async () => {
    await otto.say('/stop');
    await otto.tap(BUTTONS.leave);
    await world.goTo('2026-10-22T09:00:00Z');
    london = await makeSmallClass(world, ['Wren'], { title: 'Kingfisher class', teacherId: 1002 });
    wren = await joinAs(world, 2001, london.links.get('Wren'));
  });

  it('is typed with its first day, its last day and a name; what cannot be read is named', async () => {
    const { teacher } = london;
    await teacher.say('/class');
    await teacher.tap(BUTTONS.breaks);
    await teacher.tap(BUTTONS.addBreak);
    expect(await ask(teacher, '2026-10-30 to 2026-10-26 Half term')).toContain(
      'the last day comes before the first',
    );
    expect(await ask(teacher, '2026-02-30 to 2026-03-02 Half term')).toContain('“30 Feb 2026”');
    expect(await ask(teacher, '26-30 Oct Half term')).toContain(
      'Half term: Mon 26 Oct to Fri 30 Oct 2026\n5 school days, Mon to Fri.',
    );
    await teacher.tap(BUTTONS.back);
    await teacher.tap(BUTTONS.breaks);
    expect((await teacher.last()).text).toContain('Half term: Mon 26 Oct to Fri 30 Oct');
  });

  it('sends nothing to a family and no digest to the teacher while it lasts', async () => {
    await live('2026-10-23T10:00:00Z', '2026-11-01T23:30:00Z');
    expect(await arrivals(wren, '2026-10-23')).toEqual([
      '2026-10-23T16:30:00.000Z',
      '2026-10-23T18:00:00.000Z',
    ]);
    const digests = await london.teacher.messagesWith('practised on');
    expect(digests.map(({ date }) => date)).toEqual(['2026-10-23T19:00:00.000Z']);
  });

  it('ends with the next school day, and its days do not count as silence', async () => {
    await live('2026-11-02T17:00:00Z', '2026-11-02T20:00:00Z');
    expect(await arrivals(wren, '2026-10-31')).toEqual([
      '2026-11-02T17:30:00.000Z',
      // Only the Friday before was silent, so there is a nudge.
      '2026-11-02T19:00:00.000Z',
    ]);
  });

  it('tells no name and no typed text to the log', async () => {
    expect(await leaksOf(world)).toEqual([]);
    expect(world.logged.filter((line) => line.level === 'error')).toEqual([]);
  });
});
