import type { Service } from '../service.ts';
import type { CallBody, Upload } from './body.ts';
import { readParams } from './read-params.ts';
import type { MethodName, Params } from './schemas.ts';

export interface CallExtras {
  readonly uploads: ReadonlyMap<string, Upload>;
  /** Aborted when the caller hangs up. */
  readonly signal: AbortSignal;
}

/** One method of the Bot API: takes a call, answers with the `result`, throws ApiError. */
export type Method = (service: Service, body: CallBody, signal: AbortSignal) => Promise<unknown>;

/** Builds a method whose parameters are checked before it runs. */
export function method<M extends MethodName>(
  name: M,
  run: (service: Service, params: Params<M>, extras: CallExtras) => unknown,
): Method {
  return async (service, { params, uploads }, signal) =>
    run(service, readParams(name, params), { uploads, signal });
}
