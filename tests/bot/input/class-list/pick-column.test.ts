import { describe, expect, it } from 'vitest';
import { firstRow, pickColumn, widthOf } from '../../../../bot/input/class-list/pick-column.ts';

describe('the column of nicknames', () => {
  it('is found as the docstring says', () => {
    expect(
      pickColumn([
        ['No', 'First name'],
        ['1', 'Wren'],
      ]),
    ).toEqual({ column: 1, heading: 0 });
  });

  it.each([
    [['Surname', 'Forename', 'Nickname'], 2],
    [['Surname', 'Forename', 'Class'], 1],
    [['Full name', 'Known as'], 1],
    [['PUPIL', 'Date of birth'], 0],
    [['ID', ' first_name '], 1],
    [['Child’s name', 'Parent'], 0],
  ])('is told by the headings %j', (headings, column) => {
    expect(pickColumn([headings, ['1', 'Wren']])).toEqual({ column, heading: 0 });
  });

  it('is told by headings under a title and a blank line', () => {
    const table = [['Kingfisher class'], [], ['No', 'Nickname'], ['1', 'Wren']];
    expect(pickColumn(table)).toEqual({ column: 1, heading: 2 });
  });

  it('is told by the cells where the headings name everything else', () => {
    const table = [
      ['No', 'Merknamn', 'Surname'],
      ['1', 'Wren', 'Baker'],
      ['2', 'Otter', 'Cook'],
    ];
    expect(pickColumn(table)).toEqual({ column: 1, heading: 0 });
  });

  it('is told by the cells of a list without headings, of which no row is lost', () => {
    const table = [
      ['1', 'Wren', 'wren@example.org'],
      ['2', 'Otter', 'otter@example.org'],
    ];
    expect(pickColumn(table)).toEqual({ column: 1, heading: null });
    expect(pickColumn([['Wren'], ['Otter']])).toEqual({ column: 0, heading: null });
  });

  it('is the first one where there is nothing to tell it by', () => {
    expect(pickColumn([['17', '2018-01-02']])).toEqual({ column: 0, heading: null });
    expect(pickColumn([[], ['']])).toEqual({ column: 0, heading: null });
  });
});

it('a table is as wide as its widest row, and its first row is the first that is not blank', () => {
  expect(widthOf([['a'], ['a', 'b'], []])).toBe(2);
  expect(widthOf([])).toBe(0);
  expect(firstRow([[''], ['Wren']])).toBe(1);
  expect(firstRow([])).toBe(0);
});
