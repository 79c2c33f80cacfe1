import { MEMORY_MODEL } from '../memory/default-model.ts';
import type { MemoryModel } from '../memory/model.ts';
import { UNADJUSTED } from './adjustment.ts';
import { COMPOSER_VERSION, composeEvening, type EveningInput } from './compose.ts';
import type { Drill } from './drill.ts';

/**
 * An evening of the past composed once more, as its composer did. `drill` is what was stored and `input` what it was made
 * from, the class's plan among it; the variant and the child's adjustment are the stored ones.
 *
 * Throws RangeError for a drill of a version that this release does not hold.
 *
 * @example
 * rebuildEvening(drill, input); // equal to drill, where it was composed from input
 */
export function rebuildEvening(
  { version, variant = 'full', adjusted = UNADJUSTED }: Omit<Drill, 'parts'>,
  input: EveningInput,
  model: MemoryModel = MEMORY_MODEL,
): Drill {
  if (version !== COMPOSER_VERSION) {
    throw new RangeError(
      `cannot rebuild a drill of version ${version}: this release holds version ${COMPOSER_VERSION} only; use the release that composed it`,
    );
  }
  return composeEvening({ ...input, variant, adjustment: adjusted }, model);
}
