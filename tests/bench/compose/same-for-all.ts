import {
  createRandom,
  type Drill,
  type DrillPart,
  type EveningInput,
  rungById,
} from '../../../drills/index.ts';

/**
 * The evening everybody would get without any memory: random cards of each rung, a run from a random start, the same for the
 * whole class. It is the least that composing can cost, to compare with.
 */
export function composeSameForAll({ plan, today }: EveningInput): Drill {
  const parts = plan.parts.map(({ rung: id, cards, seconds }, index): DrillPart => {
    const rung = rungById(id);
    if (rung === null) throw new RangeError(`no such rung: ${id}`);
    const random = createRandom(`${today}|${index}|${id}`);
    if (rung.kind === 'facts') {
      const drawn = random.shuffle(rung.facts).slice(0, cards);
      return { kind: 'facts', strand: rung.strand, rung: id, seconds, cards: drawn };
    }
    const { strand, step } = rung;
    const start = step * random.int(rung.limit / step + 2 - cards);
    return { kind: 'run', strand, rung: id, seconds, start, step, length: cards };
  });
  return { version: 0, parts };
}
