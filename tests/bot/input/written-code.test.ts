import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCode, WRITTEN_LENGTH, writeCode } from '../../../bot/input/written-code.ts';

const anyCode = fc
  .uint8Array({ minLength: 16, maxLength: 16 })
  .map((bytes) => Buffer.from(bytes).toString('base64url'));

const read = (text: string) => {
  const typed = readCode(text);
  return typed?.kind === 'code' ? typed.code : null;
};

describe('a join code on paper', () => {
  it('is seven groups of four figures and capitals, without I, L, O and U', () => {
    fc.assert(
      fc.property(anyCode, (code) => {
        expect(writeCode(code)).toMatch(/^(?:[0-9A-HJKMNP-TV-Z]{4} ){6}[0-9A-HJKMNP-TV-Z]{4}$/);
      }),
    );
  });

  it('reads back as the code it was made from, however it is typed', () => {
    const ways = [
      (text: string) => text,
      (text: string) => text.toLowerCase(),
      (text: string) => text.replaceAll(' ', ''),
      (text: string) => text.replaceAll(' ', '-'),
      (text: string) => `  ${text.replaceAll('0', 'O').replaceAll('1', 'l')} `,
      (text: string) => text.replaceAll('0', 'o').replaceAll('1', 'I'),
    ];
    fc.assert(
      fc.property(anyCode, fc.constantFrom(...ways), (code, type) => {
        expect(read(type(writeCode(code)))).toBe(code);
      }),
    );
  });

  it('is written as its example says', () => {
    expect(writeCode('AAAAAAAAAAAAAAAAAAAAAQ')).toBe('0000 0000 0000 0000 0000 0000 0401');
    expect(read('oooo oooo oooo oooo oooo oooo o4ol')).toBe('AAAAAAAAAAAAAAAAAAAAAQ');
  });

  it.each(['', 'abc', 'A'.repeat(23), 'AAAAAAAAAAAAAAAAAAAAAB'])(
    '%j is no code to write',
    (code) => {
      expect(() => writeCode(code)).toThrow('a join code has 22');
    },
  );
});

describe('a slip of the finger', () => {
  const letter = fc.constantFrom(...'0123456789ABCDEFGHJKMNPQRSTVWXYZ');
  const place = fc.nat(WRITTEN_LENGTH - 1);

  it('in one letter is never taken for another code', () => {
    fc.assert(
      fc.property(anyCode, place, letter, (code, at, wrong) => {
        const right = writeCode(code).replaceAll(' ', '');
        fc.pre(right[at] !== wrong);
        expect(read(right.slice(0, at) + wrong + right.slice(at + 1))).toBeNull();
      }),
    );
  });

  it('that swaps two neighbours is never taken for another code', () => {
    fc.assert(
      fc.property(anyCode, fc.nat(WRITTEN_LENGTH - 2), (code, at) => {
        const right = writeCode(code).replaceAll(' ', '');
        const [a = '', b = ''] = right.slice(at, at + 2);
        fc.pre(a !== b);
        expect(read(right.slice(0, at) + b + a + right.slice(at + 2))).toBeNull();
      }),
    );
  });

  it('is known as a code that was mistyped, with the number of letters', () => {
    const right = writeCode('AAECAwQFBgcICQoLDA0ODw');
    expect(readCode(right.slice(0, -1))).toEqual({ kind: 'mistyped', letters: 27 });
    expect(readCode(`${right}7`)).toEqual({ kind: 'mistyped', letters: 29 });
  });
});

describe('a text that is no code', () => {
  it.each([
    'hello',
    'all done, see you tomorrow at six',
    'Kingfisher class at Harbour Lane',
    'I will look at it all again tonight',
    '2026-10-12 to 2026-10-16 Half term',
    'Pebble Path 1-48 2',
    'Wren\nOtter\nRobin\nFinch\nPip\nZiggy\nJuniper',
    'AAECAwQFBgcICQoLDA0ODw',
    '👩‍🚀 שרה',
  ])('%j is left alone', (text) => {
    expect(readCode(text)).toBeNull();
  });
});
