import {
  getActivePlan,
  listDueChildren,
  listRunningClasses,
  listUnmarkedDrills,
  previewDrill,
  problemOf,
  type SchoolClass,
} from '../db/index.ts';
import { type Drill, minutesOf, timeOfDayFrom } from '../drills/index.ts';
import { type ClassDay, classDayAt } from './class-day.ts';
import type { PlanDeps } from './ports.ts';

/** How long before a family's time its evening is drawn. */
const AHEAD_MINUTES = 180;
const LAST_MINUTE = 24 * 60 - 1;

/** What drawing ahead needs. `prepare` draws one drill and never rejects for a part that cannot be drawn. */
export interface RenderAheadDeps extends PlanDeps {
  prepare(drill: Drill): Promise<void>;
}

/** Draws tonight's evenings before they are wanted, one after the other. */
export interface RenderAhead {
  /** Looks at the clock once and draws what is due. While a look is under way, another call waits for that one. */
  look(): Promise<void>;
  /** Ends after the drawing under way, and looks no more. */
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
  let underWay: Promise<void> | null = null;
  let stopped = false;
  const once = async (key: string, compose: () => Promise<Drill>) => {
    if (stopped || drawn.has(key)) return;
    drawn.add(key);
    await deps.prepare(await compose());
  };
  const lookAll = async () => {
    for (const schoolClass of await listRunningClasses(deps.store)) {
      try {
        await lookAtClass(deps, schoolClass, once);
      } catch (error) {
        deps.log.warn({ classId: schoolClass.id, problem: problemOf(error) }, 'not_drawn_ahead');
      }
    }
    // Keys carry their day: what is older than a term of evenings will not come again.
    if (drawn.size > MOST_REMEMBERED) drawn.clear();
  };
  return {
    look: async () => {
      if (stopped) return;
      underWay ??= lookAll().finally(() => {
        underWay = null;
      });
      await underWay;
    },
    stop: async () => {
      stopped = true;
      await underWay;
    },
  };
}

const MOST_REMEMBERED = 50_000;

async function lookAtClass(
  deps: RenderAheadDeps,
  schoolClass: SchoolClass,
  once: (key: string, compose: () => Promise<Drill>) => Promise<void>,
): Promise<void> {
  const { store, clock } = deps;
  const now = clock.now();
  const today = await classDayAt(store, schoolClass, now);
  if (!today.isSchoolDay || now >= today.quietAt) return;
  const { day } = today;
  const classId = schoolClass.id;
  for (const { eveningId, drill } of await listUnmarkedDrills(store, { classId, day })) {
    await once(eveningId, async () => drill);
  }
  const plan = await getActivePlan(store, classId);
  if (!plan) return;
  for (const { id: childId } of await soonDue(deps, today)) {
    await once(`${childId} ${day} ${plan.id}`, () =>
      previewDrill(store, { childId, day, plan: plan.plan }),
    );
  }
}

function soonDue({ store }: RenderAheadDeps, { schoolClass, day, time }: ClassDay) {
  const until = timeOfDayFrom(Math.min(LAST_MINUTE, minutesOf(time) + AHEAD_MINUTES));
  return listDueChildren(store, { classId: schoolClass.id, day, after: time, until });
}
