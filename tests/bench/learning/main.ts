/*
 * npm run bench:learning. Does the choice of cards teach? Simulated children practise for a term under several ways of
 * choosing; what they truly know at the end is counted. Everything follows from seeds: two runs print the same.
 */
import type { ClassTerm, LearnerName } from './class-term.ts';
import { type Classes, compare, type Line } from './comparison.ts';
import { type Options, readOptions } from './options.ts';
import { NEAREST_ORACLE } from './oracle.ts';
import { BASELINE, OURS, POLICIES } from './policies.ts';
import { runClasses } from './run-classes.ts';
import { factsIn, STEADY, STEPPED } from './schedule.ts';
import type { Conditions } from './simulate.ts';
import { LEGEND, renderTable } from './table.ts';

interface Section {
  readonly title: string;
  readonly conditions: Conditions;
  readonly policies: readonly string[];
  readonly children: number;
  readonly seeds: number;
}

const LEARNERS: readonly LearnerName[] = ['activation', 'power'];
const MISSED = 0.2;
const SLIPS = 0.03;

const options = optionsOrEnd();
for (const line of headOf(options)) print(line);
for (const section of sectionsOf(options)) {
  const lines = await linesOf(section, options);
  for (const [at, learner] of LEARNERS.entries()) {
    print(`\n${section.title}; learner: ${learner}; ${section.children} children\n`);
    print(renderTable(lines[at] ?? []));
  }
}

/** A wrong flag is answered in one line, without a stack. */
function optionsOrEnd(): Options {
  try {
    return readOptions(process.argv.slice(2));
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exit(1);
  }
}

function headOf({ children, days, seeds, seedPrefix }: Options): readonly string[] {
  return [
    `${children} children, ${days} school days, ${seeds} seeds (${seedPrefix}-1 to ${seedPrefix}-${seeds}).`,
    `${100 * MISSED} % of evenings missed, ${100 * SLIPS} % of marks slip, only missed cards are tapped.`,
    `Plan: ${planText(STEADY)}; ${factsIn(STEADY).length} facts.`,
    `Other plan: ${planText(STEPPED)}; ${factsIn(STEPPED).length} facts.`,
    '',
    ...LEGEND,
  ];
}

function planText({ plans }: typeof STEADY): string {
  return plans
    .map(({ parts }) => parts.map(({ rung, cards }) => `${cards} of ${rung}`).join(', '))
    .join('; then ');
}

/** The main table, then other conditions, with a sixth of the children and only the policies that matter. */
function sectionsOf({ children, seeds, days }: Options): readonly Section[] {
  const usual = { schedule: STEADY, days, missed: MISSED, slips: SLIPS };
  const few = {
    policies: [BASELINE, OURS, NEAREST_ORACLE],
    children: Math.ceil(children / 6),
    seeds,
  };
  return [
    { title: 'Main', conditions: usual, policies: [...POLICIES.keys()], children, seeds },
    {
      title: 'Other plan, new every third of the term',
      conditions: { ...usual, schedule: STEPPED },
      ...few,
    },
    { title: '5 % of evenings missed', conditions: { ...usual, missed: 0.05 }, ...few },
    { title: 'No slips', conditions: { ...usual, slips: 0 }, ...few },
    { title: '10 % of marks slip', conditions: { ...usual, slips: 0.1 }, ...few },
  ];
}

/** The lines of each learner's table. */
async function linesOf(section: Section, { workers, seedPrefix }: Options): Promise<Line[][]> {
  const { policies, conditions, children, seeds } = section;
  const terms = LEARNERS.flatMap((learner) =>
    policies.flatMap((policy) =>
      Array.from(
        { length: seeds },
        (_, at): ClassTerm => ({
          ...conditions,
          learner,
          policy,
          children,
          seed: `${seedPrefix}-${at + 1}`,
        }),
      ),
    ),
  );
  const outcomes = await runClasses(terms, workers);
  const classesOf = (learner: LearnerName, policy: string): Classes =>
    outcomes.filter((_, at) => terms[at]?.learner === learner && terms[at]?.policy === policy);
  return LEARNERS.map((learner) =>
    policies.map((policy) =>
      compare(
        policy,
        classesOf(learner, policy),
        classesOf(learner, BASELINE),
        classesOf(learner, NEAREST_ORACLE),
      ),
    ),
  );
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
