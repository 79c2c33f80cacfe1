import { describe, expect, it } from 'vitest';
import { bitReader, bitWriter } from '../../bot/clip/h264/bits.ts';

/** Source: ITU-T H.264, 9.1, table 9-2 (bit strings and code numbers) and table 9-3 (signed values), from memory. */
const UNSIGNED = [
  ['1', 0],
  ['010', 1],
  ['011', 2],
  ['00100', 3],
  ['00101', 4],
  ['00110', 5],
  ['00111', 6],
  ['0001000', 7],
  ['0001001', 8],
  ['0001010', 9],
] as const;
const SIGNED = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5] as const;

/** Bits as bytes, with zeros behind them. */
const bytesOf = (bits: string) => Uint8Array.of(Number.parseInt(bits.padEnd(8, '0'), 2), 0);

describe('the codes of H.264 headers', () => {
  it.each(UNSIGNED)('%s is number %i', (bits, code) => {
    expect(bitReader(bytesOf(bits)).unsigned()).toBe(code);
    const writer = bitWriter();
    writer.unsigned(code);
    expect(writer.close()[0]).toBe(bytesOf(`${bits}1`)[0]);
  });

  it.each(SIGNED.map((value, code) => [code, value] as const))(
    'number %i is %i when signed',
    (code, value) => {
      expect(bitReader(bytesOf(UNSIGNED[code]?.[0] ?? '')).signed()).toBe(value);
    },
  );
});
