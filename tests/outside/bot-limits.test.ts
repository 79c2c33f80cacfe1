import { describe, expect, it } from 'vitest';
import { MAX_BYTES } from '../../bot/callback/codec.ts';
import { lengthOf, NICKNAME_LENGTH } from '../../bot/input/nickname.ts';
import { readIn } from '../../bot/language/index.ts';
import { createPainter } from '../../bot/media/index.ts';
import { childrenScreen } from '../../bot/screens/children-screens.ts';
import { eveningScreen } from '../../bot/screens/evening-screen.ts';
import type { Screen } from '../../bot/screens/screen.ts';
import { partInWords } from '../../bot/texts/cards.ts';
import { digest } from '../../bot/texts/digest.ts';
import * as texts from '../../bot/texts/evening.ts';
import { lines, type Text } from '../../bot/texts/words.ts';
import { MAX_CHILDREN } from '../../db/index.ts';
import { RUNGS } from '../../drills/index.ts';
import { EVENING_ID, fullPart, largest, TUESDAY, view } from '../bot/support/evening.ts';
import { kingfisher, listed, summaryOf, week } from '../bot/support/kingfisher.ts';

/**
 * Source: the Bot API's documentation, 10.1 of June 2026, https://core.telegram.org/bots/api: `text` of sendMessage 1-4096
 * and `caption` of sendPhoto 0-1024 characters after entities parsing (the server counts code points), `callback_data` of
 * InlineKeyboardButton 1-64 bytes. 100 buttons a keyboard is what people observe; the documentation does not say.
 */
const TEXT = 4096;
const CAPTION = 1024;
const DATA_BYTES = 64;
const BUTTONS = 100;

const lengthInCodePoints = ({ text }: Text) => [...text].length;
const painter = createPainter();

const LONGEST_NAMES = [
  'x'.repeat(NICKNAME_LENGTH),
  'ש'.repeat(NICKNAME_LENGTH),
  '👩‍🚀'.repeat(NICKNAME_LENGTH),
  '👨‍👩‍👧‍👦'.repeat(NICKNAME_LENGTH),
  `e${'\u0323'.repeat(7)}`.repeat(NICKNAME_LENGTH),
];

it.each(LONGEST_NAMES)(
  'the longest nicknames are allowed and as long as they can be: %s',
  (name) => {
    expect(lengthOf(name)).toBe(NICKNAME_LENGTH);
    expect(lengthOf(`${name}x`)).toBe(NICKNAME_LENGTH + 1);
  },
);

describe.each(LONGEST_NAMES)('the largest evening of %s', (nickname) => {
  const view = largest(nickname);
  const parts = [0, 1, 2, 3, 4, 5];

  it.each(['en', 'af', 'es', 'de', 'fr'] as const)('fits in captions in %s', (language) => {
    const captions = readIn(language, () => [
      texts.offer(view),
      texts.nudge(view),
      texts.reminder(view),
      texts.laterAt(view, '20:45'),
      ...parts.map((index) => texts.partTask(view, index)),
      ...parts.map((index) => texts.marking(view, index)),
      texts.askPages(view),
      texts.result(view),
      texts.elsewhere(view, true),
      texts.closed(view),
    ]);
    for (const caption of captions)
      expect(lengthInCodePoints(caption)).toBeLessThanOrEqual(CAPTION);
  });

  it('fits in one message when its pictures are replaced by words', () => {
    for (const index of parts) {
      const part = view.drill.parts[index];
      const words = part ? partInWords(part) : '';
      const message = lines(texts.partTask(view, index), '', words);
      expect(lengthInCodePoints(message)).toBeLessThanOrEqual(TEXT);
    }
  });
});

describe('keyboards', () => {
  const marking = RUNGS.map((rung) =>
    eveningScreen(
      view({
        drill: { version: 1, parts: [fullPart(rung)] },
        marking: { part: 0, missed: Array.from({ length: 20 }, (_, card) => card) },
      }),
      TUESDAY,
      { painter },
    ),
  );
  const children = Array.from({ length: MAX_CHILDREN }, (_, at) =>
    listed(at + 1, 'Д'.repeat(NICKNAME_LENGTH)),
  );
  const screens = [...marking, childrenScreen(kingfisher, children, 0, 1)];

  it('have no more buttons than people see', () => {
    for (const screen of screens) expect(screen.buttons.flat().length).toBeLessThanOrEqual(BUTTONS);
  });

  it('carry what a button carries, and something', () => {
    expect(MAX_BYTES).toBe(DATA_BYTES);
    for (const { label, data } of screens.flatMap(({ buttons }: Screen) => buttons.flat())) {
      expect(Buffer.byteLength(data)).toBeLessThanOrEqual(DATA_BYTES);
      expect(label.trim()).not.toBe('');
    }
    expect(EVENING_ID).toHaveLength(36);
  });
});

describe('a teacher’s longest messages', () => {
  it('a digest of forty children fits', () => {
    const nickname = 'ש'.repeat(NICKNAME_LENGTH);
    const children = Array.from({ length: 40 }, (_, at) =>
      week(at + 1, nickname, { silentRun: at < 4 ? 0 : 20 }),
    );
    const text = digest('x'.repeat(60), summaryOf(children));
    expect(text.text).toContain('and 31 more');
    expect(lengthInCodePoints(text)).toBeLessThanOrEqual(TEXT);
  });

  it.each(['x', 'ש', 'Д'])('a class list of the most children fits, written in %s', (letter) => {
    const children = Array.from({ length: MAX_CHILDREN }, (_, at) => ({
      ...listed(at + 1, letter.repeat(NICKNAME_LENGTH)),
      reachable: 0,
    }));
    const { text } = childrenScreen({ ...kingfisher, title: 'x'.repeat(60) }, children, 0, 0);
    expect(lengthInCodePoints(text)).toBeLessThanOrEqual(TEXT);
  });
});
