import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import writeXlsx from 'write-excel-file/node';
import { decodeText } from '../../../../bot/input/class-list/decode-text.ts';
import { readCsv } from '../../../../bot/input/class-list/read-csv.ts';
import { readTable } from '../../../../bot/input/class-list/read-table.ts';
import { TABLE_LIMITS } from '../../../../bot/input/class-list/table.ts';
import { unzip, zipOf } from '../../../../bot/input/class-list/zip.ts';

const bytesOf = (text: string, encoding: BufferEncoding = 'utf8') =>
  new Uint8Array(Buffer.from(text, encoding));
const all = () => true;

async function workbook(rows: readonly (readonly (string | number)[])[]): Promise<Uint8Array> {
  const cells = rows.map((row) => row.map((value) => ({ value })));
  return new Uint8Array(await writeXlsx(cells).toBuffer());
}

describe('the text in a file', () => {
  it('reads as its docstring says', () => {
    expect(decodeText(new Uint8Array([0x5a, 0x6f, 0xeb]))).toBe('Zoë');
  });

  it.each([
    ['UTF-8 without a mark', [0xc3, 0xab]],
    ['UTF-8 with a mark', [0xef, 0xbb, 0xbf, 0xc3, 0xab]],
    ['UTF-16, the small end first', [0xff, 0xfe, 0xeb, 0x00]],
    ['UTF-16, the large end first', [0xfe, 0xff, 0x00, 0xeb]],
    ['Windows-1252', [0xeb]],
  ])('is read from %s, without the mark', (_name, bytes) => {
    expect(decodeText(new Uint8Array(bytes))).toBe('ë');
  });

  it('is none in a file with a NUL or with broken UTF-16', () => {
    expect(decodeText(new Uint8Array([0x25, 0x00, 0x25]))).toBeNull();
    expect(decodeText(new Uint8Array([0xff, 0xfe, 0x41]))).toBeNull();
  });
});

describe('rows of text', () => {
  it('read as the docstring says', () => {
    expect(readCsv('Nickname;Group\r\nWren;"red; first"')).toEqual({
      table: [
        ['Nickname', 'Group'],
        ['Wren', 'red; first'],
      ],
    });
  });

  it.each([',', ';', '\t'])('are parted by %j where that makes rows of one width', (separator) => {
    const text = ['No', 'First name', 'Note'].join(separator);
    const row = ['1', 'Wren', separator === ',' ? 'a;b' : 'a,b'].join(separator);
    expect(readCsv(`${text}\n${row}\n`)).toMatchObject({ table: [{ length: 3 }, { length: 3 }] });
  });

  it('may name their separator first, in a line that is no row', () => {
    const read = readCsv('sep=;\r\nWren, the small;red\r\n');
    expect(read).toEqual({ table: [['Wren, the small', 'red']] });
  });

  it('may be one nickname each, and a comma inside a few parts none of the others', () => {
    expect(readCsv('Wren\nOtter\nRobin')).toEqual({ table: [['Wren'], ['Otter'], ['Robin']] });
  });

  it('keep blank rows, so that a row has the number a spreadsheet gives it', () => {
    expect(readCsv('Wren,1\n\n\nOtter,2')).toMatchObject({ table: { length: 4 } });
  });

  it('with a quotation mark out of place are refused with the row', () => {
    const read = readCsv('Wren,1\nOtter"s,2\n');
    expect(read).toEqual({ problem: { kind: 'quote', row: 2 } });
  });

  it('with a quotation mark that is never closed are refused with the row it was opened in', () => {
    const read = readCsv('Wren,1\n"Otter,2\nRobin,3\nFinch,4\n');
    expect(read).toEqual({ problem: { kind: 'quote', row: 2 } });
  });

  it('come back as they were written, whatever is in the cells', () => {
    const cell = fc.string({ maxLength: 12 });
    const rows = fc.array(fc.tuple(cell, cell, cell), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(rows, (table) => {
        fc.pre(table.flat().some((text) => text.trim() !== ''));
        const quoted = table.map((row) => row.map((text) => `"${text.replaceAll('"', '""')}"`));
        const read = readCsv(quoted.map((row) => row.join(',')).join('\r\n'));
        expect(read).toEqual({ table });
      }),
    );
  });
});

describe('a workbook', () => {
  it('is read off its first sheet, numbers and dates as texts', async () => {
    const read = await readTable(await workbook([['No', 'Nickname'], [], [1, 'Zoë']]));
    expect(read).toEqual({
      table: [
        ['No', 'Nickname'],
        ['', ''],
        ['1', 'Zoë'],
      ],
    });
  });

  it('that unpacks to more than is allowed is refused before it is read', async () => {
    const huge = deflateRawSync(Buffer.alloc(50_000_000, 0x20));
    const file = packed('xl/worksheets/sheet1.xml', huge, 10);
    expect(file.length).toBeLessThan(100_000);
    expect(await readTable(file)).toEqual({ problem: { kind: 'big' } });
  });

  it('may hold large pictures, which are not unpacked', () => {
    const file = packed('xl/media/image1.png', deflateRawSync(Buffer.alloc(50_000_000)), 10);
    expect(unzip(file, 1_000, (name) => name.endsWith('.xml'))).toEqual([]);
  });

  it('cut off anywhere is refused and never throws', async () => {
    const whole = await workbook([['Nickname'], ['Wren']]);
    for (let length = 4; length < whole.length; length += 97) {
      const read = await readTable(whole.subarray(0, length));
      expect(read).toEqual({ problem: { kind: 'unknown' } });
    }
  });
});

describe('an archive', () => {
  const files = [
    { name: 'a.xml', bytes: bytesOf('one') },
    { name: 'b/ä.xml', bytes: bytesOf('') },
  ];

  it('made of files has these files', () => {
    const read = unzip(zipOf(files), 3, all);
    expect(read?.map(({ name, bytes }) => [name, Buffer.from(bytes).toString()])).toEqual([
      ['a.xml', 'one'],
      ['b/ä.xml', ''],
    ]);
  });

  it('is unpacked up to the very limit and no further', () => {
    expect(unzip(zipOf(files), 2, all)).toBeNull();
    const deflated = packed('a.xml', deflateRawSync(Buffer.from('one')), 3);
    expect(unzip(deflated, 3, all)).toHaveLength(1);
    expect(unzip(deflated, 2, all)).toBeNull();
  });
});

describe('a file', () => {
  it('over the limit is not looked at', async () => {
    const bytes = new Uint8Array(TABLE_LIMITS.bytes + 1).fill(0x41);
    expect(await readTable(bytes)).toEqual({ problem: { kind: 'big' } });
  });

  it.each([
    ['an old or locked spreadsheet', [0xd0, 0xcf, 0x11, 0xe0, 0xa1], 'old'],
    ['neither text nor spreadsheet', [0x25, 0x50, 0x00, 0x01], 'unknown'],
    ['of blanks', [0x20, 0x0a, 0x2c], 'empty'],
    ['of nothing', [], 'empty'],
  ])('that is %s is refused by its kind', async (_name, bytes, kind) => {
    expect(await readTable(new Uint8Array(bytes))).toEqual({ problem: { kind } });
  });

  it('may have as many rows and columns as are allowed, and not one more', () => {
    const { rows, columns } = TABLE_LIMITS;
    const tall = (count: number) => readCsv('Wren\n'.repeat(count));
    const wide = (count: number) => readCsv(Array(count).fill('Wren').join(','));
    expect(tall(rows)).toHaveProperty('table');
    expect(tall(rows + 1)).toEqual({ problem: { kind: 'rows' } });
    expect(wide(columns)).toHaveProperty('table');
    expect(wide(columns + 1)).toEqual({ problem: { kind: 'columns' } });
  });

  it('of any bytes is read or refused, and never throws', async () => {
    const start = fc.constantFrom<number[]>([], [0x50, 0x4b, 0x03, 0x04], [0xff, 0xfe]);
    const file = fc.tuple(start, fc.uint8Array({ maxLength: 200 }));
    await fc.assert(
      fc.asyncProperty(file, async ([first, rest]) => {
        const read = await readTable(new Uint8Array([...first, ...rest]));
        expect('table' in read || 'problem' in read).toBe(true);
      }),
    );
  });
});

/** An archive of one deflated file that states a size of its own. */
function packed(name: string, deflated: Buffer, stated: number): Uint8Array {
  const zip = zipOf([{ name, bytes: deflated }]);
  const directory = zip.indexOf(Buffer.from([0x50, 0x4b, 0x01, 0x02]));
  for (const at of [8, directory + 10]) zip.writeUInt16LE(8, at);
  for (const at of [22, directory + 24]) zip.writeUInt32LE(stated, at);
  return new Uint8Array(zip);
}
