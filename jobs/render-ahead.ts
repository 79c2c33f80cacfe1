import {
  getActivePlan,
  listDueChildren,
  listRunningClasses,
  listUnmarkedDrills,
  previewDrill,
  problemOf,
  type SchoolClass,
} from '../db/index.ts';
import { type Drill, type Language, minutesOf, timeOfDayFrom } from '../drills/index.ts';
import { type ClassDay, classDayAt } from './class-day.ts';
import type { PlanDeps } from './ports.ts';

/** How long before a family's time its evening is drawn. */
const AHEAD_MINUTES = 180;
const LAST_MINUTE = 24 * 60 - 1;

/** What drawing ahead needs. `prepare` draws one drill in its class's language and never rejects for a part that cannot be drawn. */
export interface RenderAheadDeps extends PlanDeps {
  prepare(drill: Drill, language: Language): Promise<void>;
}

/** Draws tonight's evenings before they are wanted, one after the other. */
export interface RenderAhead {
  /** Looks at the clock once and draws what is due. While a look is under way, another call waits for that one. */
  look(): Promise<void>;
  /** Looks no more, and ends the look under way; the drill being drawn is not waited for. */
  stop(): Promise<void>;
}

/**
 * In the three hours before a family's time its evening is composed as it will be, and drawn; so is an evening that was sent and
 * is not marked yet, in case nobody looked earlier. What is drawn in vain, because a plan or a late mark changed the evening, costs
 * a little work and nothing else. It remembers what it has drawn, so that a look each minute costs little; a restart draws
 * again, or finds it on disk.
 */
export function createRenderAhead(deps: RenderAheadDeps): RenderAhead {
  const drawn = new Set<string>();
  const stopping = new AbortController();
  const untilStopped = new Promise<void>((resolve) => {
    stopping.signal.addEventListener('abort', () => resolve(), { once: true });
  });
  let underWay: Promise<void> | null = null;
  const once: Once = async (key, language, compose) => {
    if (stopping.signal.aborted || drawn.has(key)) return;
    await Promise.race([deps.prepare(await compose(), language), untilStopped]);
    drawn.add(key);
  };
  const lookAll = async () => {
    for (const schoolClass of await listRunningClasses(deps.store)) {
      if (stopping.signal.aborted) return;
      await saying(deps, schoolClass.id, () => lookAtClass(deps, schoolClass, once));
    }
    // Keys carry their day: what is older than a term of evenings will not come again.
    if (drawn.size > MOST_REMEMBERED) drawn.clear();
  };
  return {
    look: async () => {
      if (stopping.signal.aborted) return;
      underWay ??= lookAll().finally(() => {
        underWay = null;
      });
      await underWay;
    },
    stop: async () => {
      stopping.abort();
      await underWay;
    },
  };
}

const MOST_REMEMBERED = 50_000;

/** Composes and draws what has not been drawn yet under a key. What failed is tried again at the next look. */
type Once = (key: string, language: Language, compose: () => Promise<Drill>) => Promise<void>;

/** Does one piece of work; what goes wrong with it is logged and leaves the others alone. */
async function saying(
  { log }: RenderAheadDeps,
  classId: string,
  work: () => Promise<void>,
): Promise<void> {
  try {
    await work();
  } catch (error) {
    log.warn({ classId, problem: problemOf(error) }, 'not_drawn_ahead');
  }
}

async function lookAtClass(
  deps: RenderAheadDeps,
  schoolClass: SchoolClass,
  once: Once,
): Promise<void> {
  const { store, clock } = deps;
  const now = clock.now();
  const today = await classDayAt(store, schoolClass, now);
  if (!today.isSchoolDay || now >= today.quietAt) return;
  const { day } = today;
  const { id: classId, language } = schoolClass;
  for (const { eveningId, drill } of await listUnmarkedDrills(store, { classId, day })) {
    await once(`${eveningId} ${language}`, language, async () => drill);
  }
  const plan = await getActivePlan(store, classId);
  if (!plan) return;
  for (const { id: childId } of await soonDue(deps, today)) {
    const wanted = { childId, day, plan: plan.plan };
    await saying(deps, classId, () =>
      once(`${childId} ${day} ${plan.id} ${language}`, language, () => previewDrill(store, wanted)),
    );
  }
}

function soonDue({ store }: RenderAheadDeps, { schoolClass, day, time }: ClassDay) {
  const until = timeOfDayFrom(Math.min(LAST_MINUTE, minutesOf(time) + AHEAD_MINUTES));
  return listDueChildren(store, { classId: schoolClass.id, day, after: time, until });
}
