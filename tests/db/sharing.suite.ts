import { describe, expect, it } from 'vitest';
import {
  acceptSlip,
  childrenGivenSlips,
  countSlips,
  issueSlips,
  leaveAll,
  listChildren,
  readHeldData,
  readSharing,
  readSlip,
  SHARE_LIMITS,
  type Store,
  setRelation,
  shareSlip,
} from '../../db/index.ts';
import { codeOf, refusalOf } from '../support/code-of.ts';
import { AGREEMENT, aChat, aClass, aFamily, aHelper } from '../support/people.ts';
import { readTable } from '../support/raw-rows.ts';
import { MORNING } from '../support/term.ts';

const hoursOn = (hours: number) => new Date(MORNING.getTime() + hours * 3_600_000);

/** A helper's own link for one more adult. */
export function sharingSuite(opened: () => Store): void {
  describe('makes one that', () => makingSuite(opened));
  describe('has one that', () => endingSuite(opened));
  describe('gets none', () => refusingSuite(opened));
}

/** A family with short ways to pass a link on and to take one. */
async function aSharer(store: Store, options: { helpers?: number } = {}) {
  const classroom = await aClass(store);
  const family = await aFamily(store, classroom, options);
  const scope = { helperId: family.helper.id, childId: family.child.id };
  const share = async (now = MORNING, by = scope) => {
    const { was } = await readSharing(store, { ...by, now });
    return shareSlip(store, { ...by, was, now });
  };
  const take = (code: string, now: Date) =>
    acceptSlip(store, { code, chatId: aChat(), agreement: AGREEMENT, now });
  return { classroom, family, scope, share, take };
}

function makingSuite(opened: () => Store) {
  it('opens once, for two days, and the teacher sees one helper more and no name', async () => {
    const store = opened();
    const { classroom, family, share, take } = await aSharer(store);
    const { code, nickname, expiresAt } = await share();
    expect({ nickname, expiresAt }).toEqual({ nickname: 'Wren', expiresAt: hoursOn(48) });
    expect(await codeOf(readSlip(store, { code, chatId: aChat(), now: hoursOn(48) }))).toBe(
      'expired',
    );
    await take(code, hoursOn(47));
    expect(await codeOf(take(code, hoursOn(47)))).toBe('used_up');
    const [listed] = await listChildren(store, classroom.scope);
    expect(listed).toMatchObject({ nickname: 'Wren', helpers: 2 });
    expect(JSON.stringify(listed)).not.toContain(String(family.helper.chatId));
  });

  it('is made once however often the button is tapped, and a later one takes its place', async () => {
    const store = opened();
    const { scope, share } = await aSharer(store);
    const first = await share();
    const again = shareSlip(store, { ...scope, was: 'none', now: hoursOn(1) });
    expect(await refusalOf(again)).toBe('conflict: share');
    expect(await readSharing(store, { ...scope, now: hoursOn(1) })).toMatchObject({
      openUntil: hoursOn(48),
    });
    const second = await share(hoursOn(1));
    const open = (code: string) =>
      codeOf(readSlip(store, { code, chatId: aChat(), now: hoursOn(2) }));
    expect(await open(first.code)).toBe('not_found');
    expect(await open(second.code)).toBe('accepted');
  });
}

function endingSuite(opened: () => Store) {
  it('leaves the teacher’s slips alone: their count, who was given one, and that they open', async () => {
    const store = opened();
    const { classroom, family, share } = await aSharer(store);
    const count = await countSlips(store, classroom.scope);
    await share();
    expect(await countSlips(store, classroom.scope)).toBe(count);
    expect(await childrenGivenSlips(store, classroom.scope, count)).toEqual(new Set());
    await aHelper(store, family.code);
  });

  it('dies with new slips of the teacher, and when who passed it on leaves', async () => {
    const store = opened();
    const { classroom, scope, share, take } = await aSharer(store);
    const first = await share();
    const childIds = [scope.childId];
    await issueSlips(store, classroom.scope, { childIds, now: hoursOn(1) });
    expect(await codeOf(take(first.code, hoursOn(2)))).toBe('not_found');
    const second = await share(hoursOn(2));
    await leaveAll(store, { helperId: scope.helperId, now: hoursOn(3) });
    expect(await codeOf(take(second.code, hoursOn(4)))).toBe('not_found');
  });

  it('is among what is kept about the child, told apart from the teacher’s', async () => {
    const store = opened();
    const { scope, share } = await aSharer(store);
    await share();
    const { slips } = await readHeldData(store, { ...scope, now: hoursOn(1) });
    expect(slips.map(({ shared }) => shared).sort()).toEqual([false, true]);
  });
}

function refusingSuite(opened: () => Store) {
  it('for another family’s child, and none is stored', async () => {
    const store = opened();
    const { scope } = await aSharer(store);
    const other = await aSharer(store);
    const before = await readTable(store, 'slip');
    const foreign = { ...scope, childId: other.scope.childId };
    expect(await codeOf(readSharing(store, { ...foreign, now: MORNING }))).toBe('not_found');
    const made = shareSlip(store, { ...foreign, was: 'none', now: MORNING });
    expect(await codeOf(made)).toBe('not_found');
    expect(await readTable(store, 'slip')).toEqual(before);
  });

  it('for a brother or sister', async () => {
    const store = opened();
    const { scope, share } = await aSharer(store);
    await setRelation(store, { ...scope, relation: 'sibling' });
    expect(await readSharing(store, { ...scope, now: MORNING })).toMatchObject({
      refusal: 'sibling',
    });
    expect(await refusalOf(share())).toBe('conflict: share');
  });

  it('beyond two in seven days, whichever helpers of the child made them, and gets one again afterwards', async () => {
    const store = opened();
    const { family, scope, share, take } = await aSharer(store, { helpers: 2 });
    const other = { ...scope, helperId: family.helpers[1]?.id ?? '' };
    await take((await share()).code, hoursOn(1));
    await share(hoursOn(2), other);
    expect(await readSharing(store, { ...scope, now: hoursOn(3) })).toMatchObject({
      refusal: 'week',
    });
    expect(await refusalOf(share(hoursOn(3)))).toBe('conflict: share');
    // The other helper's link was not used: a day after its end there is room again, for one.
    await take((await share(hoursOn(75))).code, hoursOn(76));
    expect(await refusalOf(share(hoursOn(77)))).toBe('conflict: share');
    await share(hoursOn(7 * 24 + 2));
  });

  it('once the child has six helpers', async () => {
    const store = opened();
    const { classroom, family, scope, share } = await aSharer(store, { helpers: 4 });
    const [slip] = await issueSlips(store, classroom.scope, {
      childIds: [family.child.id],
      now: MORNING,
    });
    for (let more = 4; more < SHARE_LIMITS.helpers; more += 1) {
      await aHelper(store, slip?.code ?? '');
    }
    expect(await readSharing(store, { ...scope, now: MORNING })).toMatchObject({
      helpers: 6,
      refusal: 'helpers',
    });
    expect(await refusalOf(share())).toBe('conflict: share');
  });
}
