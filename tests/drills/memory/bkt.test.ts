import { describe, expect, test } from 'vitest';
import { bkt, traceStep } from '../../../drills/memory/bkt.ts';
import type { Evidence } from '../../../drills/memory/model.ts';

const RIGHT: Evidence = { day: 20, right: true, way: 'card', share: 1 };
const WRONG: Evidence = { ...RIGHT, right: false };

describe('one step of tracing', () => {
  const params = { learn: 0.1, slip: 0.1, guess: 0.2 };

  test('a right answer raises the belief by what it says and what it teaches', () => {
    expect(traceStep(0.2, true, params)).toBeCloseTo(0.576471, 6);
  });

  test('without practice, slips or guesses an answer settles the matter', () => {
    const sure = { learn: 0, slip: 0, guess: 0 };
    expect(traceStep(0.3, true, sure)).toBe(1);
    expect(traceStep(0.3, false, sure)).toBe(0);
  });

  test('an answer that cannot be leaves the belief but for the practice', () => {
    const sure = { learn: 0.1, slip: 0, guess: 0 };
    expect(traceStep(1, false, sure)).toBe(1);
    expect(traceStep(0, true, sure)).toBeCloseTo(0.1, 12);
  });
});

describe('knowledge tracing of a fact', () => {
  test('a fact of middling difficulty is right 42 times in 100 before anything was seen', () => {
    expect(bkt.recall(bkt.start(2), 20)).toBeCloseTo(0.42, 12);
  });

  test('there is no forgetting: days play no part', () => {
    const known = bkt.learn(bkt.start(2), RIGHT);
    expect(bkt.recall(known, 20)).toBe(bkt.recall(known, 400));
    expect(bkt.learn(known, { ...WRONG, day: 3 })).toEqual(bkt.learn(known, { ...WRONG, day: 99 }));
  });

  test('where only missed cards were tapped, right says less and wrong says as much as ever', () => {
    const [before = 0] = bkt.start(3);
    const [card = 0] = bkt.learn([before], RIGHT);
    const [unmissed = 0] = bkt.learn([before], { ...RIGHT, way: 'unmissed' });
    expect(unmissed).toBeGreaterThan(before);
    expect(unmissed).toBeLessThan(card);
    const [missed = 0] = bkt.learn([before], WRONG);
    expect(bkt.learn([before], { ...WRONG, way: 'unmissed' })[0]).toBeCloseTo(missed, 12);
    expect(bkt.learn([before], { ...RIGHT, way: 'run' })).toEqual([card]);
  });

  test('a relative moves the belief its share of the way', () => {
    const [before = 0] = bkt.start(3);
    const [whole = 0] = bkt.learn([before], RIGHT);
    const [half = 0] = bkt.learn([before], { ...RIGHT, share: 0.5 });
    expect(half).toBeCloseTo((before + whole) / 2, 12);
  });

  test('what is surely known is worth nothing, and a hard new fact more than an easy one', () => {
    expect(bkt.worth([1], 20)).toBe(0);
    expect(bkt.worth(bkt.start(5), 20)).toBeGreaterThan(bkt.worth(bkt.start(0), 20));
  });
});
