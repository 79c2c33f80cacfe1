import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placeOf, rowsOf, squareWindow } from '../../../bot/media/square-window.ts';
import { run } from './faces.ts';

describe('squareWindow', () => {
  it('is the hundred a run stays in', () => {
    expect(squareWindow([340, 350, 360], 1000)).toEqual({
      unit: 1,
      first: 301,
      last: 400,
      nought: false,
    });
    expect(squareWindow([100, 99], 200)).toMatchObject({ first: 1, last: 100 });
    expect(squareWindow([101, 100], 200)).toMatchObject({ first: 1, last: 200 });
  });

  it('holds nought when the run does', () => {
    expect(squareWindow([0], 100)).toMatchObject({ first: 1, last: 100, nought: true });
    expect(squareWindow([1], 100).nought).toBe(false);
  });

  it('is a square of tens for long runs in fifties and hundreds', () => {
    expect(squareWindow(run(100, 100, 10), 1000)).toMatchObject({
      unit: 10,
      first: 10,
      last: 1000,
    });
    expect(squareWindow(run(50, 50, 20), 1000)).toMatchObject({ unit: 10, first: 10, last: 1000 });
  });

  it('is a square of fives for long runs in twenty-fives', () => {
    expect(squareWindow(run(25, 25, 20), 1000)).toMatchObject({ unit: 5, first: 5, last: 1000 });
  });

  it('never takes the step itself as its unit, which would list the answers', () => {
    expect(squareWindow(run(10, 10, 60), 1000).unit).toBeLessThan(10);
    expect(squareWindow(run(5, 5, 100), 1000).unit).toBe(1);
  });

  it('holds every number of a run, each in a place of its own', () => {
    const runs = fc
      .record({
        first: fc.nat(1000),
        step: fc.constantFrom(1, 2, 3, 5, 7, 10, 20, 25, 50, 100),
        back: fc.boolean(),
      })
      .map(({ first, step, back }) =>
        run(first, back ? -step : step, 20).filter((each) => each >= 0 && each <= 1000),
      );
    fc.assert(
      fc.property(runs, (numbers) => {
        const window = squareWindow(numbers, 1000);
        const places = numbers.map((number) => placeOf(number, window));
        for (const { column, row } of places) {
          expect(Number.isInteger(column) && column >= 0 && column <= 9).toBe(true);
          expect(row).toBeGreaterThanOrEqual(window.nought ? -1 : 0);
          expect(row).toBeLessThan(rowsOf(window));
        }
        expect(new Set(places.map(({ column, row }) => `${column} ${row}`)).size).toBe(
          numbers.length,
        );
      }),
    );
  });
});
