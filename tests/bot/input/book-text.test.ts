import { describe, expect, it } from 'vitest';
import { parseBookText } from '../../../bot/input/book-text.ts';

const PEBBLE_PATH = { title: 'Pebble Path', firstPage: 1, lastPage: 48, pagesADay: 2 };

describe('a workbook as typed', () => {
  it.each([
    'Pebble Path, 1 to 48, 2 a day',
    'Pebble Path 1-48 2',
    'Pebble Path 1–48 2',
    'Pebble Path 1 - 48, 2 per day',
    '  Pebble   Path,1-48,2aday ',
    'Pebble Path 1 TO 48 2 A DAY',
    'Pebble Path: pages 1 to 48, 2 pages a day',
    'Pebble Path, bladsye 1 tot 48, 2 per dag',
    'Pebble Path: páginas 1 a 48, 2 al día',
    'Pebble Path, Seiten 1 bis 48, 2 Seiten am Tag',
    'Pebble Path : pages 1 à 48, 2 par jour',
  ])('is read: %j', (text) => {
    expect(parseBookText(text)).toEqual(PEBBLE_PATH);
  });

  it('may have numbers in its title', () => {
    expect(parseBookText('Pebble Path 2 10-20 1')).toEqual({
      title: 'Pebble Path 2',
      firstPage: 10,
      lastPage: 20,
      pagesADay: 1,
    });
  });

  it.each([
    '',
    'Pebble Path',
    'Pebble Path 1-48',
    'Pebble Path 48 2',
    '1-48 2',
    ', 1-48 2',
    '\u200b 1-48 2',
    'Pebble Path 1-48 two',
    'Pebble Path 1-48 2 a week',
    'Pebble Path 1-99999 2',
    'Pebble Path\n1-48 2\nand more',
  ])('is nothing in another shape: %j', (text) => {
    expect(parseBookText(text)).toBeNull();
  });

  it('keeps numbers that make no sense, which are refused where it is stored', () => {
    expect(parseBookText('Pebble Path 48-1 0')).toEqual({
      title: 'Pebble Path',
      firstPage: 48,
      lastPage: 1,
      pagesADay: 0,
    });
  });
});
