import fc from 'fast-check';
import { expect, it } from 'vitest';
import { oggLength } from '../../rehearsal/ogg-length.ts';
import { ogg } from './support/ogg.ts';

it('the length is that of the last page without the samples to skip, in whole seconds', () => {
  expect(oggLength(ogg({ seconds: 7 }))).toBe(7);
  expect(oggLength(ogg({ seconds: 7.4, skipped: 48_000 }))).toBe(7);
  expect(oggLength(ogg({ seconds: 7.6, skipped: 0 }))).toBe(8);
});

it('is not known for other files and for one cut short, and never throws', () => {
  expect(oggLength(Buffer.from('words'))).toBeUndefined();
  expect(oggLength(Buffer.from('OggS'))).toBeUndefined();
  const whole = ogg();
  fc.assert(
    fc.property(fc.nat(whole.length), (length) => {
      expect([7, 0, undefined]).toContain(oggLength(whole.subarray(0, length)));
    }),
  );
});
