import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { createPainter } from '../../../bot/media/index.ts';
import {
  copyScreen,
  eveningScreen,
  fixScreen,
  type Means,
} from '../../../bot/screens/evening-screen.ts';
import { eveningStep } from '../../../bot/screens/evening-step.ts';
import { isAnotherBusy, nextTurn, turnBefore } from '../../../bot/screens/turns.ts';
import type { ChildTurn } from '../../../db/index.ts';
import { bonds, clocks, finished, scored, TUESDAY, view } from '../support/evening.ts';

const painter = createPainter();
const drill = { version: 1, parts: [bonds, clocks, bonds] } as const;
const some = { drill, started: true, results: [scored(bonds, { right: 2 }), null, null] };
const stopped = view({ ...some, stopped: true });
const screenOf = (each = stopped, means: Partial<Means> = {}) =>
  eveningScreen(each, TUESDAY, { painter, ...means });

describe('an evening that was stopped', () => {
  it('says what was practised, and neither a score nor a question', () => {
    const { text } = screenOf();
    expect(text.text).toBe(
      'Wren · Tuesday\nStopped for today. That is fine.\nDone, and it counts: adding within 10.\nNothing more comes today. You can still go on until midnight.',
    );
    expect(text.text).not.toMatch(/\?|2 of 4|best/);
  });

  it('puts a small quiet picture where the cards were', () => {
    expect(screenOf().picture?.paint().length).toBeLessThan(3_000);
    const sums = { ...stopped, drill: { version: 1, parts: [bonds, bonds, bonds] } };
    expect(screenOf(sums, { way: 'words' }).picture).toBeUndefined();
    expect(screenOf(sums, { way: 'single' }).picture).toBeUndefined();
  });

  it('is stopped whatever part was half done, unless a mark is being changed', () => {
    const at = (part: number) =>
      eveningStep({ ...stopped, marking: { part, missed: [] } }, TUESDAY);
    expect(at(1)).toEqual({ step: 'stopped' });
    expect(at(0)).toEqual({ step: 'marking', part: 0 });
  });

  it('goes back from changing a mark without having begun again', () => {
    const back = (each: typeof stopped) => unpack(fixScreen(each).buttons.at(-1)?.[0]?.data ?? '');
    expect(back(stopped)?.kind).toBe('stopToday');
    expect(back(finished())?.kind).toBe('start');
  });

  it('says so on the other helper’s message, who may go on', () => {
    const screen = copyScreen(stopped, TUESDAY, false);
    expect(screen.text.text).toContain('Stopped for today. That is fine.');
    expect(screen.buttons.flat().map(({ label }) => label)).toEqual(['Go on after all']);
    expect(copyScreen(stopped, TUESDAY, true).buttons).toEqual([]);
  });
});

const turns = (...states: readonly ChildTurn['state'][]): ChildTurn[] =>
  states.map((state, at) => ({
    eveningId: `${at}`,
    nickname: ['Wren', 'Robin', 'Otter'][at] ?? '',
    state,
  }));

describe('the turns of brothers and sisters', () => {
  it('lead on from an evening that is over to the next that nobody has begun, round to the first', () => {
    expect(nextTurn(turns('over', 'waiting', 'waiting'), '0')?.nickname).toBe('Robin');
    expect(nextTurn(turns('over', 'under_way', 'waiting'), '0')?.nickname).toBe('Otter');
    expect(nextTurn(turns('waiting', 'under_way', 'over'), '2')?.nickname).toBe('Wren');
  });

  it('lead nowhere while this one is under way, nor to one that is over', () => {
    expect(nextTurn(turns('under_way', 'waiting'), '0')).toBeUndefined();
    expect(nextTurn(turns('over', 'over', 'under_way'), '0')).toBeUndefined();
    expect(nextTurn(turns('over'), '0')).toBeUndefined();
    expect(nextTurn(turns('over', 'waiting'), '7')).toBeUndefined();
  });

  it('name the child that comes just before and is not over', () => {
    expect(turnBefore(turns('waiting', 'waiting', 'waiting'), '2')?.nickname).toBe('Robin');
    expect(turnBefore(turns('under_way', 'over', 'waiting'), '2')?.nickname).toBe('Wren');
    expect(turnBefore(turns('waiting', 'waiting'), '0')).toBeUndefined();
    expect(turnBefore(turns('over', 'waiting'), '1')).toBeUndefined();
  });

  it('know whether a brother or sister is being practised with just now', () => {
    expect(isAnotherBusy(turns('under_way', 'waiting'), '1')).toBe(true);
    expect(isAnotherBusy(turns('under_way', 'waiting'), '0')).toBe(false);
    expect(isAnotherBusy(turns('over', 'waiting', 'waiting'), '1')).toBe(false);
  });

  const next = { evening: '019a0000-0000-7000-8000-000000000009', nickname: 'Robin' };

  it('stand as a button under an evening that is over: done, put off or stopped', () => {
    for (const each of [finished(), view({ declined: true }), stopped]) {
      const buttons = screenOf(each, { next }).buttons.flat();
      const leading = buttons.find(({ label }) => label === 'Next: Robin');
      expect(unpack(leading?.data ?? '')).toMatchObject({ kind: 'nextChild', next: next.evening });
    }
  });

  it('are said when a message arrives, by name', () => {
    const before = { evening: next.evening, nickname: 'Robin' };
    const offer = eveningScreen(view(), TUESDAY, { painter, before }, 'evening');
    expect(offer.text.text).toContain('Wren’s turn is after Robin’s.');
  });
});
