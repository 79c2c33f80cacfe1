import { describe, expect, test } from 'vitest';
import { parseBreak } from '../../../drills/index.ts';

const halfTerm = { first: '2026-10-12', last: '2026-10-16' };
const oneDay = { first: '2026-12-16', last: '2026-12-16' };

describe('parseBreak', () => {
  test.each([
    ['2026-10-12 to 2026-10-16 Half term', halfTerm, 'Half term'],
    ['2026-10-12 TO 2026-10-16', halfTerm, 'Break'],
    ['2026-10-12 - 2026-10-16 Half term', halfTerm, 'Half term'],
    ['2026-10-12–2026-10-16: Half  term', halfTerm, 'Half term'],
    ['2026-10-12-2026-10-16 – Half term', halfTerm, 'Half term'],
    ['  2026-12-16 ', oneDay, 'Break'],
    ['2026-12-16 Founders’ day', oneDay, 'Founders’ day'],
    ['2026-12-16 - Harbour fair', oneDay, 'Harbour fair'],
    ['2026-12-16 Tomorrow is free', oneDay, 'Tomorrow is free'],
  ])('%j reads as a break', (text, span, title) => {
    expect(parseBreak(text)).toEqual({ break: span, title });
  });

  test.each([[''], ['Half term'], ['Half term 2026-10-12'], ['12/10/2026'], ['2026-10-12x']])(
    '%j has not the shape of a break',
    (text) => {
      expect(parseBreak(text)).toEqual({ problem: 'shape', value: text });
    },
  );

  test.each([['2026-10-12 to Friday'], ['2026-10-12 - 16 October'], ['2026-10-12 to']])(
    '%j never passes for a single day',
    (text) => {
      expect(parseBreak(text)).toEqual({ problem: 'shape', value: text });
    },
  );

  test('the date that does not exist is named, whichever it is', () => {
    expect(parseBreak('2026-02-30 to 2026-03-02')).toEqual({
      problem: 'date',
      value: '2026-02-30',
    });
    expect(parseBreak('2026-10-12 to 2026-10-32')).toEqual({
      problem: 'date',
      value: '2026-10-32',
    });
    expect(parseBreak('2026-1-5')).toEqual({ problem: 'date', value: '2026-1-5' });
  });

  test('a break never ends before it begins', () => {
    expect(parseBreak('2026-10-16 to 2026-10-12 Half term')).toEqual({
      problem: 'order',
      value: '2026-10-12',
    });
  });

  test('120 days are a break and 121 are too long', () => {
    expect(parseBreak('2026-01-01 to 2026-04-30')).toMatchObject({ title: 'Break' });
    expect(parseBreak('2026-01-01 to 2026-05-01')).toEqual({ problem: 'long', value: '121' });
  });
});
