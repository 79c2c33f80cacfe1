/** How many updates of one person wait at a time. More than a family or a teacher taps while the bot is down. Our choice. */
export const MOST_WAITING = 40;

interface Sent {
  readonly actorId: number | null;
}

/**
 * Which of the updates that came in are kept: of each person as many as fit below {@link MOST_WAITING}. `told` is the first one
 * left out of each person who was not told lately. Updates of nobody are all kept; the service sends us none in a flood.
 *
 * @example
 * const full = { waiting: new Map([[7, 40]]), told: new Set<number>() };
 * shareOut([{ actorId: 7 }, { actorId: 8 }], full); // { kept: [{ actorId: 8 }], told: [{ actorId: 7 }] }
 */
export function shareOut<U extends Sent>(
  updates: readonly U[],
  before: {
    readonly waiting: ReadonlyMap<number | null, number>;
    readonly told: ReadonlySet<number | null>;
  },
): { kept: U[]; told: U[] } {
  const waiting = new Map(before.waiting);
  const toldBefore = new Set(before.told);
  const kept: U[] = [];
  const told: U[] = [];
  for (const update of updates) {
    const own = waiting.get(update.actorId) ?? 0;
    if (update.actorId === null || own < MOST_WAITING) {
      waiting.set(update.actorId, own + 1);
      kept.push(update);
    } else if (!toldBefore.has(update.actorId)) {
      toldBefore.add(update.actorId);
      told.push(update);
    }
  }
  return { kept, told };
}
