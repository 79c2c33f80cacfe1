/**
 * How one child's evenings differ from the class's plan. `steps` is -1 for the step before each of the plan's, 1 for the step
 * after it; `fewer` is for fewer cards; `untimed` for cards without a pace.
 */
export interface Adjustment {
  readonly steps: -1 | 0 | 1;
  readonly fewer: boolean;
  readonly untimed: boolean;
}

/** An evening as the class has it. */
export const UNADJUSTED: Adjustment = { steps: 0, fewer: false, untimed: false };

/**
 * Whether there is any difference from the class at all.
 *
 * @example
 * isAdjusted({ steps: 0, fewer: false, untimed: true }); // true
 */
export function isAdjusted({ steps, fewer, untimed }: Adjustment): boolean {
  return steps !== 0 || fewer || untimed;
}
