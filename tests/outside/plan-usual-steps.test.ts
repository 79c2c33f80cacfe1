import { describe, expect, it } from 'vitest';
import { unpack } from '../../bot/callback/codec.ts';
import { planPartScreen } from '../../bot/screens/plan-part-screen.ts';
import { firstStepsScreen } from '../../bot/screens/step-screens.ts';
import type { ProfileId, RungId, Strand } from '../../drills/index.ts';
import { kingfisher } from '../bot/support/kingfisher.ts';

const inGrade = (curriculum: ProfileId, grade: string) => ({ ...kingfisher, curriculum, grade });

/** The marked steps a teacher is shown first. */
function marked(curriculum: ProfileId, grade: string, strand: Strand): string[] {
  const { buttons } = firstStepsScreen(
    inGrade(curriculum, grade),
    { part: 0, present: [] },
    strand,
  );
  return buttons.flat().flatMap(({ label, data }) => {
    return unpack(data)?.kind === 'planRung' && label.startsWith('● ') ? [label.slice(2)] : [];
  });
}

describe('the steps a teacher is shown first', () => {
  // Source: National curriculum in England, mathematics programmes of study (Department for Education, 2013), Year 2: "count in
  // steps of 2, 3, and 5 from 0, and in tens from any number, forward and backward". Up to 100 is our reading.
  it('in England’s Year 2 count in twos, threes, fives, and tens from any number, both ways', () => {
    const shown = marked('england', '2', 'counting');
    const words = new Set(shown.map((label) => /in (\w+)/.exec(label)?.[1]));
    expect([...words].toSorted()).toEqual(['fives', 'tens', 'threes', 'twos']);
    for (const step of ['twos', 'threes', 'fives', 'tens (13, 23)']) {
      expect(shown).toContain(`in ${step} to 100`);
    }
    for (const step of ['twos', 'threes', 'fives', 'tens (33, 23)', 'tens']) {
      expect(shown).toContain(`back in ${step} within 100`);
    }
  });

  // Source: the same, Year 2: "recall and use multiplication and division facts for the 2, 5 and 10 multiplication tables".
  it('in England’s Year 2 are the two, five and ten times tables, and in Year 1 none', () => {
    expect(marked('england', '2', 'times').toSorted()).toEqual([
      'five times table',
      'ten times table',
      'two times table',
      'two, five and ten times tables',
    ]);
    expect(marked('england', '1', 'times')).toEqual([]);
  });

  // Source: the same, Year 1: "tell the time to the hour and half past the hour".
  it('in England’s Year 1 are clocks of the hour and half past only', () => {
    expect(marked('england', '1', 'clock')).toEqual([
      'clock (o’clock)',
      'clock (half past)',
      'clock (o’clock and half past)',
    ]);
  });

  // Source: Common Core State Standards for Mathematics (NGA and CCSSO, 2010), K.OA.A.5: "Fluently add and subtract within 5".
  it('in Kindergarten of the Common Core take away within five, and the part says its code', () => {
    expect(marked('ccss', 'K', 'takeaway')).toEqual(['take away within 5']);
    const rung: RungId = 'takeaway.within5';
    const plan = { parts: [{ rung, cards: 10, seconds: 3 }] };
    const { text } = planPartScreen(inGrade('ccss', 'K'), plan, 0).text;
    expect(text).toContain('Kindergarten, Common Core: fluently add and subtract within 5.');
    expect(text).toContain('K.OA.A.5');
  });
});
