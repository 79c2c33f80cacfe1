import type { FactId } from '../facts/fact-id.ts';
import type { RungId, Strand } from '../ladder/rung.ts';
import type { Adjustment } from './adjustment.ts';
import type { Variant } from './variant.ts';

/**
 * A stretch of cards from one rung, or from several shuffled: `also` names the others, which may be of other strands than the
 * first. `cards` are distinct facts in the order they are shown; `seconds` is the pace per card.
 */
export interface FactPart {
  readonly kind: 'facts';
  readonly strand: Exclude<Strand, 'counting'>;
  readonly rung: RungId;
  readonly also?: readonly RungId[];
  readonly seconds: number;
  readonly cards: readonly FactId[];
}

/**
 * One counting task: say `start`, then `start + step`, and so on until `length` numbers are said.
 * `step` is negative when counting back; every number stays within 0 and the rung's limit.
 */
export interface RunPart {
  readonly kind: 'run';
  readonly strand: 'counting';
  readonly rung: RungId;
  readonly seconds: number;
  readonly start: number;
  readonly step: number;
  readonly length: number;
}

/** One strand's stretch of an evening. */
export type DrillPart = FactPart | RunPart;

/**
 * One child's drill for one school day. `version`, from 1 up, says which composer chose it; the parts themselves say all that
 * is shown and marked, so an evening of any version can be. `variant` says how it was made from the plan; a drill without
 * one is full. `adjusted` says how the plan was changed for this child first; a drill without it is as the class has it.
 */
export interface Drill {
  readonly version: number;
  readonly variant?: Variant;
  readonly adjusted?: Adjustment;
  readonly parts: readonly DrillPart[];
}
