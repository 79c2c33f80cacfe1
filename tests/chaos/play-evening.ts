import { setTimeout as delay } from 'node:timers/promises';
import { instantAt } from '../../db/index.ts';
import type { Random, SchoolDay } from '../../drills/index.ts';
import { time } from '../support/term.ts';
import { ALL_POSTS, PLANNERS, SENDERS } from './crew.ts';
import type { EveningFacts } from './facts.ts';
import { Family, type Tally } from './families.ts';
import { readStored } from './read-facts.ts';
import type { Stage } from './stage.ts';
import { type Harm, makeTrouble, type Rhythm, type Trouble } from './trouble.ts';
import { untilRest } from './until-rest.ts';

const ZONE = 'Europe/London';

/** How long, and how hard, an evening is. */
export interface Hardship {
  readonly rhythm: Rhythm;
  /** Trouble lasts this long at most in each of its parts. */
  readonly longestMs: number;
  /** And this long at least. */
  readonly shortestMs: number;
  readonly lagMs: number;
  readonly tapMs: number;
}

export interface EveningPlan {
  readonly day: SchoolDay;
  readonly random: Random;
  readonly hardship: Hardship;
  readonly tally: Tally;
  readonly harm: Harm;
}

/**
 * One evening of the whole school under trouble: the evenings go out, families play; nudges; on Fridays the digest; then quiet
 * hours. On one evening in four nobody can send from nudge time until quiet hours. Returns all that is known of it.
 */
export async function playEvening(stage: Stage, plan: EveningPlan): Promise<EveningFacts> {
  const { clock, client, crew, school } = stage;
  const { day, random, hardship } = plan;
  const at = (text: string) => instantAt(day, time(text), ZONE);
  const from = at('17:30');
  const families = school.households.map(
    (household) =>
      new Family({ ...stage, ...hardship }, household, {
        ...{ random, tally: plan.tally },
        since: at('12:00'),
      }),
  );
  const blocking = families.filter((family) => family.blocks);
  const phones = blocking.flatMap(({ household }) => household.phones);
  await clock.moveTo(at('17:29'));
  for (const phone of phones) await client.block(phone);
  await struggle(stage, plan, { families, at: from, time: 'evening' });
  const isSilenced = random.int(4) === 0;
  if (isSilenced) {
    for (const sender of SENDERS) await crew.strike(sender);
    await goTo(stage, at('19:01'));
    await untilRest(stage, families, { senders: false });
  } else {
    await struggle(stage, plan, { families, at: at('19:01'), time: 'nudge' });
    await goTo(stage, at('19:45'));
    await untilRest(stage, families);
  }
  await goTo(stage, new Date(at('21:00').getTime() + 20_000));
  await crew.start(ALL_POSTS);
  await untilRest(stage, families);
  for (const phone of phones) await client.unblock(phone);
  await untilRest(stage, families);
  return {
    hours: { from: from.getTime(), to: at('21:00').getTime() },
    families: families.map((family) => family.evening),
    calls: stage.traffic.take(),
    ...(await readStored(stage.sql, day)),
    ...{ perSecond: stage.perSecond, stalls: stage.takeStalls(), outages: plan.harm.outages },
  };
}

/** Moves the clock; the planners, killed before, look at it at once when they start. What is done `there` begins before that. */
async function goTo(
  { clock, crew, tell }: Stage,
  instant: Date,
  there: () => void = () => {},
): Promise<void> {
  tell(`to ${instant.toISOString()}`);
  for (const planner of PLANNERS) await crew.strike(planner);
  if (instant > clock.now()) await clock.moveTo(instant);
  there();
  await crew.start(PLANNERS);
}

interface Part {
  readonly families: readonly Family[];
  readonly at: Date;
  readonly time: 'evening' | 'nudge';
}

/** Trouble from before anything is planned until most is done, then calm until everything is. */
async function struggle(
  stage: Stage,
  { random, hardship, harm }: EveningPlan,
  { families, at, time }: Part,
): Promise<void> {
  const over = new AbortController();
  const lives = Promise.all(families.map((family) => family.live(time, over.signal)));
  const { now } = stage.clock;
  let trouble: Trouble | undefined;
  await goTo(stage, at, () => {
    trouble = makeTrouble({ ...stage, ...hardship, random, now }, harm);
  });
  const begin = Date.now();
  await delay(hardship.shortestMs);
  while (Date.now() - begin < hardship.longestMs) {
    await delay(500);
    const [row] =
      await stage.sql`select count(*)::int as n from ledger where status = 'planned'`.catch(() => [
        { n: 1 },
      ]);
    const busy = families.filter(({ isBusy }) => isBusy).length;
    if (row?.n === 0 && busy * 20 < families.length) break;
  }
  await trouble?.end();
  await untilRest(stage, families);
  over.abort();
  await lives;
}
