import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bitReader, bitWriter } from '../../../../bot/clip/h264/bits.ts';

const written = fc.oneof(
  fc.record({ kind: fc.constant('unsigned' as const), value: fc.nat(2 ** 20) }),
  fc.integer({ min: 1, max: 32 }).chain((count) =>
    fc.record({
      kind: fc.constant('bits' as const),
      count: fc.constant(count),
      value: fc.nat(2 ** count - 1),
    }),
  ),
);

it('what is written is read again', () => {
  fc.assert(
    fc.property(fc.array(written), (all) => {
      const writer = bitWriter();
      for (const each of all) {
        if (each.kind === 'unsigned') writer.unsigned(each.value);
        else writer.bits(each.value, each.count);
      }
      const reader = bitReader(writer.close());
      const read = all.map((each) =>
        each.kind === 'unsigned' ? reader.unsigned() : reader.bits(each.count),
      );
      expect(read).toEqual(all.map(({ value }) => value));
      expect(reader.bits(1)).toBe(1);
    }),
  );
});

it('four is 00101, closed by a one and zeros', () => {
  const writer = bitWriter();
  writer.unsigned(4);
  expect([...writer.close()]).toEqual([0b00101_100]);
  expect(bitReader(Uint8Array.of(0b00101_000)).unsigned()).toBe(4);
});

it('nothing written is one bit and zeros', () => {
  expect([...bitWriter().close()]).toEqual([0x80]);
});

it('reading past the end is refused', () => {
  const reader = bitReader(Uint8Array.of(0));
  expect(() => reader.unsigned()).toThrow('Read past the end: 1 bytes.');
});
