import { describe, expect, it } from 'vitest';
import { mapCell, mapSwatch, type Standing } from '../../../bot/media/class-map-cell.ts';
import { type ClassMapInput, classMap, type MapCell } from '../../../bot/media/index.ts';
import { MAX_CHILDREN } from '../../../db/index.ts';
import { sampleMap } from './class-samples.ts';
import { textBoxes } from './text-boxes.ts';

const AREA = { x: 0, y: 0, width: 26, height: 26 };
const secure: MapCell = { right: 9, asked: 10, standing: 'secure' };
const map = (rows: ClassMapInput['rows'], strandLabels: readonly string[] = ['halves']) =>
  classMap({ title: 'Kingfisher', strandLabels, rows, footer: '' });
const contents = (...input: Parameters<typeof map>) =>
  textBoxes(map(...input)).map(({ content }) => content);

describe('classMap', () => {
  it('is as wide as a phone for thirty-six children and eight strands, in type of 12 px or more', () => {
    const drawing = sampleMap(36, 8);
    expect(map([{ number: 1, name: 'Wren', cells: [secure] }]).width).toBe(360);
    expect(drawing.width).toBe(360);
    expect(Math.min(...textBoxes(drawing).map(({ size }) => size))).toBeGreaterThanOrEqual(12);
  });

  it('writes number, name and figure of each child, and explains every look', () => {
    expect(contents([{ number: 7, name: 'Wren', cells: [secure] }])).toEqual([
      'Kingfisher',
      'halves',
      '7',
      'Wren',
      '90',
      'secure',
      'growing',
      'not yet',
      '3/4',
      'too few to tell',
      'not asked yet',
    ]);
  });

  it('leaves the roster number to stand for a name the font cannot draw', () => {
    expect(contents([{ number: 7, name: 'שרה-לאה', cells: [null] }]).slice(2, 4)).toEqual([
      '7',
      'secure',
    ]);
  });

  it('holds the largest class there is', () => {
    expect(sampleMap(MAX_CHILDREN, 8).height).toBeGreaterThan(sampleMap(59, 8).height);
  });

  it('is refused with too few or too many rows or strands, or a cell missing', () => {
    const row = { number: 1, name: 'Wren', cells: [secure] };
    expect(() => map([])).toThrow(RangeError);
    expect(() => sampleMap(61, 1)).toThrow(RangeError);
    expect(() => map([row], [])).toThrow(RangeError);
    expect(() => map([row], ['halves', 'doubles'])).toThrow(RangeError);
    expect(() => map([{ ...row, cells: run9() }], Array(9).fill('halves'))).toThrow(RangeError);
  });
});

const run9 = () => Array.from({ length: 9 }, () => secure);

describe('mapCell', () => {
  it('writes the share right in hundredths', () => {
    expect(mapCell({ right: 9, asked: 10, standing: 'growing' }, AREA)).toContain('>90<');
    expect(mapCell({ right: 2, asked: 3, standing: 'growing' }, AREA)).toContain('>67<');
  });

  it('writes right of asked where there are too few to speak of a share', () => {
    expect(mapCell({ right: 3, asked: 4, standing: 'few' }, AREA)).toContain('>3/4<');
  });

  it('writes nought of many as nought, and nothing for a strand not asked', () => {
    expect(mapCell({ right: 0, asked: 20, standing: 'not_yet' }, AREA)).toContain('>0<');
    expect(mapCell(null, AREA)).not.toContain('<text');
    expect(mapCell({ right: 0, asked: 0, standing: 'few' }, AREA)).toBe(mapCell(null, AREA));
  });

  it('is refused for more right than asked', () => {
    expect(() => mapCell({ right: 5, asked: 4, standing: 'few' }, AREA)).toThrow(RangeError);
  });
});

describe('the looks of a cell', () => {
  it('stay apart in greyscale by a fifth of the way from black to white, or by a frame', () => {
    const standings: readonly Standing[] = ['secure', 'growing', 'not_yet', 'few'];
    const looks = standings.map((standing) => {
      const swatch = mapSwatch(standing, AREA);
      const [, fill = '#000000'] = /fill="(#[0-9a-f]{6})"/.exec(swatch) ?? [];
      const channel = (at: number) => Number.parseInt(fill.slice(at, at + 2), 16) / 255;
      const grey = 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
      return { standing, grey, framed: swatch.includes('stroke=') };
    });
    const alike = looks.flatMap((a, i) =>
      looks
        .slice(i + 1)
        .filter((b) => a.framed === b.framed && Math.abs(a.grey - b.grey) < 0.2)
        .map((b) => `${a.standing} and ${b.standing}`),
    );
    // A cell with too few answers has a figure of another form: right of asked.
    expect(alike).toEqual(['growing and few']);
  });
});
