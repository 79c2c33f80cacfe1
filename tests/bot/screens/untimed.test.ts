import { describe, expect, it } from 'vitest';
import type { Clips } from '../../../bot/clip/index.ts';
import { createPainter } from '../../../bot/media/index.ts';
import { eveningScreen } from '../../../bot/screens/evening-screen.ts';
import { type EveningView, WAYS } from '../../../db/index.ts';
import { UNADJUSTED } from '../../../drills/index.ts';
import { bonds, clocks, TUESDAY, view } from '../support/evening.ts';

/** A screen only names its clip: nothing asks these for one. */
const clips: Clips = {
  soon: async () => null,
  ahead: async () => false,
  close: async () => {},
};
const painter = createPainter();

function untimed(evening: EveningView): EveningView {
  const adjusted = { ...UNADJUSTED, untimed: true };
  return { ...evening, drill: { ...evening.drill, adjusted } };
}

describe('a part without timing', () => {
  const timed = view({ drill: { version: 1, parts: [bonds] }, started: true });

  it('has no clip, whatever the helper chose, and the picture in its place', () => {
    expect(eveningScreen(timed, TUESDAY, { painter, clips }).clip).toBeDefined();
    for (const way of [undefined, ...WAYS]) {
      const screen = eveningScreen(untimed(timed), TUESDAY, { painter, clips, way });
      expect(screen.clip).toBeUndefined();
      expect(screen.picture !== undefined).toBe(way !== 'words' && way !== 'single');
    }
  });

  it('names no seconds, in its text or in the small picture that takes a clock’s place', () => {
    const screen = eveningScreen(untimed(timed), TUESDAY, { painter, clips });
    expect(screen.text.text).toContain('as long as it takes');
    expect(screen.text.text).not.toContain('second');
    const result = { right: 3, asked: 3, missed: [], revision: 1, earlier: [] };
    const drill = { version: 1, parts: [clocks, bonds] };
    const after = view({ drill, started: true, results: [result, null] });
    const pictures = [after, untimed(after)].map(
      (each) => eveningScreen(each, TUESDAY, { painter, clips, way: 'words' }).picture?.hash,
    );
    expect(new Set(pictures).size).toBe(2);
  });
});
