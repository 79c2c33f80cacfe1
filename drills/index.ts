/*
 * What to practise, how a child is doing, what to tell the teacher: pure computation, nothing but its arguments.
 * Read in this order: a plan (evening/week-plan) becomes one child's drill (evening/compose), the drill's marks become
 * memory (memory/fact-memory), and a week of evenings becomes the teacher's digest (digest/summarise-week).
 */

export { type ParsedBreak, parseBreak } from './calendar/break-text.ts';
export {
  addDays,
  type Break,
  daysBetween,
  isSchoolDay,
  nextSchoolDay,
  parseSchoolDay,
  type SchoolCalendar,
  type SchoolDay,
  schoolDaysIn,
  WEEKDAYS,
  type Weekday,
  weekdayOf,
} from './calendar/school-day.ts';
export {
  minutesOf,
  parseTimeOfDay,
  type TimeOfDay,
  timeOfDayFrom,
} from './calendar/time-of-day.ts';
export { decideNudge, type NudgeDecision, type NudgeState } from './digest/nudge.ts';
export { ENOUGH_ASKED } from './digest/propose-step.ts';
export { type EveningStatus, SILENCE_DAYS, silentRun } from './digest/silent-run.ts';
export { summariseWeek } from './digest/summarise-week.ts';
export type {
  Call,
  ChildSummary,
  ChildWeek,
  EveningRecord,
  PartScore,
  StrandSummary,
  Tally,
  WeekInput,
  WeekSummary,
  Wobble,
} from './digest/week.ts';
export { COMPOSER_VERSION, composeEvening, type EveningInput } from './evening/compose.ts';
export type { Drill, DrillPart, FactPart, RunPart } from './evening/drill.ts';
export { askedOf, blueprintOf } from './evening/part-size.ts';
export { createRandom, type Random } from './evening/random.ts';
export { runNumbers } from './evening/run.ts';
export { type Comparison, compareWithBest, scoreFromMissed } from './evening/score.ts';
export {
  checkPlan,
  estimateMinutes,
  maxCards,
  PLAN_LIMITS,
  type PlanPart,
  type PlanProblem,
  type WeekPlan,
} from './evening/week-plan.ts';
export { answerOf } from './facts/answer.ts';
export type { CardFace } from './facts/card-face.ts';
export { faceOf, questionOf } from './facts/face.ts';
export { add, clock, double, type FactId, gap, half, parseFactId, sub } from './facts/fact-id.ts';
export { handAngles } from './facts/hand-angles.ts';
export { isNearTwin } from './facts/near-twin.ts';
export { hasNought } from './facts/nought.ts';
export {
  type FactRung,
  type Rung,
  type RungId,
  type RunRung,
  STRANDS,
  type Strand,
} from './ladder/rung.ts';
export { RUNGS, rungById, rungsOf, strandTitle } from './ladder/rungs.ts';
export { type FactMemory, type Mark, rebuildMemory, remember } from './memory/fact-memory.ts';
