import { bkt } from '../../../drills/memory/bkt.ts';
import { boxes } from '../../../drills/memory/boxes.ts';
import { fsrs } from '../../../drills/memory/fsrs.ts';
import { graded } from '../../../drills/memory/graded.ts';
import { byModel } from './model-policy.ts';
import { ORACLES } from './oracle.ts';
import { missedFirst, sameRandomCards } from './plain-policies.ts';
import type { Policy } from './policy.ts';

export const BASELINE = sameRandomCards.name;
export const OURS = 'graded (ours)';

/** All that are compared, by name, in the order of the table. */
export const POLICIES: ReadonlyMap<string, Policy> = new Map(
  [
    sameRandomCards,
    missedFirst,
    byModel(boxes, 'five boxes'),
    byModel(fsrs, 'FSRS-6'),
    byModel(bkt, 'knowledge tracing'),
    byModel(graded, OURS),
    ...ORACLES,
  ].map((policy) => [policy.name, policy]),
);
