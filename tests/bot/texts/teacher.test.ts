import { describe, expect, it } from 'vitest';
import { badBreak, breakList } from '../../../bot/texts/breaks.ts';
import { badTime } from '../../../bot/texts/family.ts';
import { planPartScreen, planProblem } from '../../../bot/texts/plan.ts';
import * as roster from '../../../bot/texts/roster.ts';
import * as texts from '../../../bot/texts/teacher.ts';
import { storedDay } from '../../../db/index.ts';
import { type PlanProblem, rungById } from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

describe('a reply to something that cannot be used', () => {
  it('names each bad line of a roster and what to do', () => {
    const { text } = roster.rosterProblems([
      { kind: 'long', line: 1, value: 'Wren of the Long Meadow by the River', length: 36 },
      { kind: 'twice', line: 4, value: 'Otto', firstLine: 2 },
      { kind: 'present', line: 5, value: 'Juniper' },
    ]);
    expect(text.split('\n').slice(1)).toEqual([
      'Line 1: “Wren of the Long Mea…” has 36 characters, at most 30. Shorten it.',
      'Line 4: “Otto” is also on line 2. Add a letter to one of them.',
      'Line 5: “Juniper” is in the class already. Leave it out or add a letter.',
    ]);
  });

  it('shows eight bad lines and counts the others', () => {
    const problems = Array.from({ length: 11 }, (_, at) => {
      return { kind: 'present', line: at + 1, value: 'Otto' } as const;
    });
    const lines = roster.rosterProblems(problems).text.split('\n');
    expect(lines).toHaveLength(10);
    expect(lines.at(-1)).toBe('and 3 more');
  });

  it('never repeats so much that it would not fit in a message', () => {
    const typed = `${'9'.repeat(3_990)}👩‍🚀`;
    for (const text of [
      badTime(typed, '06:00', '20:00'),
      texts.badClassTime(typed),
      texts.badZone(typed),
      badBreak('date', typed, null),
      badBreak('order', typed, null),
    ]) {
      expect(text.text).toContain(`“${'9'.repeat(60)}…”`);
      expect(text.text.length).toBeLessThan(300);
    }
  });

  it('asks for a time when none was sent', () => {
    expect(badTime('', '06:00', '20:00').text).toBe(
      'Please add a time.\nSend a time from 06:00 to 20:00, like this: /time 18:15',
    );
  });

  it('says how long a break is that is too long', () => {
    expect(badBreak('long', '130', null).text).toMatch(
      /^130 days are too long for a break, at most 120\.\n/,
    );
  });

  it.each<[PlanProblem['kind'], string]>([
    ['cards', 'Part 3: 25 cards; from 3 to 20 fit.'],
    ['seconds', 'Part 3: 25 seconds; from 3 to 20 fit.'],
    ['too_many_parts', '25 parts are too many: at most 20. Remove one.'],
  ])('names the part of a plan, the value and the range: %s', (kind, words) => {
    expect(planProblem({ kind, part: 2, value: '25', min: 3, max: 20 })).toBe(words);
  });
});

describe('what a teacher sees', () => {
  it('warns that nothing goes out while there is no plan', () => {
    const home = { schoolClass: kingfisher, children: 1, joined: 1, book: null };
    expect(texts.classHome({ ...home, hasPlan: false }).text).toMatch(/nothing goes out\.$/);
    expect(texts.classHome({ ...home, hasPlan: true }).text).not.toContain('No week plan');
  });

  it('shortens a break’s title, so that the list of breaks always fits', () => {
    const title = 'Half term '.repeat(400);
    const first = storedDay('2026-10-12');
    const { text } = breakList(kingfisher, [{ id: 'x', title, first, last: first }]);
    expect(text).toContain('Half term Half term Half term…: Mon');
    expect(text.length).toBeLessThan(200);
  });

  it('tells a step’s usual size with its nouns', () => {
    const rung = rungById('counting.fives');
    if (!rung) throw new Error('counting.fives is a rung');
    const basis = { grade: null, statement: null, usualIn: [] };
    const { text } = planPartScreen({ rung: rung.id, cards: 8, seconds: 4 }, rung, basis);
    expect(text.split('\n').slice(0, 2)).toEqual([
      'counting in fives to 200: 8 numbers, 4 s each',
      'Usual size: 10 numbers, 3 s each.',
    ]);
  });
});
