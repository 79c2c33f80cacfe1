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
export {
  gradesOf,
  isUsual,
  PROFILES,
  type Profile,
  type ProfileId,
  profileById,
  type UsualRung,
  usualRungs,
} from './curriculum/profiles.ts';
export { NO_SOURCE } from './curriculum/sources.ts';
export type { Curriculum, Grade, Statement, Status } from './curriculum/statement.ts';
export type { Growth } from './digest/growth.ts';
export { ENOUGH_ASKED } from './digest/judge-security.ts';
export { decideNudge, type NudgeDecision, type NudgeState } from './digest/nudge.ts';
export type { Proposal } from './digest/propose-step.ts';
export { type EveningStatus, SILENCE_DAYS, silentRun } from './digest/silent-run.ts';
export { summariseWeek } from './digest/summarise-week.ts';
export type {
  Call,
  ChildSummary,
  Named,
  RungSummary,
  StrandSummary,
  Tally,
  WeekSummary,
  Wobble,
} from './digest/summary.ts';
export {
  type ChildWeek,
  type DayScores,
  type EveningRecord,
  HISTORY_DAYS,
  type PartScore,
  type WeekInput,
} from './digest/week.ts';
export { COMPOSER_VERSION, composeEvening, type EveningInput } from './evening/compose.ts';
export type { Drill, DrillPart, FactPart, RunPart } from './evening/drill.ts';
export { askedOf, blueprintOf } from './evening/part-size.ts';
export { createRandom, type Random } from './evening/random.ts';
export { rebuildEvening } from './evening/rebuild.ts';
export { runNumbers } from './evening/run.ts';
export { type Comparison, compareWithBest, scoreFromMissed } from './evening/score.ts';
export {
  cardsIn,
  MISSED_BEFORE_CATCH_UP,
  VARIANTS,
  type Variant,
  variantAfter,
} from './evening/variant.ts';
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
export { difficultyOf } from './facts/difficulty.ts';
export type { Difficulty } from './facts/difficulty-scale.ts';
export { faceOf, questionOf } from './facts/face.ts';
export {
  add,
  clock,
  double,
  type FactId,
  from,
  gap,
  half,
  lead,
  less,
  next,
  parseFactId,
  sub,
  times,
  word,
} from './facts/fact-id.ts';
export { handAngles } from './facts/hand-angles.ts';
export { isNearTwin } from './facts/near-twin.ts';
export { hasNought } from './facts/nought.ts';
export { type Relative, relativesOf } from './facts/relatives.ts';
export { longestRun, runStarts } from './ladder/run-starts.ts';
export {
  type FactRung,
  type Rung,
  type RungId,
  type RunRung,
  STRANDS,
  type Strand,
} from './ladder/rung.ts';
export { type RungEntry, rungTable } from './ladder/rung-table.ts';
export { RUNGS, rungById, rungsOf, strandTitle } from './ladder/rungs.ts';
export { MEMORY_MODEL } from './memory/default-model.ts';
export { type FactMemory, type Mark, rebuildMemory, remember } from './memory/fact-memory.ts';
export type { Evidence, MemoryModel, MemoryState } from './memory/model.ts';
export {
  type RunOutcome,
  runEvidence,
  runSteps,
  type StepEvidence,
} from './memory/run-evidence.ts';
export { type BetaPosterior, betaPosterior } from './statistics/beta-posterior.ts';
export { type Line, type Point, theilSen } from './statistics/theil-sen.ts';
export { type Interval, wilson } from './statistics/wilson.ts';
export { accepts } from './wording/accepts.ts';
export { CARD_WORDS, type CardWords } from './wording/card-words.ts';
export { clockPhrase, clockPhraseVariants, parseClockPhrase } from './wording/clock-phrase.ts';
export type { ClockTime } from './wording/clocks/clock-words.ts';
export { isLanguage, LANGUAGES, type Language } from './wording/language.ts';
export {
  LAST_NUMBER_WORD,
  numberWord,
  numberWordVariants,
  parseNumberWord,
} from './wording/number-word.ts';
