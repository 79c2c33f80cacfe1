import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { updateClass } from '../../db/index.ts';
import { readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { time } from '../support/term.ts';
import { openWorld, type World } from '../support/world.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC. The 14th is a Monday; the digest comes at 20:00 on Friday.
let world: World;
let london: SmallClass;
let wren: Phone;
/** Johannesburg has the same clock all year, two hours ahead of UTC. */
let otto: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-17T20:00:00Z' });
  london = await makeSmallClass(world, ['Wren'], { title: 'Kingfisher class' });
  wren = await joinAs(world, 2001, london.links.get('Wren'));
  const far = { title: 'Heron class', teacherId: 1002, zone: 'Africa/Johannesburg' };
  const johannesburg = await makeSmallClass(world, ['Otto'], far);
  otto = await joinAs(world, 2002, johannesburg.links.get('Otto'));
  await world.goTo('2026-09-18T09:00:00Z');
});
afterAll(() => world.close());

/** Whoever looks at the clock next does so at these instants, in UTC. */
async function look(...instants: string[]): Promise<void> {
  for (const instant of instants) await world.goTo(`2026-09-${instant}:00Z`);
}

/** When messages arrived on a phone that day, in UTC. */
async function arrivals(day: string, phone = wren): Promise<string[]> {
  const chat = await phone.chat();
  return chat.flatMap(({ from, date }) =>
    from === 'bot' && date.startsWith(`2026-${day}`) ? [date.slice(11, 16)] : [],
  );
}

async function digests(): Promise<string[]> {
  const { teacher } = london;
  return (await teacher.messagesWith('Marks are the helpers’ word')).map(({ date }) =>
    date.slice(5, 16),
  );
}

describe('a bot that was off over a digest', () => {
  it('until the next morning brings the digest then, once, and no drill of the day before', async () => {
    // Off since before the drill's time on Friday.
    await look('19T09:00', '19T09:01');
    expect(await arrivals('09-18')).toEqual([]);
    expect(await arrivals('09-19')).toEqual([]);
    expect(await digests()).toEqual(['09-19T09:00']);
  });
});

describe('a bot that was off from five to half past six', () => {
  it('brings the drill then, once, and the nudge three quarters of an hour later', async () => {
    await look('21T15:59', '21T17:30', '21T17:31', '21T18:00', '21T18:14', '21T18:15', '21T18:16');
    expect(await arrivals('09-21')).toEqual(['17:30', '18:15']);
  });
});

describe('a bot that was off until the next morning', () => {
  it('brings nothing late, does not nudge, and brings the next drill at its time', async () => {
    await look('22T15:59', '23T07:00', '23T09:00');
    expect(await arrivals('09-22')).toEqual([]);
    expect(await arrivals('09-23')).toEqual([]);
    await look('23T16:29', '23T16:30');
    expect(await arrivals('09-23')).toEqual(['16:30']);
  });
});

describe('a bot that was off for longer than a drill may be late', () => {
  it('lets the day go, though quiet hours have not begun', async () => {
    await look('24T15:59', '24T19:31', '24T19:45');
    expect(await arrivals('09-24')).toEqual([]);
  });
});

describe('a clock that jumps', () => {
  it('back sends nothing twice, and what was planned ahead of it once its time has come again', async () => {
    await world.client.moveTo(new Date('2026-09-25T16:30:00Z'));
    await world.app.engine.tick();
    // Planned, not sent: the sender's clock is earlier already.
    await look('25T16:20', '25T16:29');
    expect(await arrivals('09-25')).toEqual([]);
    await look('25T16:30', '25T16:33', '25T16:34');
    expect(await arrivals('09-25')).toEqual(['16:33']);
    await look('25T16:20', '25T16:30', '25T16:35');
    expect(await arrivals('09-25')).toEqual(['16:33']);
    const evenings = await readTable(world.store, 'evening');
    const ofWren = evenings.filter(
      (row) => row.day === '2026-09-25' && row.class_id === london.scope.classId,
    );
    expect(ofWren).toHaveLength(1);
  });

  it('forward over a day leaves out what was between, and goes on from there', async () => {
    // Over the digest's time, and over its last hour on Sunday.
    await look('27T12:30');
    expect(await digests()).toHaveLength(1);
    await look('28T16:30');
    expect(await arrivals('09-28')).toEqual(['16:30']);
  });
});

describe('a class that changes its drill’s time a minute before', () => {
  const change = (eveningTime: string) =>
    updateClass(world.store, london.scope, {
      changes: { eveningTime: time(eveningTime) },
      now: world.now(),
    });

  it('to a minute after gets it then, once', async () => {
    await look('29T16:29');
    await change('17:31');
    await look('29T16:30');
    expect(await arrivals('09-29')).toEqual([]);
    await look('29T16:31', '29T16:32');
    expect(await arrivals('09-29')).toEqual(['16:31']);
  });

  it('to an earlier one gets no drill tonight', async () => {
    await look('30T16:29');
    await change('17:20');
    await look('30T16:30', '30T16:31', '30T17:30');
    expect(await arrivals('09-30')).toEqual([]);
    await world.goTo('2026-10-01T16:20:00Z');
    expect(await arrivals('10-01')).toEqual(['16:20']);
  });
});

describe('two classes of one school in two time zones', () => {
  it('each get the drill at their own half past five, also after the clocks of one have changed', async () => {
    await updateClass(world.store, london.scope, {
      changes: { eveningTime: time('17:30') },
      now: world.now(),
    });
    // London goes back to winter time on Sunday, 25 October.
    const instants = ['23T15:30', '23T16:29', '23T16:30', '26T15:30', '26T17:29', '26T17:30'];
    for (const instant of instants) await world.goTo(`2026-10-${instant}:00Z`);
    expect([await arrivals('10-23'), await arrivals('10-26')]).toEqual([['16:30'], ['17:30']]);
    expect(await arrivals('10-23', otto)).toEqual(['15:30']);
    expect(await arrivals('10-26', otto)).toEqual(['15:30']);
  });
});
