import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import type { Clips } from '../../../bot/clip/index.ts';
import { createPainter } from '../../../bot/media/index.ts';
import { eveningScreen, type Means } from '../../../bot/screens/evening-screen.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { type EveningView, WAYS } from '../../../db/index.ts';
import { rungById } from '../../../drills/index.ts';
import {
  bonds,
  clocks,
  EVENING_ID,
  finished,
  fives,
  scored,
  TUESDAY,
  view,
} from '../support/evening.ts';

const painter = createPainter();
const clips: Clips = { soon: async () => null, ahead: async () => false, close: async () => {} };
const screenOf = (each: EveningView, means: Partial<Means> = { way: 'single' }) =>
  eveningScreen(each, TUESDAY, { painter, ...means });
const labelsOf = ({ buttons }: Screen) => buttons.map((row) => row.map(({ label }) => label));
const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));

const drill = { version: 1, parts: [bonds, clocks, bonds, fives] } as const;
/** At a part, the ones before it all right; at a card of it, once one is asked. */
function at(part: number, single?: { card: number; shown: boolean }): EveningView {
  const results = drill.parts.map((each, index) => (index < part ? scored(each) : null));
  const marking = single ? { part, missed: [], single } : null;
  return view({ drill, started: true, results, marking });
}

describe('one card at a time', () => {
  it('asks the first card with what to do, and offers its answer and to stop', () => {
    const screen = screenOf(at(0));
    expect(screen.text.text).toBe(
      'Wren · Tuesday\nPart 1 of 4: adding within 10, card 1 of 4\nSay the answer, then tap “Show answer”. Nothing runs, take your time.\n\n3 + 4',
    );
    expect(labelsOf(screen)).toEqual([['Show answer'], ['Stop for today']]);
    expect(actionsOf(screen)[0]).toEqual({
      kind: 'showAnswer',
      evening: EVENING_ID,
      part: 0,
      card: 0,
    });
  });

  it('shows the answer, then asks whether it was known; each button carries the card', () => {
    const screen = screenOf(at(0, { card: 1, shown: true }));
    expect(screen.text.text).toContain('\n\n5 + 5 = 10');
    expect(labelsOf(screen)).toEqual([
      ['Got it', 'Not yet'],
      ['Back one card'],
      ['Stop for today'],
    ]);
    const cards = actionsOf(screen).flatMap((action) =>
      action && 'card' in action ? [action.card] : [],
    );
    expect(cards).toEqual([1, 1, 1]);
  });

  it('gives no answer away before it is asked for', () => {
    for (const card of [0, 1, 2]) {
      expect(screenOf(at(1, { card, shown: false })).text.text).not.toMatch(
        /half past (three|twelve|nine)|:30/,
      );
    }
  });

  it('says of the part before how it went, once', () => {
    expect(screenOf(at(1)).text.text).toContain('adding within 10: 4 of 4');
    expect(screenOf(at(1, { card: 1, shown: false })).text.text).not.toContain('4 of 4');
  });

  it('shows a written card as text and a clock as a small picture', () => {
    expect(screenOf(at(0)).picture).toBeUndefined();
    const clock = screenOf(at(1));
    expect(clock.picture?.paint().length).toBeLessThan(9_000);
    expect(screenOf(at(1, { card: 0, shown: true })).picture?.hash).toBe(clock.picture?.hash);
    expect(screenOf(at(1, { card: 0, shown: true })).text.text).toContain('half past three, 3:30');
  });

  it('of ten clocks and four parts of sums costs about the 80 kB that “/show” says, result included', () => {
    const rung = rungById('clock.mixed');
    const cards = rung?.kind === 'facts' ? rung.facts.slice(0, 10) : [];
    const part = { ...clocks, cards };
    const each = view({ drill: { version: 1, parts: [part] }, started: true });
    const bytes = cards.map((_, card) => {
      const marking = { part: 0, missed: [], single: { card, shown: false } };
      return screenOf({ ...each, marking }).picture?.paint().length ?? 0;
    });
    const evening = { version: 1, parts: [bonds, bonds, bonds, bonds, part] } as const;
    const result = screenOf(finished({ drill: evening })).picture?.paint().length ?? 0;
    const total = result + bytes.reduce((sum, one) => sum + one, 0);
    expect(total).toBeGreaterThan(60_000);
    expect(total).toBeLessThan(90_000);
  });

  it('never leaves a clock above a sum: the part’s title takes its place, without a pace', () => {
    const after = screenOf(at(2));
    expect(after.picture?.paint().length).toBeLessThan(3_000);
    expect(screenOf(at(2, { card: 2, shown: true })).picture?.hash).toBe(after.picture?.hash);
    expect(after.text.text).not.toContain('second');
  });

  it('leaves a counting run as it is', () => {
    expect(labelsOf(screenOf(at(3)))[0]).toEqual(['All of them', 'Stopped earlier']);
    expect(screenOf(at(3)).picture?.hash).toBe(screenOf(at(3), { way: 'pictures' }).picture?.hash);
  });
});

describe('one card of several', () => {
  it('lists what was judged so far to a helper who is shown drills otherwise', () => {
    const half = { ...at(0), marking: { part: 0, missed: [1], single: { card: 2, shown: false } } };
    for (const way of WAYS.filter((each) => each !== 'single')) {
      expect(labelsOf(screenOf(half, { way, clips })).flat()).toContain('✗ 2. 5 + 5 = 10');
    }
    expect(labelsOf(screenOf({ ...half, marking: { part: 0, missed: [1] } })).flat()).toContain(
      '✗ 2. 5 + 5 = 10',
    );
  });
});

describe('bigger type', () => {
  it('asks one card at a time, each card and each answer a picture of its own', () => {
    for (const way of ['pictures', 'single'] as const) {
      const [asked, next, answered] = [
        at(0),
        at(0, { card: 1, shown: false }),
        at(0, { card: 0, shown: true }),
      ].map((each) => screenOf(each, { way, bigger: true, clips }).picture?.hash);
      expect(asked).toMatch(/^[0-9a-f]{64}$/);
      expect(new Set([asked, next, answered]).size).toBe(3);
    }
  });

  it('leaves a clip, which shows one card at a time, and words, whose size is the phone’s own', () => {
    expect(screenOf(at(0), { way: 'clip', bigger: true, clips }).clip).toBeDefined();
    expect(screenOf(at(0), { way: 'words', bigger: true }).text.text).toContain('\n1. 3 + 4');
    expect(labelsOf(screenOf(at(1), { way: 'words', bigger: true }))[0]).toEqual(['Show answer']);
  });

  it('asks one card at a time where a clip may not be: without timing', () => {
    const means = { way: 'clip', bigger: true, noTiming: true, clips } as const;
    expect(screenOf(at(0), means).clip).toBeUndefined();
    expect(labelsOf(screenOf(at(0), means))[0]).toEqual(['Show answer']);
  });
});

describe('no timing by the family’s choice', () => {
  it('is as the teacher’s: no clip and no seconds', () => {
    const screen = screenOf(at(0), { way: 'clip', noTiming: true, clips });
    expect(screen.clip).toBeUndefined();
    expect(screen.picture).toBeDefined();
    expect(screen.text.text).toContain('as long as it takes');
    expect(screen.text.text).not.toContain('second');
    expect(screenOf(at(0), { way: 'clip', noTiming: false, clips }).clip).toBeDefined();
  });

  it('keeps what else the teacher adjusted', () => {
    const adjusted = { steps: -1, fewer: true, untimed: false } as const;
    const each = view({ drill: { ...drill, adjusted } });
    expect(screenOf(each, { noTiming: true }).text.text).toBe(screenOf(each, {}).text.text);
  });
});

describe('the clock aid', () => {
  const aid = { way: 'single', clockAid: true } as const;

  it('explains a clock with its answer, and not before', () => {
    const [asked, answered] = [false, true].map(
      (shown) => screenOf(at(1, { card: 0, shown }), aid).picture?.hash,
    );
    const plain = screenOf(at(1), { way: 'single' }).picture?.hash;
    expect(asked).toBe(plain);
    expect(answered).not.toBe(plain);
  });

  it('explains all clocks of a part while they are marked, and no sums', () => {
    const marking = (part: number) => ({ ...at(part), marking: { part, missed: [] } });
    for (const way of ['clip', 'pictures', 'words'] as const) {
      const [plain, aided] = [false, true].map((clockAid) =>
        screenOf(marking(1), { way, clockAid, clips }),
      );
      expect(aided?.clip).toBeUndefined();
      expect(aided?.picture?.hash).not.toBe(plain?.picture?.hash);
      expect(screenOf(marking(0), { way, clockAid: true, clips }).picture?.hash).toBe(
        screenOf(marking(0), { way, clips }).picture?.hash,
      );
    }
  });

  it('gives nothing away while a part is practised', () => {
    for (const way of WAYS) {
      const [plain, aided] = [false, true].map(
        (clockAid) => screenOf(at(1), { way, clockAid }).picture?.hash,
      );
      expect(aided).toBe(plain);
    }
  });
});
