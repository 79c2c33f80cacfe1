import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cleanNickname } from '../../../bot/input/nickname.ts';
import { oneLine } from '../../../bot/input/one-line.ts';

describe('typed text on one line', () => {
  it('is as its docstring says', () => {
    expect(oneLine('Half\n  term\u200b')).toBe('Half term');
  });

  it('keeps a number that is not a list mark', () => {
    expect(oneLine('5.')).toBe('5.');
  });

  it('never has half characters, breaks or spare spaces, and stays as it is when cleaned again', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        for (const line of [oneLine(text), cleanNickname(text)]) {
          expect(line).not.toMatch(/\p{Surrogate}|\p{Cc}|\s\s|^\s|\s$/u);
          expect(oneLine(line)).toBe(line);
        }
      }),
      { numRuns: 500 },
    );
  });
});
