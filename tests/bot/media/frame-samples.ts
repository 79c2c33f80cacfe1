import {
  answerSheet,
  cardFrame,
  clockAid,
  clockAidSheet,
  type Drawing,
  endFrame,
  loneCard,
  readyFrame,
  restFrame,
} from '../../../bot/media/index.ts';
import { clockAidRules, clockAidTitle, clockAidWords } from '../../../bot/texts/clock-aid.ts';
import { clock, type Face, KINDS, LONG_WORDS, OVERLAPS, run, written } from './faces.ts';

const frame = (face: Face, title = 'Counting back in ones within two hundred') =>
  cardFrame({ face, position: 4, of: 15, title });

const named = (entries: readonly (readonly [string, Drawing])[]): Record<string, Drawing> =>
  Object.fromEntries(entries);

const answered = (face: Face, answer: string) => ({ face, answer });

const GAPS = run(1, 1, 15).map((n) => answered(written(`${n} + ? = 20`), String(20 - n)));
const TIMES = OVERLAPS.map(([hour, minute], i) =>
  answered(clock(hour, minute), i % 2 === 0 ? 'twenty-five to one' : 'fünf nach halb vier'),
);
const WORDS = LONG_WORDS.map((word) => answered(written(word), '777'));

const AIDED = [
  [12, 0],
  [3, 30],
  [6, 25],
  [12, 55],
].map(([hour = 12, minute = 0]) => ({
  hour,
  minute,
  ...clockAidWords({ hour, minute }, hour === 12 ? 'es' : 'en'),
}));

/** Frames of a clip, cards alone, explained clocks and answer sheets, by name. */
export const FRAME_SAMPLES: Readonly<Record<string, Drawing>> = {
  ...named(Object.entries(KINDS).map(([kind, face]) => [`frame: ${kind}`, frame(face)])),
  ...named(LONG_WORDS.map((word) => [`frame: ${word}`, frame(written(word))])),
  ...named(
    OVERLAPS.map(([hour, minute]) => [
      `frame: clock ${hour}:${String(minute).padStart(2, '0')}`,
      frame(clock(hour, minute), ''),
    ]),
  ),
  'frame: nothing but letters': frame(written('w'.repeat(70)), 'x'.repeat(90)),
  'the ready frame': readyFrame({
    title: 'Counting back in ones within two hundred',
    cards: 20,
    seconds: 15,
  }),
  'the smallest ready frame': readyFrame({ title: '', cards: 1, seconds: 1 }),
  'the end frame': endFrame(),
  'a day that was stopped': restFrame('Stopped for today. That is fine.'),
  ...named(Object.entries(KINDS).map(([kind, face]) => [`alone: ${kind}`, loneCard(face)])),
  ...named(LONG_WORDS.map((word) => [`alone: ${word}`, loneCard(written(word))])),
  ...named(
    AIDED.map(({ figures, ...clock }) => [
      `how to read ${figures}`,
      clockAid({ figures, ...clock }),
    ]),
  ),
  'how to read four clocks': clockAidSheet({
    title: clockAidTitle(),
    rules: clockAidRules(),
    clocks: AIDED.map((each, i) => ({ number: i + 1, ...each })),
  }),
  'answers to gaps': answerSheet({ title: 'Number bonds to 20', items: GAPS }),
  'three answers': answerSheet({ title: '', items: GAPS.slice(0, 3) }),
  'twenty answers': answerSheet({ title: 'Mixed', items: [...GAPS, ...WORDS] }),
  'answers to clocks': answerSheet({ title: 'The clock', items: TIMES }),
  'answers with small clocks': answerSheet({ title: 'The clock', items: TIMES, miniClocks: true }),
  'a mixed answer sheet': answerSheet({
    title: 'A bit of each',
    items: [...GAPS.slice(0, 4), ...WORDS, ...TIMES.slice(0, 3)],
    miniClocks: true,
  }),
};
