import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { createPainter } from '../../../bot/media/index.ts';
import { eveningScreen } from '../../../bot/screens/evening-screen.ts';
import { type Preview, previewScreen } from '../../../bot/screens/preview-screen.ts';
import {
  OFFERED,
  type PreviewState,
  packPreview,
  placesOf,
  unpackPreview,
} from '../../../bot/screens/preview-state.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { composeEvening } from '../../../drills/index.ts';
import { day } from '../../drills/support/day.ts';
import { kingfisher } from '../support/kingfisher.ts';

const DAY = day('2026-09-14');
const means = { painter: createPainter() };
const drill = composeEvening({
  plan: {
    parts: [
      { rung: 'doubles.to10', also: ['halves.to10'], cards: 6, seconds: 3 },
      { rung: 'counting.fives', cards: 5, seconds: 3 },
      { rung: 'clock.half', cards: 3, seconds: 5 },
    ],
  },
  memory: new Map(),
  lastStarts: new Map(),
  today: DAY,
  seed: 'nobody',
});
const preview: Preview = {
  schoolClass: kingfisher,
  day: DAY,
  drill,
  isDraft: false,
  book: { title: 'Pebble Path', from: 1, to: 2, last: 40, next: null },
};

const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);

/** The state that a button leads to. */
function after(screen: Screen, label: string): PreviewState {
  const found = screen.buttons.flat().find((each) => each.label.includes(label));
  const action = found && unpack(found.data);
  if (action?.kind !== 'preview') throw new Error(`“${label}” leads nowhere in the preview`);
  return unpackPreview(action.at);
}

/** Taps one button after another, from the beginning. */
function tapThrough(...labels: readonly string[]): Screen {
  const show = (state: PreviewState) => previewScreen(preview, state, means);
  return labels.reduce((screen, label) => show(after(screen, label)), show(OFFERED));
}

describe('a preview', () => {
  it('says what it is before it starts, and stands where a nickname would afterwards', () => {
    expect(tapThrough().text.text).toContain('Nothing you tap here is kept.');
    expect(tapThrough().text.text).toContain('on the next evening');
    expect(tapThrough('Start').text.text).toContain('Preview · Monday');
  });

  it('of a draft promises nothing for the next evening', () => {
    const { text } = previewScreen({ ...preview, isDraft: true }, OFFERED, means).text;
    expect(text).toContain('what a family gets once you put it in use.');
    expect(text).not.toContain('next evening');
  });

  it('goes through every screen of an evening to its result', () => {
    const marking = tapThrough('Start', 'Some missed', '2. ', '4. ');
    expect(labelsOf(marking).filter((label) => label.startsWith('✗ '))).toHaveLength(2);
    expect(marking.text.text).toContain('4 of 6');
    const back = tapThrough('Start', 'Some missed', '2. ', '✗ 2. ');
    expect(back.text.text).toContain('6 of 6');
    const steps = ['Start', 'Some missed', '2. ', 'Done', 'Stopped earlier', 'None yet'];
    const clock = tapThrough(...steps);
    expect(clock.text.text).toContain('Part 3 of 3: clock (half past)');
    const result = tapThrough(...steps, 'All right', '3');
    expect(result.text.text).toContain('5 of 6');
    expect(result.text.text).toContain('counting in fives to 200: 0 of 5');
    expect(result.text.text).toContain('Pebble Path');
    expect(labelsOf(result)).toEqual(['End the preview']);
  });

  it('shows “Later” and “Not today” as a family sees them', () => {
    expect(tapThrough('Later').text.text).toContain('at 18:00');
    expect(tapThrough('Not today').text.text).toContain('That is fine.');
    expect(tapThrough('Not today', 'Practise after all').text.text).toContain('Part 1 of 3');
  });

  it('has the family’s own pictures, words and button labels on each screen', () => {
    const family = eveningScreen(
      {
        id: kingfisher.id,
        childId: kingfisher.id,
        classId: kingfisher.id,
        nickname: 'Preview',
        zone: kingfisher.zone,
        language: 'en',
        day: DAY,
        drill,
        book: preview.book,
        started: true,
        declined: false,
        stopped: false,
        remindAt: null,
        results: [null, null, null],
        marking: null,
        pages: null,
      },
      DAY,
      means,
    );
    const shown = tapThrough('Start');
    expect(shown.text.text).toBe(family.text.text);
    expect(shown.picture?.hash).toBe(family.picture?.hash);
    expect(labelsOf(shown)).toEqual([...labelsOf(family), 'End the preview']);
  });

  it('has no button that could change an evening', () => {
    const kinds = new Set<string | undefined>();
    for (const steps of [[], ['Start'], ['Start', 'Some missed'], ['Start', 'All right']]) {
      for (const { data } of tapThrough(...steps).buttons.flat()) kinds.add(unpack(data)?.kind);
    }
    expect([...kinds].toSorted()).toEqual(['preview', 'previewEnd']);
  });
});

describe('the state in a preview’s buttons', () => {
  const bits = fc.integer({ min: 0, max: 2 ** 20 - 1 });

  it('comes back as it was, in at most 32 letters for the longest evening', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('offer', 'later', 'not_today', 'started'),
        fc.array(bits, { maxLength: 6 }),
        bits,
        fc.integer({ min: 0, max: 8 }),
        fc.boolean(),
        (at, done, marking, pages, isOver) => {
          const state: PreviewState = {
            at,
            done,
            marking: isOver || done.length === 6 ? null : marking,
            pages: isOver ? pages : null,
          };
          const text = packPreview(state);
          expect(text).toMatch(/^[A-Za-z0-9_.-]{1,32}$/);
          expect(unpackPreview(text)).toEqual(state);
        },
      ),
    );
  });

  it.each([[''], ['x'], ['s0..'], ['s-'], ['new'], ['o_']])('%j is never a crash', (text) => {
    const screen = previewScreen(preview, unpackPreview(text), means);
    expect(labelsOf(screen)).toContain('End the preview');
  });

  it('that says more parts than there are shows the end', () => {
    const beyond = unpackPreview('s0.0.0.0.0.0');
    expect(previewScreen(preview, beyond, means).text.text).toContain('How many pages');
  });

  it('names cards by bits, the first one the lowest', () => {
    expect(placesOf(5, 4)).toEqual([0, 2]);
    expect(placesOf(2 ** 19, 20)).toEqual([19]);
    expect(placesOf(16, 3)).toEqual([]);
  });
});
