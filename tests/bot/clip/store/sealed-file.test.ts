import fc from 'fast-check';
import { expect, it } from 'vitest';
import { seal, unseal } from '../../../../bot/clip/store/sealed-file.ts';

const content = fc.uint8Array({ maxLength: 60 });

it('what is sealed comes out again', () => {
  fc.assert(
    fc.property(content, (bytes) => {
      expect([...(unseal(seal(bytes)) ?? [])]).toEqual([...bytes]);
    }),
  );
  expect(unseal(seal(new Uint8Array()))?.length).toBe(0);
});

it('a file cut short anywhere is told apart', () => {
  fc.assert(
    fc.property(content, fc.nat(), (bytes, at) => {
      const file = seal(bytes);
      expect(unseal(file.subarray(0, at % file.length))).toBeNull();
    }),
  );
});

it('a file with any one bit turned is told apart', () => {
  fc.assert(
    fc.property(content, fc.nat(), (bytes, at) => {
      const file = seal(bytes);
      const bit = at % (file.length * 8);
      file[bit >> 3] = (file[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      expect(unseal(file)).toBeNull();
    }),
  );
});

it('a file with more behind it is told apart', () => {
  expect(unseal(Buffer.concat([seal(Uint8Array.of(1, 2)), Buffer.of(0)]))).toBeNull();
});
