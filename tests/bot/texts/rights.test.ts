import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { heldTable } from '../../../bot/features/held-table.ts';
import { readIn } from '../../../bot/language/index.ts';
import { CODES_DAYS, type HeldData, LEFT_DAYS, MARKS_DAYS, NOTES_DAYS } from '../../../db/index.ts';
import { TABLES } from '../../support/raw-rows.ts';

const read = (file: string) => readFileSync(`bot/texts/${file}`, 'utf8');

const DATA: HeldData = {
  format: 'suppersums-child',
  version: 1,
  madeAt: '2026-09-18T17:00:00.000Z',
  child: {
    nickname: '=Wren, "W"',
    number: 1,
    classTitle: 'Kingfisher class',
    zone: 'Europe/London',
    eveningTime: '17:30',
    addedAt: '2026-09-14T08:00:00.000Z',
    archivedAt: null,
    erasingSince: null,
    adjustment: null,
    pace: [],
  },
  you: {
    chatId: 2003,
    language: 'es',
    way: 'clip',
    display: { bigger: false, noTiming: false, quiet: true, clockAid: false, monthly: true },
    relation: 'parent',
    pictureMonth: null,
    dataUsed: [{ month: '2026-09', bytes: 240_000 }],
    joinedAt: '2026-09-14T08:00:00.000Z',
    agreements: [],
    messages: [],
  },
  slips: [],
  books: [],
  places: [],
  evenings: [],
  memory: [],
};

it('a nickname that looks like a formula is kept from running, and quoted as RFC 4180 asks', () => {
  expect(heldTable(DATA)).toContain(`nickname,"'=Wren, ""W""",\r\n`);
  expect(
    heldTable(DATA)
      .split('\r\n')
      .slice(1, -1)
      .every((row) => row.length > 0),
  ).toBe(true);
});

it('the table has its headings and words in the reader’s language', () => {
  const rows = readIn('de', () => heldTable(DATA)).split('\r\n');
  expect(rows[0]).toBe('\ufeffwas,wann,Name,Wert,mehr');
  expect(rows[3]).toContain(',Klasse,Kingfisher class,');
  expect(rows.some((row) => row.endsWith(',Sprache,Español,'))).toBe(true);
});

it('the notice and the record say the times that are kept, and that the school decides', () => {
  expect([MARKS_DAYS, LEFT_DAYS, CODES_DAYS, NOTES_DAYS]).toEqual([396, 30, 30, 2]);
  for (const text of [read('privacy-notice.md'), read('processing-record.md')]) {
    expect(text).toContain('13 months');
    expect(text).toMatch(/30 days\s+after/);
    expect(text).toMatch(/school\s+decides[\s\S]*[Ll]ocal law[\s\S]*not legal advice/);
  }
});

it('the record has a row for every table there is', () => {
  const record = read('processing-record.md');
  expect(TABLES.filter((table) => !record.includes(`\`${table}\``))).toEqual([]);
});
