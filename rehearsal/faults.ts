import { z } from 'zod';

export const faultSchema = z.object({
  /** A method's name, or `*` for any. */
  method: z.string().min(1),
  /**
   * `drop_before` cuts the connection with nothing applied; `apply_then_drop` after applying;
   * `apply_then_hang` applies and never answers; `http_502` and `error` apply nothing.
   */
  mode: z.enum(['drop_before', 'apply_then_drop', 'apply_then_hang', 'http_502', 'error']),
  /** How many calls it strikes. */
  count: z.int().positive(),
  /** For mode `error`; a 500 when absent. `retryAfter` is seconds. */
  error: z
    .object({
      code: z.int().min(400).max(599),
      description: z.string(),
      retryAfter: z.int().optional(),
    })
    .optional(),
});

/** Something going wrong on purpose. */
export type Fault = z.output<typeof faultSchema>;

export interface Faults {
  set(fault: Fault): void;
  clear(): void;
  /** The fault that strikes this call, used up by one. The oldest matching one comes first. */
  take(method: string): Fault | undefined;
}

export function createFaults(): Faults {
  let faults: Fault[] = [];
  return {
    set: (fault) => {
      faults.push({ ...fault });
    },
    clear: () => {
      faults = [];
    },
    take: (method) => {
      const fault = faults.find(
        (it) => it.method === '*' || it.method.toLowerCase() === method.toLowerCase(),
      );
      if (fault === undefined) return undefined;
      fault.count -= 1;
      if (fault.count === 0) faults = faults.filter((it) => it !== fault);
      return fault;
    },
  };
}
