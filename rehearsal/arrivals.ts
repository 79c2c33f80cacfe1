import type { Faults } from './faults.ts';
import type { PendingUpdate } from './state.ts';

/**
 * What reaches the bot's queue when an update comes: the update, or by a fault the update twice, or nothing until the next
 * one has come before it.
 */
export function createArrivals(faults: Faults): (update: PendingUpdate) => PendingUpdate[] {
  let late: PendingUpdate[] = [];
  return (update) => {
    const mode = faults.takeForUpdate();
    if (mode === 'reorder_updates') {
      late.push(update);
      return [];
    }
    const overtaken = late;
    late = [];
    // A copy, so that each of the two is taken by itself.
    return mode === 'duplicate_updates'
      ? [update, { ...update }, ...overtaken]
      : [update, ...overtaken];
  };
}
