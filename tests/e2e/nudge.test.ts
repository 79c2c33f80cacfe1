import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { localTimeAt } from '../../db/index.ts';
import { DEMO_FAMILIES, DEMO_TEACHER, loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { labelsOf, offersOf } from '../support/phones.ts';
import { openWorld, type World } from '../support/world.ts';

const ZONE = 'Europe/London';
const NUDGE = 'Still time for a few minutes tonight';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC, and the nudge comes at 18:00 UTC.
let world: World;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world, ZONE);
});
afterAll(() => world.close());

const phone = (id: number) => new Phone(world, id);
const at = (day: number, time: string) => world.goTo(`2026-09-${day}T${time}:00Z`);
const nudgesOn = async (id: number, day: string) =>
  (await phone(id).messagesWith(NUDGE)).filter((message) => message.text.includes(day));

/** Every family but the silent ones puts the evening off, for each of its children. */
async function answerAll(day: string, silent: readonly number[]): Promise<void> {
  for (const { id } of DEMO_FAMILIES.filter((family) => !silent.includes(family.id))) {
    const open = async () =>
      (await phone(id).messagesWith(day)).find((message) =>
        labelsOf(message).includes(BUTTONS.notToday),
      );
    // One tap closes every message about the child, so each next one is looked for anew.
    for (let offer = await open(); offer; offer = await open()) {
      await phone(id).tap(BUTTONS.notToday, offer.id);
    }
  }
}

describe('the one nudge', () => {
  it('comes once to a family that has not marked, even when the clock ticks ten times', async () => {
    await at(14, '16:30');
    await phone(2005).tap(BUTTONS.start);
    await phone(2005).tap(BUTTONS.allRight);
    await phone(2006).playEvening();
    await phone(2008).tap(BUTTONS.notToday);
    // Asked for later, then started before the reminder came, and nothing marked.
    await at(14, '17:00');
    await phone(2009).tap(BUTTONS.later);
    await phone(2009).tap(BUTTONS.start);
    await at(14, '17:59');
    expect(await nudgesOn(2007, 'Monday')).toHaveLength(0);
    for (let minute = 0; minute < 10; minute += 1) await at(14, `18:0${minute}`);
    const nudges = await nudgesOn(2007, 'Monday');
    expect(nudges).toHaveLength(1);
    expect(nudges[0]?.text).toContain('Bramble · Monday');
  });

  it('comes once to a family that asked for later and started before its reminder', async () => {
    expect(await phone(2009).messagesWith('You asked for a reminder')).toHaveLength(0);
    expect(await nudgesOn(2009, 'Monday')).toHaveLength(1);
  });

  it('carries the same Start button as the evening’s message', async () => {
    const [offer, nudge] = await offersOf(phone(2007), 'Bramble');
    const start = (message: typeof offer) =>
      message?.buttons.flat().find((button) => button.text === BUTTONS.start)?.data;
    expect(nudge?.text).toContain(NUDGE);
    expect(start(nudge)).toBe(start(offer));
  });

  it('does not come when all is marked, some is marked, or today was put off', async () => {
    expect(await nudgesOn(2006, 'Monday')).toHaveLength(0);
    expect(await nudgesOn(2005, 'Monday')).toHaveLength(0);
    expect(await nudgesOn(2008, 'Monday')).toHaveLength(0);
  });

  it('comes to both helpers of a child', async () => {
    expect(await nudgesOn(2003, 'Monday')).toHaveLength(1);
    expect(await nudgesOn(2004, 'Monday')).toHaveLength(1);
  });

  it('is played from to the end, and the older message says that it goes on there', async () => {
    const [offer, nudge] = await offersOf(phone(2007), 'Bramble');
    await phone(2007).playEvening(undefined, nudge?.id);
    expect((await phone(2007).message(nudge?.id ?? 0)).text).toContain('10 of 10');
    const older = await phone(2007).message(offer?.id ?? 0);
    expect(older.text).toContain('Goes on in the other message about this evening');
    expect(labelsOf(older)).toEqual([]);
  });

  it('can be left for the older message, which is still good', async () => {
    const [offer, nudge] = await offersOf(phone(2002), 'Otto');
    await phone(2002).playEvening(undefined, offer?.id);
    expect((await phone(2002).message(offer?.id ?? 0)).text).toContain('10 of 10');
    expect((await phone(2002).message(nudge?.id ?? 0)).text).toContain('Goes on in the other');
  });
});

describe('silence', () => {
  it('has no third nudge after two silent evenings in a row', async () => {
    await answerAll('Monday', [2010, 2009]);
    await at(15, '16:30');
    await answerAll('Tuesday', [2010, 2009]);
    await at(15, '18:00');
    expect(await nudgesOn(2009, 'Tuesday')).toHaveLength(1);
    await at(16, '16:30');
    await answerAll('Wednesday', [2010, 2009]);
    await at(16, '18:00');
    await at(16, '18:30');
    expect(await nudgesOn(2009, 'Wednesday')).toHaveLength(0);
    expect(await nudgesOn(2010, 'Wednesday')).toHaveLength(0);
    expect(await phone(2010).messagesWith('Wednesday')).toHaveLength(1);
  });

  it('ends with practice: the nudges come back', async () => {
    await phone(2009).playEvening();
    await at(17, '16:30');
    await answerAll('Thursday', [2010, 2009, 2011]);
    await at(17, '18:00');
    expect(await nudgesOn(2009, 'Thursday')).toHaveLength(1);
    expect(await nudgesOn(2010, 'Thursday')).toHaveLength(0);
  });
});

describe('the teacher’s digest', () => {
  it('names the silent child to call, and nobody who answered', async () => {
    await at(18, '16:30');
    await answerAll('Friday', [2010, 2009, 2011]);
    await at(18, '18:00');
    await at(18, '19:00');
    const [digest] = await phone(DEMO_TEACHER).messagesWith('To call');
    // Tonight may still be marked, so it is not counted.
    expect(digest?.text).toContain('Ziggy (4 evenings in a row without an answer)');
    expect(digest?.text).not.toContain('Clover');
    expect(digest?.text).not.toContain('Saffron');
    expect(digest?.text).not.toContain('Bramble');
  });
});

describe('quiet hours', () => {
  it('sends a late evening without a nudge when there is no time left for one', async () => {
    await phone(2011).say('/time 20:00');
    const [usual, late] = [(await phone(2009).chat()).length, (await phone(2011).chat()).length];
    // The service was down from before the evening time until ten past eight.
    for (const time of ['19:10', '19:45', '19:50', '19:55', '19:59', '20:00', '20:30']) {
      await at(21, time);
    }
    expect(await phone(2009).chat()).toHaveLength(usual + 1);
    expect(await phone(2011).chat()).toHaveLength(late + 1);
    expect((await phone(2011).last()).text).not.toContain(NUDGE);
  });

  it('drops an evening that could not be sent before nine', async () => {
    const before = (await phone(2011).chat()).length;
    await at(22, '16:30');
    await world.client.setFault({ method: 'sendMessage', mode: 'error', count: 500 });
    await at(22, '19:00');
    await at(22, '19:58');
    await world.client.clearFaults();
    await at(22, '20:00');
    await at(22, '20:05');
    expect(await phone(2011).chat()).toHaveLength(before);
  });

  it('plans nothing for a day that was missed until nine', async () => {
    const before = (await phone(2007).chat()).length;
    for (const time of ['20:00', '21:30', '22:59', '23:30']) await at(23, time);
    expect(await phone(2007).chat()).toHaveLength(before);
  });

  it('sent nothing to any family from 21:00 on, nor before 06:00', async () => {
    const families = new Set(DEMO_FAMILIES.map(({ id }) => id));
    const sent = (await world.client.log()).filter(
      (call) =>
        call.method.startsWith('send') && families.has(call.chatId ?? 0) && call.status === 200,
    );
    const times = sent.map((call) => localTimeAt(new Date(call.at), ZONE).time).sort();
    expect(sent.length).toBeGreaterThan(60);
    expect(times.at(-1)?.localeCompare('21:00')).toBe(-1);
    expect(times.at(0)?.localeCompare('06:00')).toBe(1);
  });

  it('leaves no name and no typed text in the log', async () => {
    expect(world.logged.length).toBeGreaterThan(0);
    expect(await leaksOf(world)).toEqual([]);
  });
});
