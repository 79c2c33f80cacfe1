import { describe, expect, it } from 'vitest';
import { FRAME_FOOT, squareFrame } from '../../../bot/media/frame.ts';
import { cardFrame, endFrame, pictureWords, readyFrame } from '../../../bot/media/index.ts';
import { clock, type Face, KINDS, LONG_WORDS, written } from './faces.ts';
import { circles, rects, textBoxes } from './text-boxes.ts';

const frame = (face: Face) => cardFrame({ face, position: 4, of: 15, title: 'Bonds' });
const contents = (drawing: ReturnType<typeof frame>) =>
  textBoxes(drawing).map(({ content }) => content);
const faces = [...Object.values(KINDS), ...LONG_WORDS.map(written), clock(5, 30)];

describe('cardFrame', () => {
  it('says which card of how many, and the title, near the top', () => {
    expect(cardFrame({ face: written('? + 7 = 10'), position: 4, of: 15 }).svg).toContain(
      '4 of 15',
    );
    const [place, title] = textBoxes(frame(written('3 + 4')));
    expect([place?.content, title?.content]).toEqual(['4 of 15', 'Bonds']);
    expect(Math.max(place?.bottom ?? 480, title?.bottom ?? 480)).toBeLessThan(60);
  });

  it('shows the card and never its answer', () => {
    expect(contents(frame(written('10 − ? = 7'))).slice(2)).toEqual(['10 −', '= 7']);
    expect(contents(frame(clock(3, 30))).slice(2)).toEqual(
      Array.from({ length: 12 }, (_, i) => String(i + 1)),
    );
  });

  it('is square and keeps its lowest 12 % free', () => {
    for (const face of faces) {
      const drawing = frame(face);
      expect([drawing.width, drawing.height]).toEqual([480, 480]);
      const feet = [
        ...textBoxes(drawing).map(({ bottom }) => bottom),
        ...circles(drawing).map(({ cy, r }) => cy + r),
        ...rects(drawing)
          .slice(1)
          .map(({ y, height }) => y + height),
      ];
      expect(Math.max(...feet)).toBeLessThanOrEqual(FRAME_FOOT);
    }
    expect(FRAME_FOOT).toBeLessThanOrEqual(0.88 * 480);
  });

  it('sets the card itself no smaller than 30 of 480 px', () => {
    for (const face of [...Object.values(KINDS), ...LONG_WORDS.map(written)]) {
      const sizes = textBoxes(frame(face))
        .slice(2)
        .map(({ size }) => size);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(30);
    }
  });

  it('takes its words from its caller', () => {
    const words = {
      ...pictureWords(),
      position: (card: number, of: number) => `${card} von ${of}`,
    };
    const drawing = cardFrame({ face: written('3 + 4'), position: 4, of: 15, words });
    expect(contents(drawing)[0]).toBe('4 von 15');
  });

  it('is refused at a place that is none', () => {
    for (const [position, of] of [
      [0, 15],
      [16, 15],
      [1.5, 15],
      [1, Number.NaN],
    ] as const) {
      expect(() => cardFrame({ face: written('3 + 4'), position, of })).toThrow(RangeError);
    }
  });
});

describe('readyFrame', () => {
  it('says what comes, how many and how fast', () => {
    const drawing = readyFrame({ title: 'Doubles', cards: 15, seconds: 3 });
    expect(drawing.svg).toContain('15 cards');
    expect(contents(drawing)).toEqual([
      'Doubles',
      '15 cards',
      '3 seconds each',
      'Say each answer aloud.',
    ]);
  });

  it('without a pace says nothing of one', () => {
    const told = contents(readyFrame({ title: 'Doubles', cards: 15 }));
    expect(told).toEqual(['Doubles', '15 cards', 'Say each answer aloud.']);
  });

  it('speaks of one card and one second as one', () => {
    const told = contents(readyFrame({ title: '', cards: 1, seconds: 1 }));
    expect(told.slice(0, 2)).toEqual(['1 card', '1 second each']);
  });

  it('is refused without cards or seconds', () => {
    expect(() => readyFrame({ title: '', cards: 0, seconds: 3 })).toThrow(RangeError);
    expect(() => readyFrame({ title: '', cards: 5, seconds: 2.5 })).toThrow(RangeError);
  });
});

describe('endFrame', () => {
  it('ends the clip and says what to do next', () => {
    expect(endFrame().svg).toContain('Now mark it together.');
    expect(contents(endFrame()).join(' ')).toBe('That was the last card. Now mark it together.');
  });
});

describe('squareFrame', () => {
  it('is 480 px high, and bare when there is nothing to say at its top', () => {
    expect(squareFrame({ left: '4 of 15', right: 'Doubles' }, '').height).toBe(480);
    expect(squareFrame({ left: '', right: '' }, '').svg).not.toContain('<path');
  });
});
