import { pino } from 'pino';
import type { Log } from '../../db/index.ts';

/** Structured lines on standard error. What they may hold is decided where they are written: ids, counts, codes. */
export function createLog(level: string): Log {
  return pino({ level, base: null }, pino.destination(2));
}
