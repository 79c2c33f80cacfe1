import type { Call, EveningFacts, FamilyEvening, Owed } from './facts.ts';

const FROM = Date.UTC(2026, 8, 14, 16, 30);
const TO = Date.UTC(2026, 8, 14, 20, 0);

/** An instant so many seconds after the evening began. */
export function secondsOn(seconds: number): number {
  return FROM + seconds * 1_000;
}

/** A call that was carried out and answered, unless said otherwise. */
export function aCall(own: Partial<Call> = {}): Call {
  return {
    ...{ at: secondsOn(10), method: 'sendMessage', status: 200, chatId: 10_000, messageId: 501 },
    ...{ prompt: 'evening', queryId: null, pauseSeconds: null, byFault: false },
    ...own,
  };
}

/** An evening owed to the first phone and sent, unless said otherwise. */
export function anOwed(own: Partial<Owed> = {}): Owed {
  return {
    ...{ childId: 'wren', phone: 10_000, kind: 'evening', status: 'sent' },
    ...{ messageId: 501, problem: null },
    ...own,
  };
}

/** A family that played its cards, two of five missed, unless said otherwise. */
export function aFamily(own: Partial<FamilyEvening> = {}): FamilyEvening {
  return {
    ...{ childId: 'wren', phones: [10_000], reachable: true, declined: false },
    seen: [{ part: 0, missed: [1, 3], right: 3 }],
    ...own,
  };
}

/** An evening of one family in which everything is as it must be, but for what is said. */
export function anEvening(own: Partial<EveningFacts> = {}): EveningFacts {
  return {
    hours: { from: FROM, to: TO },
    families: [aFamily()],
    calls: [aCall()],
    owed: [anOwed()],
    parts: [{ childId: 'wren', part: 0, right: 3, asked: 5, revision: 1 }],
    marks: [0, 1, 2, 3, 4].map((card) => ({
      ...{ childId: 'wren', part: 0, card, revision: 1 },
      right: card !== 1 && card !== 3,
    })),
    open: { 'messages planned': 0 },
    ...{ perSecond: 30, stalls: [], outages: [] },
    ...own,
  };
}
