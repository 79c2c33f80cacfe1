import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { DEMO_TEACHER, loadSchool, Phone } from '../support/demo-school.ts';
import { leaksOf } from '../support/leaks.ts';
import { ask, labelsOf, newPhone, tapAndHear } from '../support/phones.ts';
import { readTable } from '../support/raw-rows.ts';
import { storedAbout } from '../support/stored.ts';
import { openWorld, type World } from '../support/world.ts';

const STRANGER = 3001;

let world: World;
beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  await loadSchool(world);
});
afterAll(() => world.close());

const phone = (id: number) => new Phone(world, id);

/** The accounts that are shown something else than a clip, and what. */
async function others(): Promise<Record<string, unknown>> {
  const rows = await readTable(world.store, 'helper');
  return Object.fromEntries(
    rows.filter((row) => row.way !== 'clip').map((row) => [String(row.chat_id), row.way]),
  );
}

describe('“/show”', () => {
  it('offers four ways, a clip ticked, and what each costs', async () => {
    const text = await ask(phone(2003), '/show');
    expect(text).toContain('about 250 kB an evening');
    expect(text).toContain('about 100 kB an evening');
    expect(text).toContain('about 80 kB an evening');
    expect(text).toContain('under 60 kB an evening');
    expect(labelsOf(await phone(2003).last())).toEqual([
      '✓ Clip',
      'Pictures',
      'One by one',
      'Words only',
    ]);
    expect(await others()).toEqual({});
  });

  it('keeps a choice, moves the tick, and leaves the child’s other helper alone', async () => {
    expect(await tapAndHear(phone(2003), 'Words only')).toBe('Words only, from the next screen.');
    expect(await phone(2003).buttons()).toEqual(['Clip', 'Pictures', 'One by one', '✓ Words only']);
    expect(await others()).toEqual({ 2003: 'words' });
    await phone(2004).say('/show');
    expect(await phone(2004).buttons()).toEqual(['✓ Clip', 'Pictures', 'One by one', 'Words only']);
  });

  it('shows the choice when it is asked for again', async () => {
    await phone(2003).say('/show');
    expect(await phone(2003).buttons()).toEqual(['Clip', 'Pictures', 'One by one', '✓ Words only']);
  });

  it('chooses once when a button is tapped twice, and both taps are answered alike', async () => {
    const before = (await phone(2003).chat()).length;
    await world.client.tapLabel(2003, 'Pictures');
    await world.client.tapLabel(2003, 'Pictures');
    await world.settle();
    const heard = (await world.client.answers(2003)).slice(-2).map((answer) => answer.text);
    expect(heard).toEqual(['Pictures, from the next screen.', 'Pictures, from the next screen.']);
    expect(await phone(2003).chat()).toHaveLength(before);
    expect(await phone(2003).buttons()).toEqual(['Clip', '✓ Pictures', 'One by one', 'Words only']);
    expect(await others()).toEqual({ 2003: 'pictures' });
  });

  it('goes back to a clip from an older message', async () => {
    const [oldest] = await phone(2003).messagesWith('How shall the cards be shown?');
    await phone(2003).tap('Clip', oldest?.id);
    expect(labelsOf(await phone(2003).message(oldest?.id ?? 0))[0]).toBe('✓ Clip');
    expect(await others()).toEqual({});
  });

  it('is in a family’s help', async () => {
    expect(await ask(phone(2003), '/help')).toContain('/show · ');
  });
});

describe('a choice that is not one’s own to make', () => {
  it.each([
    ['another family', 2006],
    ['the teacher', DEMO_TEACHER],
  ])('is refused when %s forges a tap on the message', async (_, fromAccountId) => {
    await phone(2005).say('/show');
    const shown = await phone(2005).last();
    const stored = await storedAbout(world);
    const data = shown.buttons.flat().at(-1)?.data ?? '';
    await world.client.forgeTap({ fromAccountId, chatId: 2005, messageId: shown.id, data });
    await world.settle();
    const heard = (await world.client.answers(fromAccountId)).at(-1)?.text;
    expect(heard).toContain('somebody else’s message. Nothing was changed');
    expect(await storedAbout(world)).toBe(stored);
    expect(await phone(2005).last()).toEqual(shown);
  });

  it('is refused when its button carries a way there is none of', async () => {
    const shown = await phone(2005).last();
    const stored = await storedAbout(world);
    await world.client.rawCallback(2005, shown.id, '1:wy:smoke');
    await world.settle();
    expect((await world.client.answers(2005)).at(-1)?.text).toContain('Send /show and choose one');
    expect(await storedAbout(world)).toBe(stored);
  });
});

describe('a choice', () => {
  // 17:30 in London, British Summer Time. The first part is number bonds.
  beforeAll(() => world.goTo('2026-09-14T16:30:00Z'));

  it('of words only shows the next part without a picture, and its cards as text', async () => {
    await phone(2010).say('/show');
    await phone(2010).tap('Words only');
    await phone(2010).tap(BUTTONS.start);
    const [part] = await phone(2010).messagesWith('Part 1 of 5');
    expect(part?.photo).toBeUndefined();
    expect(part?.text).toMatch(/\n10\. /);
  });

  it('of pictures shows the next part on a picture, in the same message', async () => {
    await phone(2010).tap('Pictures');
    await phone(2010).tap(BUTTONS.allRight);
    const [part] = await phone(2010).messagesWith('Part 2 of 5');
    expect(part?.photo).toBeDefined();
    expect(part?.text).not.toMatch(/\n1\. /);
  });
});

describe('somebody without a child', () => {
  it('is told what to do: a stranger to join, a teacher where the class is', async () => {
    await (await newPhone(world, STRANGER)).say('/start');
    expect(await ask(phone(STRANGER), '/show')).toContain('open the join link');
    expect(await ask(phone(DEMO_TEACHER), '/show')).toContain('You help no child here');
    expect(labelsOf(await phone(STRANGER).last())).toEqual([]);
    expect(labelsOf(await phone(DEMO_TEACHER).last())).toEqual([]);
  });

  it('chooses nothing with a button copied from a family', async () => {
    const stored = await storedAbout(world);
    for (const account of [STRANGER, DEMO_TEACHER]) {
      const { id } = await phone(account).last();
      await world.client.rawCallback(account, id, '1:wy:words');
      await world.settle();
      const heard = (await world.client.answers(account)).at(-1)?.text;
      expect(heard).toContain('not yours to change');
    }
    expect(await storedAbout(world)).toBe(stored);
  });

  it('chooses nothing any more after having left', async () => {
    await phone(2009).say('/show');
    const shown = await phone(2009).last();
    const before = await others();
    await phone(2009).say('/stop');
    await phone(2009).tap(BUTTONS.leave);
    expect(await tapAndHear(phone(2009), 'Words only', shown.id)).toContain('not yours to change');
    expect(await ask(phone(2009), '/show')).toContain('open the join link');
    expect(await others()).toEqual(before);
  });

  it('and nobody else is told to the log', async () => {
    expect(await leaksOf(world)).toEqual([]);
    expect(world.logged.filter((line) => line.level === 'error')).toEqual([]);
  });
});
