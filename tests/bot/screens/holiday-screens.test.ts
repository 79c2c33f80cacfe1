import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import {
  holidayScreen,
  packOff,
  placesScreen,
  unpackOff,
} from '../../../bot/screens/holiday-screens.ts';
import { addDays } from '../../../drills/index.ts';
import { day } from '../../support/term.ts';
import { kingfisher } from '../support/kingfisher.ts';

const NEW_YEAR = day('2026-01-01');
const holidays = Array.from({ length: 40 }, (_, place) => ({
  day: addDays(NEW_YEAR, place * 9),
  name: 'Recognition of something that has a remarkably long name',
  place,
}));
const choice = {
  place: { code: 'AU-NSW', name: 'New South Wales, Australia' },
  from: 'g1a',
  holidays,
};

describe('the holidays that are not ticked', () => {
  it('travel in a button and come back as they were, up to 40', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 39 })), (places) => {
        const off = new Set(places);
        expect(unpackOff(packOff(off), 40)).toEqual(off);
      }),
    );
  });

  it.each(['', '-1', 'zz zz', '!', packOff(new Set([7]))])('%j is none of ours', (text) => {
    expect(unpackOff(text, 7)).toBeNull();
  });
});

describe('a list of forty holidays', () => {
  const everything = new Set(holidays.map(({ place }) => place));
  const screen = holidayScreen(kingfisher, { ...choice, off: everything, at: 6 });
  const labels = screen.buttons.flat().map(({ label }) => label);

  it('has at most ten rows, labels that fit on a phone, and no “Add” while nothing is ticked', () => {
    expect(screen.buttons.length).toBeLessThanOrEqual(10);
    for (const label of labels) expect(label.length).toBeLessThan(45);
    expect(labels.filter((label) => label.startsWith('Add'))).toEqual([]);
  });

  it('turns one holiday with a tap, and the same tap twice is the same as once', () => {
    const action = unpack(screen.buttons[0]?.[0]?.data ?? '');
    expect(action?.kind === 'holidays' && unpackOff(action.off, 40)?.has(36)).toBe(false);
    expect(action?.kind === 'holidays' && unpackOff(action.off, 40)?.size).toBe(39);
  });
});

it('the countries of the world are shown a page at a time', () => {
  const places = Array.from({ length: 206 }, (_, at) => ({ code: 'ZA', name: `Country ${at}` }));
  const screen = placesScreen(kingfisher.id, null, places, 3);
  expect(screen.buttons.length).toBeLessThanOrEqual(10);
  expect(screen.text.text).toContain('Page 4 of 15');
});
