import type { RungId, Strand } from '../ladder/rung.ts';
import { RUNGS, rungById } from '../ladder/rungs.ts';
import type { MemoryModel } from '../memory/model.ts';
import { judgeSecurity, type Level } from './judge-security.ts';
import { practisedEvenings } from './practised-evenings.ts';
import type { ChildWeek, PartScore, WeekInput } from './week.ts';

/** One child beside what it was marked on this week, and what can be said of it on each rung, in the order of the ladder. */
export interface JudgedChild {
  readonly child: ChildWeek;
  readonly parts: readonly PartScore[];
  readonly levels: ReadonlyMap<RungId, Level>;
}

/** Judges every child on every rung it has marks on this week. Each judgement is made once and used wherever it counts. */
export function judgeClass(
  { children, days, today }: WeekInput,
  model: MemoryModel,
): JudgedChild[] {
  return children.map((child) => {
    const parts = practisedEvenings(child, days)
      .flatMap((evening) => evening.parts)
      .filter(({ asked }) => asked > 0);
    const practised = new Set(parts.map(({ rung }) => rung));
    const levels = RUNGS.filter(({ id }) => practised.has(id)).map((rung) => {
      const own = parts.filter((part) => part.rung === rung.id);
      const { level } = judgeSecurity(rung, { memory: child.memory, parts: own }, today, model);
      return [rung.id, level] as const;
    });
    return { child, parts, levels: new Map(levels) };
  });
}

/** From the level that decides for a whole strand to the one that decides last. */
const DECIDES: readonly Level[] = ['not_yet', 'in_between', 'secure', 'too_few'];

/**
 * Where a child stands in a whole strand: at the weakest of its rungs that can be judged, so that it is secure in a strand only
 * when it is on each of them. A rung with too few answers says nothing, unless there is no other. Null without marks.
 *
 * @example
 * levelIn('halves', new Map([['halves.to10', 'secure'], ['halves.to20', 'not_yet']])); // 'not_yet'
 */
export function levelIn(strand: Strand, levels: ReadonlyMap<RungId, Level>): Level | null {
  const own = [...levels].flatMap(([id, level]) =>
    rungById(id)?.strand === strand ? [level] : [],
  );
  return DECIDES.find((level) => own.includes(level)) ?? null;
}
