import type { LoggedCall } from '../../rehearsal/client.ts';

/** Accepted calls that carried a picture's bytes instead of the id of an earlier upload. */
export function uploadsIn(log: readonly LoggedCall[]): readonly LoggedCall[] {
  return log.filter(
    (call) => call.status === 200 && JSON.stringify(call.params).includes('attach://'),
  );
}

/** Accepted calls that put a picture before somebody. */
export function picturesIn(log: readonly LoggedCall[]): readonly LoggedCall[] {
  return log.filter(
    (call) => call.status === 200 && ['sendPhoto', 'editMessageMedia'].includes(call.method),
  );
}
