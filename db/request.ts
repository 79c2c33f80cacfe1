import { AsyncLocalStorage } from 'node:async_hooks';

/** A piece of work that began outside: an update, a message that is owed, a call to our own door. */
export interface Request {
  /** By which all log lines of the work are found together: a number of ours or of the service, never of a person. */
  readonly id: string;
  /** When it came in, of what somebody waits for. */
  readonly since?: Date;
}

const request = new AsyncLocalStorage<Request>();

/**
 * Does work for a request: every line logged meanwhile, however deep and however many awaits later, bears its id. Whoever takes
 * something up (an update, a delivery, a call) calls it once, so that nothing between has to carry an id along.
 *
 * @example
 * inRequest({ id: 'update 9001/7' }, () => currentRequest()?.id); // 'update 9001/7'
 */
export function inRequest<T>(current: Request, work: () => T): T {
  return request.run(current, work);
}

/**
 * The request that is being worked on; undefined for what a process does by itself, as the clock's work.
 *
 * @example
 * currentRequest(); // undefined
 */
export function currentRequest(): Request | undefined {
  return request.getStore();
}
