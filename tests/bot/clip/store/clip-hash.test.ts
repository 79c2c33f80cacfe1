import { describe, expect, it } from 'vitest';
import { type ClipInput, clipHash } from '../../../../bot/clip/index.ts';
import { flat, partClip } from '../support/frames.ts';

const input = partClip('doubles', 3);
const [first, ...rest] = input.frames;
const changed = (change: Partial<ClipInput>) => clipHash({ ...input, ...change });

describe('the name of a clip', () => {
  it('is 64 digits and the same for equal clips', () => {
    expect(clipHash(input)).toMatch(/^[0-9a-f]{64}$/);
    expect(clipHash(structuredClone(input))).toBe(clipHash(input));
  });

  it('is the same whether the usual limit is named or not', () => {
    expect(changed({ maxBytes: 40_000 })).toBe(clipHash(input));
  });

  it('changes with every part of the clip', () => {
    if (!first) throw new Error('the part has no frames');
    const names = [
      clipHash(input),
      changed({ sound: 'none-but-silent' }),
      changed({ maxBytes: 50_000 }),
      changed({ frames: rest }),
      changed({ frames: [...rest, first] }),
      changed({ frames: [{ ...first, seconds: 4 }, ...rest] }),
      clipHash(partClip('sums', 3)),
      clipHash({ frames: [{ picture: flat(0), seconds: 2 }], sound: 'tick' }),
      clipHash({ frames: [{ picture: flat(1), seconds: 2 }], sound: 'tick' }),
    ];
    expect(new Set(names).size).toBe(names.length);
  });
});
