import fc from 'fast-check';
import { test } from 'vitest';
import {
  addDays,
  type Break,
  chooseDrillDay,
  decideNudge,
  drillDay,
  type EveningStatus,
  everySchoolDay,
  type FamilyPace,
  familyJoins,
  familyStops,
  keepDaily,
  letGo,
  mayPrompt,
  mondayOf,
  pauseDrill,
  reviewPace,
  type SchoolDay,
  START_PACE,
  silentRun,
  startAgain,
  TELL_DAYS,
  type Weekday,
  weekdayOf,
} from '../../../drills/index.ts';
import { MONDAY } from '../support/pace-days.ts';

const RANK = { daily: 0, three: 1, one: 2 } as const;
const MOST_A_WEEK = { daily: 7, three: 3, one: 1 } as const;

/** The state machine with everything that happened, as the service has it stored. */
interface Real {
  pace: FamilyPace;
  today: SchoolDay;
  evenings: { day: SchoolDay; status: EveningStatus }[];
  nudges: SchoolDay[];
  /** When the teacher was told of fewer evenings, and whether that message arrived. */
  told: Map<SchoolDay, boolean>;
}

/** What a family and a teacher said, written down in the plainest way, to hold the machine against. */
interface Model {
  weekdays: readonly Weekday[];
  breaks: readonly Break[];
  chosen: Set<Weekday>;
  pausedUntil: SchoolDay | null;
  gone: boolean;
  kept: boolean;
  /** Evenings in a row that came and went without an answer, since the family was last heard from. */
  unanswered: number;
  /** The same since the rate last changed. */
  unansweredAtRate: number;
}

type Step = fc.Command<Model, Real>;

function holds(condition: boolean, rule: string, real: Real): void {
  if (!condition) throw new Error(`${rule} on ${real.today}: ${JSON.stringify(real.pace)}`);
}

function heard(model: Model): void {
  model.unanswered = 0;
  model.unansweredAtRate = 0;
  model.kept = false;
}

/** On how many days each rate was reached, so that the test cannot pass without ever leading there. */
const reached = { daily: 0, three: 0, one: 0 };

/** Days with their review, their drill, their nudge and their answer. */
class Days implements Step {
  readonly #count: number;
  readonly #answer: EveningStatus;
  readonly #arrives: boolean;
  constructor(count: number, answer: EveningStatus, arrives: boolean) {
    this.#count = count;
    this.#answer = answer;
    this.#arrives = arrives;
  }
  check = () => true;
  toString = () =>
    `${this.#count} days, ${this.#answer}${this.#arrives ? '' : ', teacher not told'}`;

  run(model: Model, real: Real): void {
    for (let day = 0; day < this.#count; day += 1) {
      real.today = addDays(real.today, 1);
      const isSchool = isSchoolDay(model, real.today);
      if (isSchool) this.#review(model, real);
      reached[real.pace.rate] += 1;
      const comes = this.#drill(model, real, isSchool);
      if (comes) this.#evening(model, real);
    }
  }

  #review(model: Model, real: Real): void {
    const { pace: before, today, evenings } = real;
    const { announced } = before;
    const told = announced !== null && real.told.get(announced.on) === true;
    real.pace = reviewPace(before, { today, evenings, weekdays: model.weekdays, told });
    const { rate, announced: now } = real.pace;
    holds(RANK[rate] >= RANK[before.rate], 'a review never brings more evenings', real);
    const enough = 2 * Math.min(MOST_A_WEEK[before.rate], model.chosen.size);
    if (RANK[rate] > RANK[before.rate]) {
      holds(told, 'nothing steps down before the teacher was told', real);
      holds(
        announced !== null && today >= addDays(announced.on, TELL_DAYS),
        'the teacher has three days',
        real,
      );
      holds(model.unansweredAtRate >= enough, 'fewer evenings follow two silent weeks', real);
      model.unansweredAtRate = 0;
    }
    if (now?.on === today && now !== announced) {
      holds(model.unansweredAtRate >= enough, 'two silent weeks are announced', real);
      holds(!model.kept, 'nothing is announced while the teacher keeps it', real);
      real.told.set(today, this.#arrives);
    }
  }

  #drill(model: Model, real: Real, isSchool: boolean): boolean {
    const { pace, today } = real;
    const monday = mondayOf(today);
    const cameThisWeek = real.evenings.filter(({ day }) => day >= monday).length;
    const { weekdays, breaks } = model;
    const comes = drillDay(pace, { day: today, calendar: { weekdays, breaks }, cameThisWeek });
    const paused = model.pausedUntil !== null && today < model.pausedUntil;
    if (comes === 'comes') {
      holds(isSchool, 'the drill comes on school days', real);
      holds(!paused && !model.gone, 'nothing comes in a pause or after stop', real);
      holds(model.chosen.has(weekdayOf(today)), 'it comes on the days the family chose', real);
      holds(cameThisWeek < MOST_A_WEEK[pace.rate], 'it comes as often as said at most', real);
    } else if (pace.rate === 'daily') {
      const expected = isSchool && !paused && !model.gone && model.chosen.has(weekdayOf(today));
      holds(!expected, 'at full rate it comes on every chosen school day', real);
    }
    return comes === 'comes';
  }

  #evening(model: Model, real: Real): void {
    const status = this.#answer;
    if (status === 'silent') nudge(real);
    real.evenings.push({ day: real.today, status });
    if (status === 'practised' || status === 'not_today') heard(model);
    if (status === 'silent') {
      model.unanswered += 1;
      model.unansweredAtRate += 1;
    }
  }
}

function nudge(real: Real): void {
  const { pace, today, evenings, nudges } = real;
  const before = evenings.filter(({ day }) => pace.heard === null || day > pace.heard);
  const { nudge: isDue } = decideNudge({
    marked: false,
    declined: false,
    alreadyNudged: nudges.includes(today),
    reminded: false,
    paused: false,
    silentRunBefore: silentRun(before),
  });
  const week = nudges.filter((day) => day >= mondayOf(today));
  const todays = nudges.filter((day) => day === today);
  if (isDue && mayPrompt({ today: todays.length, thisWeek: week.length })) nudges.push(today);
  holds(
    nudges.filter((day) => day >= mondayOf(today)).length <= 3,
    'three nudges a week at most',
    real,
  );
  holds(nudges.filter((day) => day === today).length <= 1, 'one nudge an evening at most', real);
}

function isSchoolDay({ weekdays, breaks }: Model, day: SchoolDay): boolean {
  return (
    weekdays.includes(weekdayOf(day)) &&
    !breaks.some(({ first, last }) => first <= day && day <= last)
  );
}

/** Days on which the service is down: nothing is reviewed and nothing comes. */
class Outage implements Step {
  readonly #days: number;
  constructor(days: number) {
    this.#days = days;
  }
  check = () => true;
  toString = () => `outage(${this.#days})`;
  run(_model: Model, real: Real): void {
    real.today = addDays(real.today, this.#days);
  }
}

/** Something a person says, with what follows for the model. */
class Says implements Step {
  readonly #what: string;
  readonly #check: (model: Readonly<Model>) => boolean;
  readonly #run: (model: Model, real: Real) => void;
  constructor(
    what: string,
    run: (model: Model, real: Real) => void,
    check: (model: Readonly<Model>) => boolean = (model) => !model.gone,
  ) {
    this.#what = what;
    this.#check = check;
    this.#run = run;
  }
  check = (model: Readonly<Model>) => this.#check(model);
  toString = () => this.#what;
  run(model: Model, real: Real): void {
    this.#run(model, real);
  }
}

const pause = (days: number) =>
  new Says(`pause(${days})`, (model, real) => {
    const until = addDays(real.today, days);
    real.pace = pauseDrill(real.pace, until, real.today);
    model.pausedUntil = until;
    heard(model);
    holds(real.pace.announced === null, 'whoever pauses is not silent', real);
  });

const again = () =>
  new Says('start again', (model, real) => {
    const wasPaused = model.pausedUntil !== null && real.today < model.pausedUntil;
    real.pace = startAgain(real.pace, real.today);
    if (wasPaused) heard(model);
    model.pausedUntil = null;
  });

const tick = (weekday: Weekday, on: boolean) =>
  new Says(`${on ? 'tick' : 'untick'}(${weekday})`, (model, real) => {
    const changes = model.weekdays.includes(weekday) && model.chosen.has(weekday) !== on;
    const { today } = real;
    const chosen = chooseDrillDay(real.pace, { weekday, on, ofClass: model.weekdays, today });
    const isLast = changes && !on && model.chosen.size === 1;
    holds((chosen === null) === isLast, 'the last day alone cannot be taken out', real);
    if (!changes || isLast || !chosen) return;
    real.pace = chosen;
    if (on) model.chosen.add(weekday);
    else model.chosen.delete(weekday);
    heard(model);
    holds(chosen.rate === 'daily', 'whoever chooses days gets them all', real);
  });

const everyDay = () =>
  new Says('every school day', (model, real) => {
    const before = real.pace;
    real.pace = everySchoolDay(before, real.today);
    model.chosen = new Set(model.weekdays);
    if (real.pace !== before) heard(model);
    const { rate, announced, days } = real.pace;
    holds(rate === 'daily' && announced === null && days === null, 'one tap brings it back', real);
  });

const keep = () =>
  new Says('teacher keeps', (model, real) => {
    const before = real.pace;
    real.pace = keepDaily(before, real.today);
    holds(real.pace.rate === 'daily', 'the teacher can keep it daily', real);
    if (real.pace === before) return;
    // Where the family has answered this very evening there is nothing to keep.
    model.kept = !real.evenings.some(
      ({ day, status }) => day === real.today && (status === 'practised' || status === 'not_today'),
    );
    model.unansweredAtRate = 0;
  });

const release = () =>
  new Says('teacher lets go', (model, real) => {
    if (real.pace.kept) {
      model.unansweredAtRate = model.unanswered;
      real.told.set(real.today, true);
    }
    model.kept = false;
    real.pace = letGo(real.pace, real.today);
  });

const stop = () =>
  new Says('stop', (model, real) => {
    real.pace = familyStops(real.pace);
    model.gone = true;
  });

const join = () =>
  new Says(
    'join',
    (model, real) => {
      real.pace = familyJoins(real.pace, real.today);
      Object.assign(model, { gone: false, pausedUntil: null, chosen: new Set(model.weekdays) });
      heard(model);
      holds(real.pace.rate === 'daily', 'whoever joins anew starts afresh', real);
    },
    (model) => model.gone,
  );

const weekday = fc.integer({ min: 1, max: 7 }).map((n) => n as Weekday);
const arrives = fc.integer({ min: 0, max: 4 }).map((n) => n > 0);
// Silence is what leads anywhere, so most days have it.
const silence = fc
  .tuple(fc.integer({ min: 1, max: 24 }), arrives)
  .map(([count, isTold]) => new Days(count, 'silent', isTold));
const others = fc
  .tuple(
    fc.integer({ min: 1, max: 3 }),
    fc.constantFrom<EveningStatus>('practised', 'not_today', 'unsent'),
    arrives,
  )
  .map(([count, answer, isTold]) => new Days(count, answer, isTold));
const commands = [
  ...Array.from({ length: 10 }, () => silence),
  others,
  fc.integer({ min: 1, max: 9 }).map((days) => new Outage(days)),
  fc.integer({ min: 1, max: 30 }).map(pause),
  fc.constant(null).map(again),
  fc.tuple(weekday, fc.boolean()).map(([each, on]) => tick(each, on)),
  fc.constant(null).map(everyDay),
  fc.constant(null).map(keep),
  fc.constant(null).map(release),
  fc.constant(null).map(stop),
  fc.constant(null).map(join),
];

const classes = fc.record({
  weekdays: fc.subarray<Weekday>([1, 2, 3, 4, 5, 6, 7], { minLength: 1 }),
  breakAfter: fc.integer({ min: 3, max: 30 }),
  breakDays: fc.integer({ min: 1, max: 20 }),
});

test('whatever a family, a teacher and an outage do, the drill, the nudges and what the teacher is told keep their bounds', () => {
  fc.assert(
    fc.property(
      classes,
      fc.commands(commands, { maxCommands: 40, size: 'max' }),
      ({ weekdays, breakAfter, breakDays }, steps) => {
        const first = addDays(MONDAY, breakAfter);
        const real: Real = {
          pace: START_PACE,
          today: MONDAY,
          evenings: [],
          nudges: [],
          told: new Map(),
        };
        const model: Model = {
          weekdays,
          breaks: [{ first, last: addDays(first, breakDays) }],
          chosen: new Set(weekdays),
          pausedUntil: null,
          gone: false,
          kept: false,
          unanswered: 0,
          unansweredAtRate: 0,
        };
        fc.modelRun(() => ({ model, real }), steps);
      },
    ),
    { numRuns: 300 },
  );
  if (Object.values(reached).some((count) => count === 0)) {
    throw new Error(`some rate was never reached: ${JSON.stringify(reached)}`);
  }
});
