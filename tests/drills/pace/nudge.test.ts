import { describe, expect, test } from 'vitest';
import { decideNudge, type NudgeState } from '../../../drills/index.ts';

const quiet: NudgeState = {
  marked: false,
  declined: false,
  alreadyNudged: false,
  reminded: false,
  paused: false,
  silentRunBefore: 0,
};

describe('decideNudge', () => {
  test('an evening nobody answered is nudged', () => {
    expect(decideNudge(quiet)).toEqual({ nudge: true, reason: 'due' });
  });

  test('one silent evening before changes nothing', () => {
    expect(decideNudge({ ...quiet, silentRunBefore: 1 })).toEqual({ nudge: true, reason: 'due' });
  });

  test.each<[Partial<NudgeState>, string]>([
    [{ marked: true }, 'marked'],
    [{ declined: true }, 'declined'],
    [{ alreadyNudged: true }, 'already_nudged'],
    [{ reminded: true }, 'reminded'],
    [{ paused: true }, 'paused'],
    [{ silentRunBefore: 2 }, 'silent'],
    [{ silentRunBefore: 30 }, 'silent'],
  ])('%j is enough against a nudge', (state, reason) => {
    expect(decideNudge({ ...quiet, ...state })).toEqual({ nudge: false, reason });
  });

  test('of all 64 states one alone is nudged', () => {
    const either = [false, true];
    const decisions = either.flatMap((marked) =>
      either.flatMap((declined) =>
        either.flatMap((alreadyNudged) =>
          either.flatMap((reminded) =>
            either.flatMap((paused) =>
              [1, 2].map((silentRunBefore) =>
                decideNudge({ marked, declined, alreadyNudged, reminded, paused, silentRunBefore }),
              ),
            ),
          ),
        ),
      ),
    );
    expect(decisions).toHaveLength(64);
    expect(decisions.filter(({ nudge }) => nudge)).toEqual([{ nudge: true, reason: 'due' }]);
    expect(decisions.filter(({ reason }) => reason === 'due')).toHaveLength(1);
  });

  test('marks are named before everything else that holds too', () => {
    const everything = {
      marked: true,
      declined: true,
      alreadyNudged: true,
      reminded: true,
      paused: true,
      silentRunBefore: 5,
    };
    expect(decideNudge(everything).reason).toBe('marked');
    expect(decideNudge({ ...everything, marked: false }).reason).toBe('declined');
  });
});
