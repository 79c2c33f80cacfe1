import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  escapeUnit,
  NAL,
  nalType,
  splitByLength,
  splitByStartCode,
  unescapeUnit,
} from '../../../../bot/clip/h264/nal.ts';

const lists = (units: Uint8Array[]) => units.map((unit) => [...unit]);
/** Bytes that are mostly 0 to 3, where start codes and escapes happen. */
const bytes = fc.uint8Array({ maxLength: 40, max: 4 });

describe('a unit', () => {
  it('tells its type whatever its other bits say', () => {
    expect(nalType(Uint8Array.of(0x65))).toBe(NAL.idr);
    expect(nalType(Uint8Array.of(0x61))).toBe(NAL.slice);
    expect(nalType(Uint8Array.of(0x67))).toBe(NAL.sps);
  });

  it('is the same after it was escaped and unescaped', () => {
    fc.assert(
      fc.property(bytes, (unit) => {
        expect([...unescapeUnit(escapeUnit(unit))]).toEqual([...unit]);
      }),
    );
  });

  it('holds no start code once it is escaped', () => {
    fc.assert(
      fc.property(bytes, (unit) => {
        expect(Buffer.from(escapeUnit(unit)).toString('hex')).not.toMatch(/^(..)*00000[012]/);
      }),
    );
  });

  it('gets a 3 after two zeros when a byte of 0 to 3 follows', () => {
    expect([...escapeUnit(Uint8Array.of(7, 0, 0, 1, 0, 0, 4))]).toEqual([7, 0, 0, 3, 1, 0, 0, 4]);
    expect([...escapeUnit(Uint8Array.of(0, 0, 0, 0, 0, 1))]).toEqual([0, 0, 3, 0, 0, 3, 0, 1]);
  });
});

describe('a byte stream', () => {
  it('is split at long and short start codes', () => {
    const stream = Uint8Array.of(0, 0, 0, 1, 9, 0, 0, 1, 7, 7, 0, 0, 0, 1, 8);
    expect(lists(splitByStartCode(stream))).toEqual([[9], [7, 7], [8]]);
  });

  it('without a start code holds no unit', () => {
    expect(splitByStartCode(Uint8Array.of(1, 2, 3))).toEqual([]);
  });

  it('gives back the escaped units it was made of', () => {
    const units = fc.array(bytes.map((unit) => Uint8Array.of(0x65, ...escapeUnit(unit), 0x80)));
    fc.assert(
      fc.property(units, (all) => {
        const stream = Buffer.concat(all.flatMap((unit) => [Buffer.of(0, 0, 0, 1), unit]));
        expect(lists(splitByStartCode(stream))).toEqual(lists(all));
      }),
    );
  });
});

describe('units led by their length', () => {
  it('are split', () => {
    expect(lists(splitByLength(Uint8Array.of(0, 0, 0, 1, 9, 0, 0, 0, 2, 7, 8)))).toEqual([
      [9],
      [7, 8],
    ]);
  });

  it.each([
    ['runs past the end', [0, 0, 0, 3, 9]],
    ['is nought', [0, 0, 0, 0]],
    ['is cut short', [0, 0, 0]],
  ])('are refused when a length %s', (_, file) => {
    expect(() => splitByLength(Uint8Array.from(file))).toThrow(RangeError);
  });
});
