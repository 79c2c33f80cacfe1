import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { addedScreen } from '../../../bot/screens/added-screen.ts';
import { MAX_CHILDREN } from '../../../db/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const actId = '018f0000-0000-7000-8000-00000000000a';
const nicknames = Array.from({ length: MAX_CHILDREN }, (_, at) => `Wren Baker ${at + 1}`);
const kindsWith = (hasPlan: boolean) =>
  addedScreen({ classId: kingfisher.id, nicknames, actId, hasPlan })
    .buttons.flat()
    .map(({ data }) => unpack(data)?.kind);

describe('the screen after children were added', () => {
  it('offers slips and links by screens that ask first, and makes neither itself', () => {
    expect(kindsWith(true)).toEqual(['print', 'askLinks', 'undo', 'openClass']);
  });

  it('offers a first plan while there is none', () => {
    expect(kindsWith(false)).toEqual(['print', 'askLinks', 'firstPlan', 'undo', 'openClass']);
  });

  it('has less than ten lines for the largest class, a caution about surnames with it', () => {
    const { text } = addedScreen({ classId: kingfisher.id, nicknames, actId, hasPlan: false });
    expect(text.text).toContain(`${MAX_CHILDREN} children added.`);
    expect(text.text).toContain('no surnames');
    expect(text.text.split('\n').length).toBeLessThan(10);
  });
});
