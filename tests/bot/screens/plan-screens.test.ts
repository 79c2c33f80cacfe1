import { describe, expect, it } from 'vitest';
import { unpack } from '../../../bot/callback/codec.ts';
import { planPartScreen } from '../../../bot/screens/plan-part-screen.ts';
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

const view = (rest: Partial<screens.PlanView> = {}): screens.PlanView => ({
  schoolClass: kingfisher,
  plan: { parts: parts.slice(0, 2) },
  draft: null,
  active: 'teacher',
  term: null,
  book: null,
  ...rest,
});
const FULL = { parts: parts.slice(0, PLAN_LIMITS.parts.max) };
const textOf = (rest: Partial<screens.PlanView>) => screens.planScreen(view(rest)).text.text;

describe('the week plan', () => {
  it('has a button for each part, and can be used or dropped only when it is changed', () => {
    const kinds = ['planPart', 'planPart', 'planAdd', 'planSource', 'planSource', 'curriculum'];
    const ways = ['preview', 'term', 'openClass'];
    expect(kindsOf(screens.planScreen(view()))).toEqual([...kinds, ...ways]);
    expect(kindsOf(screens.planScreen(view({ draft: 'teacher' })))).toEqual([
      ...kinds.toSpliced(3, 0, 'planUse', 'planDrop'),
      ...ways,
    ]);
  });

  it('offers the term’s plan only while there is a term, and last week’s only once one was in use', () => {
    const term = { week: 2, of: 10 };
    const all = ['As last week', 'As proposed', 'As the term'];
    const offered = (rest: Partial<screens.PlanView>) =>
      labelsOf(screens.planScreen(view(rest))).filter((label) => label.startsWith('As '));
    expect(offered({ term })).toEqual(all);
    expect(offered({})).toEqual(all.slice(0, 2));
    expect(offered({ active: null, draft: 'teacher' })).toEqual([]);
  });

  it('takes no seventh part, and says why', () => {
    expect(kindsOf(screens.planScreen(view({ plan: FULL })))).not.toContain('planAdd');
    expect(textOf({ plan: FULL })).toContain('6 parts are the most: remove one to add another.');
    expect(textOf({})).not.toContain('are the most');
  });

  it('is under ten lines and ten rows at its fullest', () => {
    for (const draft of [null, 'teacher', 'scheme'] as const) {
      for (const act of [null, kingfisher.id]) {
        const screen = screens.planScreen(
          view({
            plan: FULL,
            draft,
            act,
            active: 'scheme',
            term: { week: 3, of: 10 },
            book: { title: 'Pebble Path', pagesADay: 2 },
          }),
        );
        expect(screen.text.text.split('\n').length).toBeLessThan(10);
        expect(screen.buttons.length).toBeLessThanOrEqual(10);
        expect(kindsOf(screen)).toContain(act ? 'undo' : 'curriculum');
      }
    }
  });

  it('without parts can be neither previewed nor is there anything to drop', () => {
    const kinds = kindsOf(screens.planScreen(view({ plan: { parts: [] }, active: null })));
    expect(kinds).toEqual(['planAdd', 'firstPlan', 'curriculum', 'term', 'openClass']);
  });
});

describe('where the plan comes from', () => {
  const term = { week: 3, of: 10 };

  it('is said of the plan in use', () => {
    expect(textOf({})).toContain('In use.');
    expect(textOf({ active: 'proposal' })).toContain('In use, as the digest proposed.');
    expect(textOf({ active: 'scheme', term })).toContain('from the term: week 3 of 10.');
    expect(textOf({ term })).toContain('In use this week instead of the term’s week 3 of 10.');
    expect(textOf({ term: { ...term, week: null } })).toContain('until the term begins');
  });

  it('is said of changes that are not in use yet', () => {
    expect(textOf({ draft: 'teacher' })).toContain('Changed, not in use yet.');
    expect(textOf({ draft: 'proposal' })).toContain('As the digest proposes, not in use yet.');
    expect(textOf({ draft: 'scheme', term })).toContain('As in the term, not in use yet.');
  });

  it('is the last week of a term that is over', () => {
    const over = { active: 'scheme', term: { week: 11, of: 10 } } as const;
    expect(textOf(over)).toContain('The term is over; its last plan stays.');
  });

  it('stands beside the pages of the workbook', () => {
    const book = { title: 'Pebble Path', pagesADay: 2 };
    expect(textOf({ book })).toMatch(
      /About \d+ minutes? an evening, then 2 pages of Pebble Path\./,
    );
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
      for (const action of actionsOf(planPartScreen(kingfisher, { parts: [part] }, 0))) {
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
    expect(labelsOf(planPartScreen(kingfisher, { parts: [part] }, 0))).toEqual([
      '− 1 (cards)',
      '+ 1 (cards)',
      '− 5 (cards)',
      '+ 5 (cards)',
      '− 1 second',
      '+ 1 second',
      'Practise something else',
      'Mix in another step',
      'Remove this part',
      'Back',
    ]);
  });

  it('that is mixed can be taken apart, and takes a third step but no fourth', () => {
    const two: PlanPart = { rung: 'doubles.to10', also: ['halves.to10'], cards: 6, seconds: 3 };
    const three: PlanPart = { ...two, also: ['halves.to10', 'bonds.to10'] };
    const shown = (part: PlanPart) => labelsOf(planPartScreen(kingfisher, { parts: [part] }, 0));
    expect(shown(two)).toContain('Mix in another step');
    expect(shown(two)).toContain('✗ halves of even numbers to 10');
    expect(shown(three)).not.toContain('Mix in another step');
    expect(shown(three)).toContain('Keep them apart');
    expect(planPartScreen(kingfisher, { parts: [three] }, 0).buttons.length).toBeLessThan(10);
  });

  it('that counts mixes with nothing', () => {
    const plan = { parts: [{ rung: 'counting.fives', cards: 5, seconds: 3 } as const] };
    expect(labelsOf(planPartScreen(kingfisher, plan, 0))).not.toContain('Mix in another step');
  });

  it('of a week of the term leads back to that week, and its buttons stay in it', () => {
    const plan = { parts: [{ rung: 'bonds.to10', cards: 10, seconds: 3 } as const] };
    const actions = actionsOf(planPartScreen(kingfisher, plan, 1200));
    expect(actions.at(-1)).toEqual({ kind: 'termWeek', classId: kingfisher.id, week: 12 });
    for (const action of actions.slice(0, -1)) {
      expect(action && 'part' in action && Math.floor(action.part / 100)).toBe(12);
    }
  });

  it('that is gone leads back to the plan', () => {
    expect(kindsOf(planPartScreen(kingfisher, { parts: [] }, 2))).toEqual(['plan']);
  });
});

describe('where a step is asked for', () => {
  const inGrade = (curriculum: ProfileId, grade: string) => ({ ...kingfisher, curriculum, grade });
  const saidOf = (schoolClass: SchoolClass, rung: RungId) => {
    const plan = { parts: [{ rung, cards: 5, seconds: 3 }] };
    return planPartScreen(schoolClass, plan, 0).text.text.split('\n').slice(2);
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
    const [label] = labelsOf(screens.planScreen(view({ plan: { parts: [part] } })));
    expect([...(label ?? '')].length).toBeLessThanOrEqual(45);
  }
});
