import { v7 } from 'uuid';

/** A new id that sorts by creation time: UUID version 7 (RFC 9562), with the caller's instant inside. */
export function newId(now: Date): string {
  return v7({ msecs: now.getTime() });
}
