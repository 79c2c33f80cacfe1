import { describe, expect, it } from 'vitest';
import { aCall, aFamily, anEvening, anOwed, secondsOn } from './an-evening.ts';
import type { EveningFacts } from './facts.ts';
import { violations } from './invariants/index.ts';
import { excess } from './invariants/rate.ts';

/** What is found in an evening that differs from a good one in this. */
function found(own: Partial<EveningFacts>): string[] {
  return violations(anEvening(own)).map(({ invariant, what }) => `${invariant}: ${what}`);
}

/** So many calls at equal distances, to chats of their own. */
function stream(count: number, everyMs: number) {
  return Array.from({ length: count }, (_, at) =>
    aCall({
      at: secondsOn(60) + at * everyMs,
      chatId: 20_000 + at,
      prompt: null,
      messageId: 900 + at,
    }),
  );
}

describe('an evening in which everything is as it must be', () => {
  it('has no violation', () => {
    expect(found({})).toEqual([]);
  });

  it('may have lost a message that the ledger does not know of, with the nudge besides', () => {
    const nudge = aCall({ at: secondsOn(5_400), prompt: 'nudge', messageId: 502 });
    const owed = [
      anOwed({ status: 'unknown', messageId: null, problem: 'no_answer' }),
      anOwed({ kind: 'nudge', messageId: 502 }),
    ];
    expect(found({ calls: [nudge], owed })).toEqual([]);
    expect(found({ calls: [aCall({ status: 0 }), nudge], owed })).toEqual([]);
  });

  it('may leave out a family that has blocked the bot', () => {
    expect(found({ families: [aFamily({ reachable: false })], calls: [], owed: [] })).toEqual([]);
  });
});

describe('an evening that does not come exactly once', () => {
  it('is caught when it comes twice, even if the first call was never answered', () => {
    const calls = [aCall({ status: 0, messageId: 500 }), aCall({ at: secondsOn(40) })];
    expect(found({ calls })).toEqual([
      'an evening comes exactly once: phone 10000 got 2 of kind evening',
    ]);
  });

  it('is caught when a second one follows an unknown one', () => {
    const calls = [aCall({ status: 0, messageId: 500 }), aCall({ at: secondsOn(40) })];
    const owed = [anOwed({ status: 'unknown', messageId: null })];
    expect(found({ calls, owed })).toHaveLength(1);
  });

  it('is caught when a second nudge comes', () => {
    const nudges = [602, 603].map((messageId) => aCall({ prompt: 'nudge', messageId }));
    expect(found({ calls: [aCall(), ...nudges] })).toEqual([
      'an evening comes exactly once: phone 10000 got 2 of kind nudge',
    ]);
  });

  it('is caught when it is stored as sent and never came', () => {
    expect(found({ calls: [] })).toEqual([
      'an evening comes exactly once: phone 10000: stored as sent with message 501, arrived: nothing',
    ]);
  });

  it('is caught when it is stored under another message', () => {
    expect(found({ owed: [anOwed({ messageId: 77 })] })).toHaveLength(1);
  });

  it('is caught when it was given up for a family that could be reached', () => {
    const owed = [anOwed({ status: 'failed', messageId: null, problem: 'too_late' })];
    expect(found({ calls: [], owed })).toEqual([
      'an evening comes exactly once: phone 10000: it did not come, and is stored as failed (too_late)',
    ]);
  });

  it('is caught when it came and is stored as failed', () => {
    const owed = [anOwed({ status: 'failed', messageId: null, problem: 'blocked' })];
    expect(found({ owed })).toHaveLength(1);
  });

  it('is caught when it is not owed at all', () => {
    expect(found({ calls: [], owed: [] })).toEqual([
      'an evening comes exactly once: phone 10000: no evening is owed',
    ]);
    expect(found({ owed: [] })).toHaveLength(1);
  });

  it('is caught on the second phone of a family, too', () => {
    expect(found({ families: [aFamily({ phones: [10_000, 10_001] })] })).toEqual([
      'an evening comes exactly once: phone 10001: no evening is owed',
    ]);
  });
});

describe('an acknowledged mark that is not stored once', () => {
  it('is caught when the part is missing, or twice there', () => {
    const [part] = anEvening().parts;
    expect(found({ parts: [], marks: [] })).toHaveLength(2);
    expect(found({ parts: part ? [part, part] : [] })).toEqual([
      'an acknowledged mark is stored once: child wren, part 0: 3 right were acknowledged, stored: 3, 3',
    ]);
  });

  it('is caught when another number or another card is stored', () => {
    const { parts, marks } = anEvening();
    expect(found({ parts: parts.map((part) => ({ ...part, right: 4 })) })).toHaveLength(1);
    expect(
      found({
        marks: marks.map((mark) => ({ ...mark, right: mark.card !== 2 && mark.card !== 3 })),
      }),
    ).toHaveLength(1);
  });
});

describe('a tap that has its effect twice', () => {
  it('is caught when it made a second revision, or stored a card twice', () => {
    const { parts, marks } = anEvening();
    expect(found({ parts: parts.map((part) => ({ ...part, revision: 2 })) })).toEqual([
      'no tap has its effect twice: child wren, part 0 has revision 2',
    ]);
    expect(found({ marks: [...marks, ...marks.slice(0, 1)] })).toEqual([
      'no tap has its effect twice: child wren, part 0 has revision 1',
    ]);
  });
});

describe('a message outside hours', () => {
  it('is caught a second too early and at nine sharp, even when it never arrived', () => {
    const { from, to } = anEvening().hours;
    for (const at of [from - 1_000, to]) {
      const refused = aCall({ at, prompt: null, status: 502, messageId: null });
      const calls = [aCall(), refused].sort((one, other) => one.at - other.at);
      expect(found({ calls })).toEqual([
        `nothing is sent outside hours: sendMessage to phone 10000 at ${new Date(at).toISOString()}`,
      ]);
    }
  });

  it('may be a change of a message, or go to a teacher', () => {
    const { to } = anEvening().hours;
    const edit = aCall({ at: to, method: 'editMessageText', prompt: null });
    const digest = aCall({ at: to, chatId: 1_001, prompt: null });
    expect(found({ calls: [aCall(), edit, digest] })).toEqual([]);
  });
});

describe('a rate that is not kept', () => {
  it('is caught at more than thirty a second, beyond the burst that is known to be taken', () => {
    expect(found({ calls: [aCall(), ...stream(300, 34)] })).toEqual([]);
    expect(found({ calls: [aCall(), ...stream(30, 0)] })).toEqual([]);
    expect(found({ calls: [aCall(), ...stream(300, 29)] })[0]).toMatch(
      /^the rate is kept: all chats: up to \d+ ms too early$/,
    );
    expect(found({ calls: [aCall(), ...stream(32, 0)] })).toHaveLength(1);
  });

  it('is caught in one chat, at more than one a second beyond five', () => {
    const calls = stream(8, 400).map((call) => ({ ...call, chatId: 10_000 }));
    expect(found({ calls: [aCall(), ...calls] })).toEqual([
      'the rate is kept: chat 10000: 200 ms too early',
    ]);
  });

  it('is caught when the service refuses by its own limits', () => {
    const calls = [aCall(), aCall({ status: 429, messageId: null, prompt: null, pauseSeconds: 0 })];
    expect(found({ calls })).toEqual([
      'the rate is kept: the service refused 1 calls by its own limits',
    ]);
    expect(found({ calls: calls.map((call) => ({ ...call, byFault: true })) })).toEqual([]);
  });

  it('excuses a heap after a stall by the length of the stall only', () => {
    const heap = stream(60, 0);
    const to = heap[0]?.at ?? 0;
    const limit = { everyMs: 1_000 / 30, burst: 30 };
    expect(excess(heap, { ...limit, stalls: [{ from: to - 1_000, to }] })).toBe(0);
    expect(excess(heap, { ...limit, stalls: [{ from: to - 500, to }] })).toBeGreaterThan(0);
  });
});

describe('a pause that is not kept', () => {
  const refused = aCall({ at: secondsOn(100), status: 429, messageId: null, byFault: true });
  const asked = { ...refused, prompt: null, pauseSeconds: 5, chatId: 20_000 };
  const early = aCall({ at: secondsOn(104), chatId: 20_001, prompt: null });

  it('is caught when anybody sends in it', () => {
    expect(found({ calls: [aCall(), asked, early] })).toEqual([
      'nobody sends in a pause: 1 sent in the pause of 5 s at 2026-09-14T16:31:40.000Z',
    ]);
  });

  it('may be met by what was on its way, and could not be told while the database was down', () => {
    expect(found({ calls: [aCall(), asked, { ...early, at: secondsOn(101) }] })).toEqual([]);
    const outages = [{ from: secondsOn(99), to: secondsOn(103) }];
    expect(found({ calls: [aCall(), asked, early], outages })).toEqual([]);
  });
});

describe('something that does not come to an end', () => {
  it('is caught', () => {
    expect(found({ open: { 'updates given up': 2, 'dead letters': 0 } })).toEqual([
      'everything comes to an end: 2 updates given up',
    ]);
  });
});
