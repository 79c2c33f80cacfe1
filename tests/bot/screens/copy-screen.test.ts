import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { copyScreen } from '../../../bot/screens/evening-screen.ts';
import type { EveningView } from '../../../db/index.ts';
import { bonds, finished, scored, TUESDAY, view, WEDNESDAY } from '../support/evening.ts';

const other = (each: EveningView, today = TUESDAY) => copyScreen(each, today, false);
const kindsOf = ({ buttons }: ReturnType<typeof other>) =>
  buttons.flat().map(({ label, data }) => `${label}: ${unpack(data)?.kind}`);

describe('the message of another helper', () => {
  it('says that somebody is marking, with what is marked, and lets them go on', () => {
    const screen = other(view({ started: true, results: [scored(bonds), null, null] }));
    expect(screen.text.text).toBe(
      'Wren · Tuesday\nAnother helper is marking this just now.\nadding within 10: 4 of 4, first time at this',
    );
    expect(kindsOf(screen)).toEqual(['Continue here: start']);
  });

  it('lets them go on while the other is marking or is asked for pages', () => {
    const marking = view({ started: true, marking: { part: 0, missed: [] } });
    for (const each of [marking, finished({ pages: null })]) {
      expect(kindsOf(other(each))).toEqual(['Continue here: start']);
    }
  });

  it('shows the results at the end and asks for nothing', () => {
    const screen = other(finished());
    expect(screen.text.text).toContain('Practised with another helper.');
    expect(kindsOf(screen)).toEqual([]);
  });

  it('never says that somebody is marking when nobody has begun', () => {
    const screen = other(view());
    expect(screen.text.text).not.toContain('marking');
    expect(kindsOf(screen)).toEqual([
      'Start: start',
      'Later (30 min): later',
      'Not today: notToday',
    ]);
  });

  it('says that it is not today’s, and offers to practise after all', () => {
    const screen = other(view({ declined: true }));
    expect(screen.text.text).toContain('Not today. That is fine.');
    expect(kindsOf(screen)).toEqual(['Practise after all: start']);
  });
});

describe('an earlier or later message in the same chat', () => {
  it('points to the other one and asks for nothing', () => {
    for (const each of [view({ started: true }), finished(), view({ declined: true })]) {
      const screen = copyScreen(each, TUESDAY, true);
      expect(screen.text.text).toBe(
        'Wren · Tuesday\nGoes on in the other message about this evening.',
      );
      expect(screen.buttons).toEqual([]);
    }
  });
});

it.each([true, false])('a copy of a day that is over says so (same chat: %s)', (sameChat) => {
  for (const each of [view({ started: true }), finished(), view({ declined: true })]) {
    const screen = copyScreen(each, WEDNESDAY, sameChat);
    expect(screen.text.text).toContain('This day is over');
    expect(screen.buttons).toEqual([]);
  }
});
