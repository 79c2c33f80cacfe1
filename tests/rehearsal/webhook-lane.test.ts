import { describe, expect, it } from 'vitest';
import {
  laneOf,
  newLane,
  noteFailure,
  noteSuccess,
  retryDelay,
} from '../../rehearsal/webhook-lane.ts';

describe('retryDelay', () => {
  it('is nothing at first, doubles from 2 s, and ends between 60 and 120 s', () => {
    expect([1, 2, 3, 4, 5, 6].map((failures) => retryDelay(failures, 0))).toEqual([
      0, 2, 4, 8, 16, 32,
    ]);
    const last = Array.from({ length: 61 }, (_, salt) => retryDelay(9, salt));
    expect([Math.min(...last), Math.max(...last)]).toEqual([60, 120]);
  });
});

describe('laneOf', () => {
  it('keeps a chat together and a person’s taps apart from it', () => {
    const from = { id: 4101 };
    const message = { chat: { id: 4101 } };
    expect(laneOf({ update_id: 1, message })).toBe('chat 4101');
    expect(laneOf({ update_id: 2, my_chat_member: { ...message, from } })).toBe('chat 4101');
    expect(laneOf({ update_id: 3, callback_query: { from, message } })).toBe('taps of 4101');
  });

  it('gives what cannot be read a lane of its own', () => {
    expect(laneOf({ update_id: 4, message: null })).toBe('update 4');
  });
});

describe('a lane that failed', () => {
  it('waits at least as long as it was asked to, up to an hour', () => {
    const lane = newLane();
    noteFailure(lane, 1000, 5, 0);
    expect(lane.notBefore).toBe(6000);
    noteFailure(lane, 0, 9000, 0);
    expect(lane.notBefore).toBe(3_600_000);
    noteFailure(lane, 0, undefined, 0);
    expect(lane).toEqual({ isBusy: false, failures: 3, notBefore: 4000 });
    noteSuccess(lane);
    expect(lane).toEqual(newLane());
  });
});
