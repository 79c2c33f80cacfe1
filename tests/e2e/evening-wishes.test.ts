import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { DEMO_TEACHER, loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, labelsOf, offerOf, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { openWorld, type World } from '../support/world.ts';

// September 2026 in London, British Summer Time: 17:30 is 16:30 UTC.
let world: World;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world);
});
afterAll(() => world.close());

const phone = (id: number) => new Phone(world, id);
const at = (day: number, time: string) => world.goTo(`2026-09-${day}T${time}:00Z`);

describe('“Later”', () => {
  it('promises one reminder in half an hour and offers it once', async () => {
    await at(14, '16:30');
    await phone(2006).tap(BUTTONS.later);
    const offer = await phone(2006).last();
    expect(offer.text).toContain('You asked for one reminder, at 18:00');
    expect(labelsOf(offer)).toEqual([BUTTONS.start, BUTTONS.notToday]);
  });

  it('reminds exactly once, and no nudge follows', async () => {
    const before = (await phone(2006).chat()).length;
    await at(14, '16:59');
    expect(await phone(2006).chat()).toHaveLength(before);
    for (const time of ['17:00', '17:00', '17:01', '17:30', '18:00', '18:01', '18:30']) {
      await at(14, time);
    }
    expect(await phone(2006).chat()).toHaveLength(before + 1);
    expect((await phone(2006).last()).text).toContain('You asked for a reminder');
    expect((await phone(2009).last()).text).toContain('Still time for a few minutes tonight');
  });

  it('is refused kindly when the reminder would come too late in the evening', async () => {
    await at(14, '19:20');
    const offer = (await phone(2007).messagesWith('Monday'))[0];
    const heard = await tapAndHear(phone(2007), BUTTONS.later, offer?.id);
    expect(heard).toContain('no reminder after 20:45');
    expect(heard).toContain('Start whenever it suits tonight');
    const put = (await readTable(world.store, 'evening')).filter((row) => row.remind_at !== null);
    expect(put).toHaveLength(1);
  });
});

describe('“Not today”', () => {
  it('is fine, and no nudge follows', async () => {
    await at(15, '16:30');
    await phone(2008).tap(BUTTONS.notToday);
    expect((await phone(2008).last()).text).toContain('Not today. That is fine.');
    const before = (await phone(2008).chat()).length;
    await at(15, '18:00');
    expect(await phone(2008).chat()).toHaveLength(before);
  });

  it('can be taken back the same evening', async () => {
    await phone(2008).tap(BUTTONS.afterAll);
    expect((await phone(2008).last()).text).toContain('Part 1 of 5');
  });

  it('shows on the other helper’s message, who may practise after all', async () => {
    await phone(2003).tap(BUTTONS.notToday, (await offerOf(phone(2003), 'Kestrel')).id);
    const copy = (await phone(2004).messagesWith('Tuesday'))[0];
    expect(copy?.text).toContain('Not today. That is fine.');
    await phone(2004).tap(BUTTONS.afterAll, copy?.id);
    expect((await phone(2004).message(copy?.id ?? 0)).text).toContain('Part 1 of 5');
  });
});

describe('“/today”', () => {
  it('says when the drill comes while there is none', async () => {
    await at(16, '09:00');
    expect(await ask(phone(2005), '/today')).toContain(
      'no drill yet today. It comes Mon to Fri at 17:30',
    );
  });

  it('repeats today’s drill of each own child', async () => {
    await at(16, '16:30');
    const before = (await phone(2001).messagesWith('Wednesday')).length;
    await phone(2001).say('/today');
    const messages = await phone(2001).messagesWith('Wednesday');
    expect(messages).toHaveLength(before + 2);
    expect(messages.slice(-2).map((message) => message.text.split(' · ')[0])).toEqual([
      'Wren',
      'Juniper',
    ]);
  });

  it('plays from the repeated message, and the first one says where it goes on', async () => {
    await phone(2005).say('/today');
    const [first, again] = await phone(2005).messagesWith('Wednesday');
    await phone(2005).playEvening(undefined, again?.id);
    expect((await phone(2005).message(again?.id ?? 0)).text).toContain('10 of 10');
    const old = await phone(2005).message(first?.id ?? 0);
    expect(old.text).toContain('Goes on in the other message');
    expect(labelsOf(old)).toEqual([]);
  });
});

describe('“/time”', () => {
  it.each(['/time 25:99', '/time 05:00', '/time 20:01', '/time', '/time soon'])(
    'refuses %s and names the range',
    async (text) => {
      const before = await readTable(world.store, 'child');
      expect(await ask(phone(2011), text)).toContain('Send a time from 06:00 to 20:00');
      expect(await readTable(world.store, 'child')).toEqual(before);
    },
  );

  it('moves the next evening of this family and of nobody else', async () => {
    expect(await ask(phone(2011), '/time 18:15')).toContain('The drill comes at 18:15 now');
    await at(17, '16:30');
    await at(17, '17:14');
    expect(await phone(2011).messagesWith('Thursday')).toHaveLength(0);
    expect(await phone(2009).messagesWith('Thursday')).toHaveLength(1);
    await at(17, '17:15');
    expect(await phone(2011).messagesWith('Thursday')).toHaveLength(1);
  });

  it('keeps the nudge three quarters of an hour away from a later drill', async () => {
    expect(await ask(phone(2010), '/time 18:45')).toContain('18:45');
    await at(18, '17:45');
    await at(18, '18:00');
    await at(18, '18:29');
    expect(await phone(2010).messagesWith('Friday')).toHaveLength(1);
  });
});

describe('“/stop”', () => {
  it('asks first, and “No, keep going” changes nothing', async () => {
    expect(await ask(phone(2004), '/stop')).toContain('Stop helping Kestrel?');
    await phone(2004).tap(BUTTONS.stay);
    expect((await phone(2004).last()).text).toContain('Everything stays as it was');
    expect(
      (await readTable(world.store, 'helper_child')).every((row) => row.left_at === null),
    ).toBe(true);
  });

  it('ends it at once: the agreement is withdrawn and older buttons do nothing', async () => {
    const open = await offerOf(phone(2004), 'Kestrel');
    await phone(2004).say('/stop');
    await phone(2004).tap(BUTTONS.leave);
    expect((await phone(2004).last()).text).toContain('No more messages will come');
    const withdrawn = (await readTable(world.store, 'consent')).filter((row) => row.withdrawn_at);
    expect(withdrawn).toHaveLength(1);
    expect(await tapAndHear(phone(2004), BUTTONS.start, open.id)).toContain('not yours to mark');
    expect(await ask(phone(2004), '/today')).toContain('open the join link');
  });

  it('sends nothing any more to the one who left, and everything to the other helper', async () => {
    const [gone, stays] = [(await phone(2004).chat()).length, (await phone(2003).chat()).length];
    for (const time of ['16:30', '18:00', '19:00']) await at(21, time);
    expect(await phone(2004).chat()).toHaveLength(gone);
    expect((await phone(2003).chat()).length).toBeGreaterThan(stays);
  });

  it('leaves a child without helpers in peace, and the teacher sees it', async () => {
    await phone(2009).say('/stop');
    await phone(2009).tap(BUTTONS.leave);
    const before = (await phone(2009).chat()).length;
    for (const time of ['16:30', '18:00', '19:00']) await at(22, time);
    expect(await phone(2009).chat()).toHaveLength(before);
    await phone(DEMO_TEACHER).say('/class');
    await phone(DEMO_TEACHER).tap(BUTTONS.children);
    expect((await phone(DEMO_TEACHER).last()).text).toContain('Helper has left: Tamsin');
  });

  it('tells no name and no typed text to the log', async () => {
    expect(await leaksOf(world)).toEqual([]);
  });
});
