import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Phone } from '../../bot/roots/phone.ts';
import { BUTTONS } from '../../bot/texts/buttons.ts';
import { readPng } from '../bot/media/read-png.ts';
import { leaksOf } from '../support/leaks.ts';
import {
  ask,
  linksOn,
  newPhone,
  offerOf,
  openAndRead,
  withoutIsolates,
} from '../support/phones.ts';
import { dumpAll, readTable } from '../support/raw-rows.ts';
import { joinAs, makeSmallClass, type SmallClass } from '../support/small-class.ts';
import { parseTable } from '../support/table-text.ts';
import { openWorld, type World } from '../support/world.ts';

const MARKUP = '<b>Bob</b> & *x* _y_ [z](u)';
const HEBREW = 'אור';
const ASTRONAUT = '👩‍🚀 Ace';
const NAMES = ['Wren', MARKUP, HEBREW, ASTRONAUT, 'Otto'] as const;

let world: World;
let school: SmallClass;
let wren: Phone;

beforeAll(async () => {
  world = await openWorld({ start: '2026-09-14T09:00:00Z' });
  school = await makeSmallClass(world, NAMES);
  wren = await newPhone(world, 2001);
});
afterAll(() => world.close());

const linkFor = (name: string) => school.links.get(name) ?? '';

/** What is stored about families. The inbox, which every message passes through, is left out. */
async function families(): Promise<string> {
  const dump = await dumpAll(world.store);
  return ['helper', 'helper_child', 'consent', 'slip'].map((table) => dump.get(table)).join('\n');
}

describe('joining a child', () => {
  it('shows the notice first and stores nothing after “No, thank you”', async () => {
    const before = await families();
    const notice = await openAndRead(wren, linkFor('Wren'));
    for (const part of [
      'What is kept',
      'Who sees it',
      'How long',
      'Your choice, at any time',
      '/stop',
    ]) {
      expect(notice).toContain(part);
    }
    await wren.tap(BUTTONS.disagree);
    expect((await wren.last()).text).toContain('Nothing was stored');
    expect(await families()).toBe(before);
  });

  it('joins to that child only after “I agree”, with a proof of the agreement', async () => {
    await wren.open(linkFor('Wren'));
    await wren.tap(BUTTONS.agree);
    expect((await wren.last()).text).toContain('You are Wren’s helper now');
    const [child] = (await readTable(world.store, 'child')).filter(
      ({ nickname }) => nickname === 'Wren',
    );
    const proofs = await readTable(world.store, 'consent');
    expect(proofs).toHaveLength(1);
    expect(proofs[0]).toMatchObject({
      child_id: child?.id,
      language: 'en',
      agreed_at: expect.stringContaining('2026-09-14T09:00:00'),
      evidence: { messageId: (await wren.last()).id },
      withdrawn_at: null,
    });
    expect(await readTable(world.store, 'helper_child')).toHaveLength(1);
  });

  it('never shows another child to this helper', async () => {
    expect(await ask(wren, '/help')).toContain('You help Wren.');
    await wren.say('/today');
    await world.goTo('2026-09-14T16:30:00Z');
    const seen = (await wren.chat()).map((message) => message.text).join('\n');
    for (const other of NAMES.slice(1)) expect(seen).not.toContain(other);
  });

  it('greets a helper who opens the own link again, and uses nothing up', async () => {
    const before = await families();
    expect(await openAndRead(wren, linkFor('Wren'))).toContain(
      'You have joined this child already',
    );
    expect(await families()).toBe(before);
  });
});

describe('text and files where a button is expected', () => {
  it('answers text with what can be done', async () => {
    expect(await ask(wren, 'all done!')).toContain('/today');
    expect(await ask(school.teacher, 'hello?')).toContain('All is running');
    const stranger = await newPhone(world, 3001);
    expect(await ask(stranger, '/start')).toContain('open the join link');
    expect(await ask(stranger, 'let me in')).toContain('open the join link');
    expect(await ask(stranger, '/class')).toContain('open the join link');
  });

  it.each(['photo', 'voice', 'document'] as const)(
    'answers a %s with a plain reply',
    async (kind) => {
      const bytes = new TextEncoder().encode('not really');
      await world.client.sendFile(wren.id, { kind, name: 'something', bytes, caption: 'look' });
      await world.settle();
      expect((await wren.last()).text).toContain('I can only read text and taps');
    },
  );
});

describe('a name that looks like markup', () => {
  it('stands in the helper’s messages exactly as typed', async () => {
    for (const [index, name] of [MARKUP, HEBREW, ASTRONAUT].entries()) {
      const phone = await joinAs(world, 2010 + index, linkFor(name));
      expect(withoutIsolates((await phone.last()).text)).toContain(`You are ${name}’s helper now`);
    }
    await world.goTo('2026-09-14T16:31:00Z');
    const phone = await newPhone(world, 2010);
    const offer = await offerOf(phone, MARKUP);
    expect(offer.text).toContain(`${MARKUP} · Monday`);
    // The heading is bold as a whole; nothing inside the name became formatting of its own.
    expect(offer.entities).toEqual([
      { type: 'bold', offset: 0, length: `${MARKUP} · Monday`.length },
    ]);
  });

  it('reaches the result picture without breaking it', async () => {
    for (const id of [2010, 2011, 2012]) {
      const phone = await newPhone(world, id);
      await phone.playEvening((part) => (part === 1 ? [1] : []));
      const { photo } = await phone.last();
      expect(photo).toBeDefined();
      expect(readPng(await world.client.file(photo?.fileId ?? '')).width).toBe(504);
    }
  });

  it('stands in the roster, the digest and the table exactly as typed', async () => {
    const { teacher } = school;
    await teacher.say('/class');
    await teacher.tap(BUTTONS.children);
    const roster = withoutIsolates((await teacher.buttons()).join('\n'));
    for (const [index, name] of NAMES.entries()) expect(roster).toContain(`${index + 1}. ${name}`);
    await teacher.say('/class');
    for (const label of [BUTTONS.classNow, BUTTONS.weekSoFar]) await teacher.tap(label);
    const { id } = await teacher.last();
    await teacher.tap(BUTTONS.digestPicture, id);
    await teacher.tap(BUTTONS.digestTable, id);
    const files = (await teacher.chat()).flatMap((message) => message.document ?? []);
    const [picture, table] = files.slice(-2);
    expect(readPng(await world.client.file(picture?.fileId ?? '')).width).toBeGreaterThan(720);
    const text = new TextDecoder().decode(await world.client.file(table?.fileId ?? ''));
    expect(parseTable(text).map(([, nickname]) => nickname)).toEqual(['nickname', ...NAMES]);
  });
});

describe('a link that no longer works', () => {
  it('says that the code is unknown or was replaced, in the same words', async () => {
    const phone = await newPhone(world, 3002);
    const unknown = await openAndRead(phone, world.app.linkOf('AAAAAAAAAAAAAAAAAAAAAA'));
    expect(unknown).toMatch(/not valid.+replaced by a newer one.+ask the teacher/i);
    await school.teacher.say('/class');
    await school.teacher.tap(BUTTONS.children);
    await school.teacher.tap('5. Otto');
    await school.teacher.tap(BUTTONS.newLink);
    await school.teacher.tap(BUTTONS.makeLink);
    expect(await openAndRead(phone, linkFor('Otto'))).toBe(unknown);
    const fresh = (await linksOn(school.teacher)).get('Otto') ?? '';
    expect(await openAndRead(phone, fresh)).toContain('Otto · Heron class');
  });

  it('says that it was used up when a fifth helper comes', async () => {
    for (const id of [2002, 2003, 2004]) await joinAs(world, id, linkFor('Wren'));
    const fifth = await newPhone(world, 2005);
    expect(await openAndRead(fifth, linkFor('Wren'))).toContain('used as often as it may be');
    expect(await readTable(world.store, 'helper_child')).toHaveLength(7);
  });

  it('refuses an agreement whose link was used up meanwhile', async () => {
    const fresh = (await linksOn(school.teacher)).get('Otto') ?? '';
    const late = await newPhone(world, 2030);
    await late.open(fresh);
    for (const id of [2031, 2032, 2033, 2034]) await joinAs(world, id, fresh);
    await late.tap(BUTTONS.agree);
    const [answer] = await world.client.answers(late.id);
    expect(answer?.text).toContain('used as often as it may be');
    expect(await readTable(world.store, 'helper_child')).toHaveLength(11);
  });

  it('says that it is too old 61 days later, and to a helper of the child that they have joined', async () => {
    await world.goTo('2026-11-14T09:01:00Z');
    const late = await newPhone(world, 3003);
    expect(await openAndRead(late, linkFor(HEBREW))).toContain('This join link is too old');
    expect(await openAndRead(wren, linkFor('Wren'))).toContain(
      'You have joined this child already',
    );
  });

  it('has told no name and no typed text to the log', async () => {
    expect(world.logged.length).toBeGreaterThan(0);
    expect(await leaksOf(world)).toEqual([]);
  });
});
