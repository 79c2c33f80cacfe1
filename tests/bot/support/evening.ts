import { type EveningView, type PartResult, storedDay } from '../../../db/index.ts';
import {
  askedOf,
  type DrillPart,
  type FactPart,
  RUNGS,
  type Rung,
  type RunPart,
} from '../../../drills/index.ts';

export const TUESDAY = storedDay('2026-09-15');
export const WEDNESDAY = storedDay('2026-09-16');
export const EVENING_ID = '019a0000-0000-7000-8000-000000000001';

/** Four sums. */
export const bonds: FactPart = {
  kind: 'facts',
  strand: 'bonds',
  rung: 'bonds.to10',
  seconds: 3,
  cards: ['add:3+4', 'add:5+5', 'add:9+1', 'add:2+6'],
};

/** What makes ten: the answer stands inside the sentence. */
export const gaps: FactPart = {
  kind: 'facts',
  strand: 'bonds',
  rung: 'bonds.make10',
  seconds: 3,
  cards: ['gap:7+10', 'gap:2+10', 'gap:5+10'],
};

/** Three clocks. */
export const clocks: FactPart = {
  kind: 'facts',
  strand: 'clock',
  rung: 'clock.half',
  seconds: 5,
  cards: ['clock:0330', 'clock:1230', 'clock:0930'],
};

/** Four numbers in fives. */
export const fives: RunPart = {
  kind: 'run',
  strand: 'counting',
  rung: 'counting.fives',
  seconds: 3,
  start: 35,
  step: 5,
  length: 4,
};

/** Wren's Tuesday: sums, clocks and fives, not started. */
export function view(change: Partial<EveningView> = {}): EveningView {
  const drill = change.drill ?? { version: 1, parts: [bonds, clocks, fives] };
  return {
    id: EVENING_ID,
    childId: '019a0000-0000-7000-8000-000000000002',
    classId: '019a0000-0000-7000-8000-000000000003',
    nickname: 'Wren',
    zone: 'Africa/Johannesburg',
    language: 'en',
    day: TUESDAY,
    drill,
    book: { title: 'Pebble Path', from: 14, to: 15, last: 48, next: null },
    started: false,
    declined: false,
    stopped: false,
    remindAt: null,
    results: drill.parts.map(() => null),
    marking: null,
    pages: null,
    ...change,
  };
}

/** A marked part: all right and for the first time unless said otherwise. */
export function scored(part: DrillPart, change: Partial<PartResult> = {}): PartResult {
  const asked = askedOf(part);
  return { right: asked, asked, missed: [], revision: 1, earlier: [], ...change };
}

/** Wren's Tuesday with every part marked and the pages said. */
export function finished(change: Partial<EveningView> = {}): EveningView {
  const { drill } = view(change);
  return view({
    started: true,
    results: drill.parts.map((part) => scored(part)),
    pages: 2,
    ...change,
  });
}

/** The most an evening can say: six parts of twenty with the longest titles, and the longest names. */
export function largest(nickname: string): EveningView {
  const parts = RUNGS.toSorted((one, other) => other.title.length - one.title.length)
    .slice(0, 6)
    .map(fullPart);
  return view({
    nickname,
    drill: { version: 1, parts },
    book: {
      title: 'Pebble Path '.repeat(5),
      from: 993,
      to: 997,
      last: 999,
      next: { title: 'Pebble Path '.repeat(5), from: 999 },
    },
    started: true,
    results: parts.map((part) => scored(part, { earlier: [0] })),
    marking: { part: 0, missed: Array.from({ length: 20 }, (_, card) => card) },
    pages: 7,
  });
}

/** Twenty cards of a rung, or as many numbers as it has up to twenty. */
export function fullPart(rung: Rung): DrillPart {
  const { id, seconds } = rung;
  if (rung.kind === 'facts') {
    const cards = Array.from({ length: 20 }, (_, at) => rung.facts.at(at % rung.facts.length));
    return {
      kind: 'facts',
      strand: rung.strand,
      rung: id,
      seconds,
      cards: cards.filter((fact) => fact !== undefined),
    };
  }
  const step = rung.direction === 'on' ? rung.step : -rung.step;
  const start = rung.direction === 'on' ? 0 : rung.limit;
  const length = Math.min(20, rung.limit / rung.step + 1);
  return { kind: 'run', strand: 'counting', rung: id, seconds, start, step, length };
}
