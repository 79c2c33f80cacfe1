import {
  type Drill,
  type EveningInput,
  type FactId,
  type RungId,
  rungById,
} from '../../../drills/index.ts';
import { day } from './day.ts';

/** An evening of Tuesday with ten cards of each rung, for a child of whom nothing is known unless said otherwise. */
export function anEvening(
  rungs: readonly RungId[],
  rest: Partial<EveningInput> = {},
): EveningInput {
  return {
    plan: { parts: rungs.map((rung) => ({ rung, cards: 10, seconds: 3 })) },
    memory: new Map(),
    lastStarts: new Map(),
    today: day('2026-09-08'),
    seed: 'wren|2026-09-08',
    ...rest,
  };
}

/** A rung's facts in their own order. */
export function factsOf(id: RungId): readonly FactId[] {
  const rung = rungById(id);
  if (rung?.kind !== 'facts') throw new Error(`no facts on ${id}`);
  return rung.facts;
}

/** The cards of each part; none for a run. */
export function cardsOf({ parts }: Drill): readonly (readonly FactId[])[] {
  return parts.map((part) => (part.kind === 'facts' ? part.cards : []));
}

/** Where the first run of a drill starts. */
export function startOf({ parts }: Drill): number {
  const run = parts.find(({ kind }) => kind === 'run');
  if (run?.kind !== 'run') throw new Error('the drill has no run');
  return run.start;
}
