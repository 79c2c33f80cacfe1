import { usualGrades, usualSteps } from '../../../bot/screens/usual-steps.ts';
import { gradeName } from '../../../bot/texts/grades.ts';
import * as titles from '../../../bot/texts/part-title.ts';
import * as plans from '../../../bot/texts/plan.ts';
import * as stands from '../../../bot/texts/plan-stand.ts';
import * as previews from '../../../bot/texts/preview.ts';
import * as terms from '../../../bot/texts/term.ts';
import type { Text } from '../../../bot/texts/words.ts';
import {
  gradesOf,
  makeScheme,
  type PlanPart,
  PROFILES,
  RUNGS,
  type RungId,
  STRANDS,
  weekStarts,
  YEAR_SHARES,
} from '../../../drills/index.ts';
import { day } from '../../drills/support/day.ts';
import { kingfisher } from '../support/kingfisher.ts';

/** The modules whose texts are here. */
export const PLAN_MODULES = [plans, stands, previews, terms, titles] as const;

const HERON = { ...kingfisher, title: 'Heron class 🐦' };
const GRADED = PROFILES.flatMap(({ id }) =>
  gradesOf(id).map((grade) => ({ ...HERON, curriculum: id, grade: grade.id })),
);
const parts: PlanPart[] = RUNGS.map(({ id, cards, seconds }) => ({ rung: id, cards, seconds }));
const MIXED: readonly PlanPart[] = [
  { rung: 'doubles.to10', also: ['halves.to20'], cards: 10, seconds: 3 },
  { rung: 'takeaway.anygap20', also: ['bonds.anygap20', 'times.mixed'], cards: 10, seconds: 3 },
  { rung: 'clock.fivepast', also: ['clock.fiveto', 'clock.quarters'], cards: 6, seconds: 5 },
];
const all = [...parts, ...MIXED];

/** What every grade of every curriculum says of a step, and none. */
function everyBasis(rung: RungId): plans.Basis[] {
  return [HERON, ...GRADED].map((schoolClass) => ({
    grade: gradeName(schoolClass),
    statement: usualSteps(schoolClass).get(rung) ?? null,
    usualIn: usualGrades(schoolClass, rung),
  }));
}

const book = { title: 'Pebble Path', pagesADay: 2 };
const STANDS = ([null, 'teacher', 'proposal', 'scheme'] as const).flatMap((draft) =>
  ([null, 'teacher', 'proposal', 'scheme'] as const).flatMap((active) =>
    [null, { week: null, of: 6 }, { week: 3, of: 6 }, { week: 7, of: 6 }].flatMap((term) =>
      [null, book].map((own) => ({ draft, active, term, book: own })),
    ),
  ),
);

const weeks = makeScheme({ curriculum: 'england', grade: '2', weeks: 6 });
const starts = weekStarts(day('2026-09-14'), { weekdays: [1, 2, 3, 4, 5], breaks: [] }, 6);
const TERMS = [null, 1, 3, 7].flatMap((week) =>
  [starts, []].map((known) => ({ weeks, starts: known, week })),
);

type Said = Text | string | null;

/** What the week plan and the term say, by the function's name. */
export const planTexts = (): Readonly<Record<string, readonly Said[]>> => ({
  rungTitle: RUNGS.map(({ id }) => titles.rungTitle(id)),
  strandName: STRANDS.map(titles.strandName),
  strandColumn: STRANDS.map(titles.strandColumn),
  partTitle: all.map(titles.partTitle),
  partInList: all.map(titles.partInList),
  shortPartTitle: all.map(titles.shortPartTitle),
  planLine: all.map(plans.planLine),
  partLines: plans.partLines({ parts: all }),
  planScreen: STANDS.flatMap((stand) =>
    [0, 2, 6].map((size) => stands.planScreen(HERON, { parts: all.slice(-size || 99) }, stand)),
  ),
  partLabel: all.map(plans.partLabel),
  planPartScreen: RUNGS.flatMap((rung) =>
    everyBasis(rung.id).map((basis) =>
      plans.planPartScreen({ rung: rung.id, cards: 3, seconds: 2 }, rung, basis),
    ),
  ),
  mixedPartScreen: MIXED.flatMap((part) =>
    everyBasis(part.rung).map((basis) =>
      plans.mixedPartScreen(part, [{ title: titles.rungTitle(part.rung), basis }]),
    ),
  ),
  alreadyInPlan: [plans.alreadyInPlan(2)],
  noRoomApart: [plans.noRoomApart(8)],
  planInUse: [plans.planInUse()],
  planProblem: (
    [
      'unknown_rung',
      'cards',
      'seconds',
      'empty',
      'too_many_parts',
      'same_rung_twice',
      'too_many_mixed',
      'cannot_mix',
    ] as const
  ).map((kind) => plans.planProblem({ kind, part: 0, value: '7', min: 1, max: 6 })),
  termScreen: TERMS.flatMap((term) => [
    terms.termScreen(HERON, term, { first: 1, shown: 5 }),
    terms.termScreen(HERON, term, { first: 6, shown: 1 }),
  ]),
  termWeek: TERMS.flatMap((term) => [1, 3, 6].map((week) => terms.termWeek(term, week))),
  newTerm: GRADED.map((each) => terms.newTerm(each, gradeName(each) ?? '', 12)),
  termNeedsGrade: [terms.termNeedsGrade(HERON)],
  shareButton: YEAR_SHARES.map(terms.shareButton),
  weeksButton: [1, 10].map(terms.weeksButton),
  makeTermButton: [terms.makeTermButton(day('2026-09-14'))],
  termWeekButton: [terms.termWeekButton(3)],
  termMovedOn: [terms.termMovedOn()],
  previewName: [previews.previewName()],
  previewNote: [false, true].map(previews.previewNote),
  previewOver: [previews.previewOver()],
});
