import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import * as screens from '../../../bot/screens/plan-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import { checkPlan, PLAN_LIMITS, type PlanPart, RUNGS, STRANDS } from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const classId = kingfisher.id;
const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const kindsOf = (screen: Screen) => actionsOf(screen).map((action) => action?.kind);
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const parts: PlanPart[] = RUNGS.map(({ id, cards, seconds }) => ({ rung: id, cards, seconds }));

describe('the week plan', () => {
  it('has a button for each part, and can be used only when it is changed', () => {
    const plan = { parts: parts.slice(0, 2) };
    const kinds = ['planPart', 'planPart', 'planAdd', 'openClass'];
    expect(kindsOf(screens.planScreen(kingfisher, plan, false))).toEqual(kinds);
    expect(kindsOf(screens.planScreen(kingfisher, plan, true))).toEqual(
      kinds.toSpliced(3, 0, 'planUse'),
    );
  });

  it('takes no seventh part', () => {
    const plan = { parts: parts.slice(0, PLAN_LIMITS.parts.max) };
    expect(kindsOf(screens.planScreen(kingfisher, plan, false))).not.toContain('planAdd');
  });
});

describe('a part of the plan', () => {
  const sizes = parts.flatMap((part) =>
    [3, 4, 5, 10, 11, 15, 19, 20].flatMap((cards) =>
      [2, 3, 14, 15].map((seconds) => ({ ...part, cards, seconds })),
    ),
  );

  it('never offers a step to a size the plan would refuse', () => {
    for (const part of sizes.filter((each) => checkPlan({ parts: [each] }).length === 0)) {
      for (const action of actionsOf(screens.planPartScreen(classId, { parts: [part] }, 0))) {
        const next =
          action?.kind === 'planCards'
            ? { ...part, cards: action.cards }
            : action?.kind === 'planSeconds'
              ? { ...part, seconds: action.seconds }
              : part;
        expect(checkPlan({ parts: [next] })).toEqual([]);
      }
    }
  });

  it('says what a step does', () => {
    const part: PlanPart = { rung: 'bonds.to10', cards: 10, seconds: 3 };
    expect(labelsOf(screens.planPartScreen(classId, { parts: [part] }, 0))).toEqual([
      '− 1 (cards)',
      '+ 1 (cards)',
      '− 5 (cards)',
      '+ 5 (cards)',
      '− 1 second',
      '+ 1 second',
      'Practise something else',
      'Remove this part',
      'Back',
    ]);
  });

  it('that is gone leads back to the plan', () => {
    expect(kindsOf(screens.planPartScreen(classId, { parts: [] }, 2))).toEqual(['plan']);
  });
});

describe('choosing', () => {
  it('offers every strand and the way back', () => {
    const actions = actionsOf(screens.chooseStrandScreen(classId, 1));
    expect(actions).toEqual([
      ...STRANDS.map((strand) => ({ kind: 'planStrand', classId, part: 1, strand })),
      { kind: 'plan', classId },
    ]);
  });

  it.each(STRANDS)('offers every step of %s, and the other strands', (strand) => {
    const own = RUNGS.filter((rung) => rung.strand === strand);
    expect(actionsOf(screens.chooseRungScreen(classId, 1, strand))).toEqual([
      ...own.map(({ id }) => ({ kind: 'planRung', classId, part: 1, rung: id })),
      { kind: 'planStrand', classId, part: 1, strand: 'all' },
      { kind: 'plan', classId },
    ]);
  });
});
