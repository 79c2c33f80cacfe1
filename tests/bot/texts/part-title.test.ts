import { expect, it } from 'vitest';
import { readIn } from '../../../bot/language/index.ts';
import { packPreview } from '../../../bot/screens/preview-state.ts';
import {
  partInList,
  partTitle,
  rungTitle,
  shortPartTitle,
  strandColumn,
  strandName,
} from '../../../bot/texts/part-title.ts';

const mixed = { rung: 'doubles.to5', also: ['bonds.make10'] } as const;

it('a mixed part is named by its steps, and in a sentence without a second colon', () => {
  expect(partTitle(mixed)).toBe('mixed: doubles to 5 + 5 and what makes 10');
  expect(partInList(mixed)).toBe('doubles to 5 + 5 mixed with what makes 10');
});

it('a mixed part is named by its strands where there is little room', () => {
  const halves = { rung: 'doubles.to5', also: ['halves.to10'] } as const;
  expect(shortPartTitle(halves)).toBe('mixed: doubles and halves');
  const clocks = { rung: 'clock.half', also: ['clock.quarterto'] } as const;
  expect(shortPartTitle(clocks)).toBe('mixed: clock, 2 steps');
});

it('a part of one step has the same name everywhere', () => {
  const part = { rung: 'doubles.to5' } as const;
  expect([partTitle(part), partInList(part), shortPartTitle(part)]).toEqual([
    'doubles to 5 + 5',
    'doubles to 5 + 5',
    'doubles to 5 + 5',
  ]);
});

it('a step and a strand are named in the language of whoever reads', () => {
  expect(rungTitle('bonds.to10')).toBe('adding within 10');
  expect(strandName('bonds')).toBe('number bonds');
  expect(strandColumn('times')).toBe('times tables');
  readIn('de', () => {
    expect(rungTitle('bonds.to10')).toBe('Plusaufgaben bis 10');
    expect(shortPartTitle({ rung: 'doubles.to5', also: ['halves.to10'] })).toBe(
      'gemischt: Verdoppeln und Halbieren',
    );
  });
});

it('a step that this release does not know is shown by its id, not refused', () => {
  expect(rungTitle('bonds.to30')).toBe('bonds.to30');
});

it('a preview’s state reads as its docstring says', () => {
  const state = { at: 'started', done: [0, 5], marking: 2, pages: null } as const;
  expect(packPreview(state)).toBe('s0.5-2');
});
