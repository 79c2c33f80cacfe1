/*
 * What to practise, how a child is doing, what to tell the teacher: pure computation, nothing but its arguments.
 * Read in this order: a plan (evening/week-plan) becomes one child's drill (evening/compose), the drill's marks become
 * memory (memory/fact-memory), and a week of evenings becomes the teacher's digest (digest/summarise-week).
 */

export { chanceDone } from './books/chance-done.ts';
export { ENOUGH_EVENINGS, type Pace, paceOf } from './books/pace.ts';
export {
  type ChildLeft,
  type ClassFinish,
  projectClass,
  type ShareDone,
} from './books/project-class.ts';
export { type Finish, projectFinish } from './books/project-finish.ts';
export {
  atPage,
  type BookPages,
  bookInUse,
  type PageSpan,
  pagesForADay,
  pagesLeft,
  pagesLeftUntil,
  type QueuedBook,
} from './books/queue.ts';
export {
  addDays,
  type Break,
  daysBetween,
  isSchoolDay,
  nextSchoolDay,
  numberOf,
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
export { ENOUGH_ASKED, type Level } from './digest/judge-security.ts';
export { FIRST_CALLS } from './digest/list-calls.ts';
export { type ProposedPlan, proposePlan, type StepUp } from './digest/propose-plan.ts';
export type { Proposal } from './digest/propose-step.ts';
export { type EveningStatus, SILENCE_DAYS, silentRun } from './digest/silent-run.ts';
export { isMixed, type MixedScore, splitMixed } from './digest/split-mixed.ts';
export type { StrandChange } from './digest/strand-change.ts';
export { summariseWeek } from './digest/summarise-week.ts';
export type {
  Call,
  ChildSummary,
  Named,
  RungSummary,
  Slower,
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
export { adjustPlan, fewerCards } from './evening/adjust-plan.ts';
export { type Adjustment, isAdjusted, UNADJUSTED } from './evening/adjustment.ts';
export { drawFacts } from './evening/choose-mixed.ts';
export { COMPOSER_VERSION, composeEvening, type EveningInput } from './evening/compose.ts';
export type { Drill, DrillPart, FactPart, RunPart } from './evening/drill.ts';
export { askedOf, blueprintOf, mixKey } from './evening/part-size.ts';
export {
  canMix,
  MIXED_RUNGS,
  mixIn,
  type PlanPart,
  partOf,
  rungOfFact,
  rungsInPart,
} from './evening/plan-part.ts';
export { createRandom, type Random } from './evening/random.ts';
export { rebuildEvening } from './evening/rebuild.ts';
export { runNumbers } from './evening/run.ts';
export { samePlan } from './evening/same-plan.ts';
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
  maxCardsOf,
  PLAN_LIMITS,
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
export {
  type GreetingChoices,
  type GreetingDays,
  type GreetingTimes,
  greetingChoices,
  isGreetingDue,
  NO_LAST_DAY,
  usualDays,
} from './greeting/greeting-days.ts';
export { neighbourRung } from './ladder/neighbour-rung.ts';
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
export { type DrillDay, drillDay, usualWeekdays } from './pace/drill-day.ts';
export {
  DRILL_RATES,
  type DrillRate,
  drillWeekdays,
  type FamilyPace,
  isPaused,
  START_PACE,
} from './pace/family-pace.ts';
export {
  chooseDrillDay,
  type DrillDayChoice,
  everySchoolDay,
  familyJoins,
  familyStops,
  LONGEST_PAUSE_DAYS,
  pauseDrill,
  pauseProblem,
  startAgain,
} from './pace/family-says.ts';
export { decideNudge, type NudgeDecision, type NudgeState } from './pace/nudge.ts';
export { type PaceStand, paceStand } from './pace/pace-stand.ts';
export { mayPrompt, type PromptsHad } from './pace/prompts.ts';
export { type PaceLook, REVIEW_DAYS, reviewPace, TELL_DAYS } from './pace/review-pace.ts';
export { keepDaily, letGo } from './pace/teacher-says.ts';
export type { ChildPast, PastDay } from './report/child-past.ts';
export { factsToPractise } from './report/facts-to-practise.ts';
export { type Month, monthDue, monthOfDay, termStart } from './report/month-due.ts';
export { type MonthReport, reportMonth } from './report/month-steps.ts';
export { type ChildReport, reportChild } from './report/report-child.ts';
export type { StepReport, StrandReport } from './report/report-strand.ts';
export { firstPlan, yearShare } from './scheme/first-plan.ts';
export {
  makeScheme,
  PARTS_A_WEEK,
  TERM_WEEKS,
  type TermWish,
  YEAR_SHARES,
  type YearShare,
} from './scheme/make-scheme.ts';
export {
  mondayOf,
  schoolDayBefore,
  shiftedStart,
  weekOf,
  weekStarts,
} from './scheme/term-weeks.ts';
export { type BetaPosterior, betaPosterior } from './statistics/beta-posterior.ts';
export { newcombe } from './statistics/newcombe.ts';
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
