import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import * as screens from '../../../bot/screens/plan-screens.ts';
import type { Screen } from '../../../bot/screens/screen.ts';
import type { SchoolClass } from '../../../db/index.ts';
import {
  checkPlan,
  NO_SOURCE,
  PLAN_LIMITS,
  type PlanPart,
  type ProfileId,
  RUNGS,
  type RungId,
  rungById,
  usualRungs,
} from '../../../drills/index.ts';
import { kingfisher } from '../support/kingfisher.ts';

const actionsOf = ({ buttons }: Screen) => buttons.flat().map(({ data }) => unpack(data));
const kindsOf = (screen: Screen) => actionsOf(screen).map((action) => action?.kind);
const labelsOf = ({ buttons }: Screen) => buttons.flat().map(({ label }) => label);
const parts: PlanPart[] = RUNGS.map(({ id, cards, seconds }) => ({ rung: id, cards, seconds }));

describe('the week plan', () => {
  it('has a button for each part, and can be used only when it is changed', () => {
    const plan = { parts: parts.slice(0, 2) };
    const kinds = ['planPart', 'planPart', 'planAdd', 'curriculum', 'openClass'];
    expect(kindsOf(screens.planScreen(kingfisher, plan, false))).toEqual(kinds);
    expect(kindsOf(screens.planScreen(kingfisher, plan, true))).toEqual(
      kinds.toSpliced(4, 0, 'planUse'),
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
      for (const action of actionsOf(screens.planPartScreen(kingfisher, { parts: [part] }, 0))) {
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
    expect(labelsOf(screens.planPartScreen(kingfisher, { parts: [part] }, 0))).toEqual([
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
    expect(kindsOf(screens.planPartScreen(kingfisher, { parts: [] }, 2))).toEqual(['plan']);
  });
});

describe('where a step is asked for', () => {
  const inGrade = (curriculum: ProfileId, grade: string) => ({ ...kingfisher, curriculum, grade });
  const saidOf = (schoolClass: SchoolClass, rung: RungId) => {
    const plan = { parts: [{ rung, cards: 5, seconds: 3 }] };
    return screens.planPartScreen(schoolClass, plan, 0).text.text.split('\n').slice(2);
  };

  it('is said by the class’s curriculum where the step is usual in its grade', () => {
    expect(saidOf(inGrade('england', '2'), 'bonds.to20')).toEqual([
      'Year 2, England: recall and use + and - facts to 20 fluently; derive related facts to 100.',
      'In our words; England, national curriculum, 2C1.',
    ]);
  });

  it('is said with our doubt where nobody read the document', () => {
    const { statement } = usualRungs('acara', '1', 'counting')[1] ?? {};
    expect(statement?.status).toBe('memory');
    expect(saidOf(inGrade('acara', '1'), 'counting.tens100').at(-1)).toBe(
      'In our words; Australian Curriculum v9, from memory, please check.',
    );
  });

  it('names the other grades of that curriculum where the step is usual in another one', () => {
    expect(saidOf(inGrade('england', '2'), 'doubles.to10')[0]).toBe(
      'Not marked usual in Year 2, England, but in Year 1.',
    );
    expect(saidOf(inGrade('england', '2'), 'counting.threes1000')[0]).toBe(
      'Not marked usual in Year 2, England.',
    );
  });

  it('names four places at most and counts the others, while no grade is chosen', () => {
    const { sources = [] } = rungById('bonds.bridging') ?? {};
    expect(sources.length).toBeGreaterThan(5);
    expect(saidOf(kingfisher, 'bonds.bridging')).toEqual([
      'Asked for, in our words:',
      ...sources.slice(0, 4).map((source) => `• ${source}`),
      `and ${sources.length - 4} other places`,
    ]);
  });

  it('is told in plain words where nobody asks for it', () => {
    expect(rungById('counting.tensoff')?.sources).toEqual([NO_SOURCE]);
    expect(saidOf(kingfisher, 'counting.tensoff')).toEqual([
      'No published source: common practice.',
    ]);
  });
});

it('a part’s button is short, however long its step’s title is', () => {
  for (const part of parts) {
    const [label] = labelsOf(screens.planScreen(kingfisher, { parts: [part] }, false));
    expect([...(label ?? '')].length).toBeLessThanOrEqual(45);
  }
});
