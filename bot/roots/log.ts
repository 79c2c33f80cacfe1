import { type DestinationStream, pino } from 'pino';
import { currentRequest, type Log } from '../../db/index.ts';

/**
 * Structured lines, on standard error unless said otherwise. What they may hold is decided where they are written: ids, counts,
 * codes. A line written while something is worked on bears the id of that request.
 */
export function createLog(
  level: string,
  destination: DestinationStream = pino.destination(2),
): Log {
  const mixin = () => {
    const request = currentRequest()?.id;
    return request === undefined ? {} : { request };
  };
  return pino({ level, base: null, mixin }, destination);
}
