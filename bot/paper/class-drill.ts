import {
  composeEvening,
  createRandom,
  type Drill,
  drawFacts,
  rungsInPart,
  type SchoolDay,
  type WeekPlan,
} from '../../drills/index.ts';

/**
 * A drill for nobody in particular, or for a child of whom no mark is known: as planned, but each part's cards are drawn by
 * chance from the whole of its rungs. For an unknown child the composer takes the easiest cards first, and would on paper, where
 * nothing is learned back, take the same ones every week.
 *
 * Throws RangeError for a plan with a rung that does not exist.
 *
 * @example
 * classDrill(plan, monday, 'Kingfisher').parts.length; // 5 for a plan of five parts
 */
export function classDrill(plan: WeekPlan, today: SchoolDay, seed: string): Drill {
  const drill = composeEvening({ plan, memory: new Map(), lastStarts: new Map(), today, seed });
  const parts = drill.parts.map((part) => {
    if (part.kind !== 'facts') return part;
    const random = createRandom(`${seed} ${rungsInPart(part).join('+')}`);
    return { ...part, cards: drawFacts(part, random) };
  });
  return { ...drill, parts };
}
