import { z } from 'zod';

const UPDATE_MODES = ['duplicate_updates', 'reorder_updates'] as const;

export const faultSchema = z.object({
  /** A method's name, or `*` for any. Without a meaning for the two modes that strike updates. */
  method: z.string().min(1),
  /**
   * `drop_before` cuts the connection with nothing applied; `apply_then_drop` after applying;
   * `apply_then_hang` applies and never answers; `slow` applies and answers late; `http_502` and `error` apply nothing.
   * `duplicate_updates` gives the bot the next update twice, `reorder_updates` gives it after the one that follows.
   */
  mode: z.enum([
    'drop_before',
    'apply_then_drop',
    'apply_then_hang',
    'slow',
    'http_502',
    'error',
    ...UPDATE_MODES,
  ]),
  /** How many calls, or updates, it strikes. */
  count: z.int().positive(),
  /** For mode `slow`: how late, by the machine's clock; 10 when absent. */
  seconds: z.number().positive().max(600).optional(),
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

export type UpdateMode = (typeof UPDATE_MODES)[number];

export interface Faults {
  set(fault: Fault): void;
  clear(): void;
  /** What is still to go wrong, oldest first. */
  all(): readonly Fault[];
  /** The fault that strikes this call, used up by one. The oldest matching one comes first. */
  take(method: string): Fault | undefined;
  /** The fault that strikes the update that comes now, used up by one. */
  takeForUpdate(): UpdateMode | undefined;
}

function updateMode({ mode }: Fault): UpdateMode | undefined {
  return UPDATE_MODES.find((it) => it === mode);
}

export function createFaults(): Faults {
  let faults: Fault[] = [];
  const use = (fault: Fault | undefined): Fault | undefined => {
    if (fault === undefined) return undefined;
    fault.count -= 1;
    if (fault.count === 0) faults = faults.filter((it) => it !== fault);
    return fault;
  };
  return {
    set: (fault) => {
      faults.push({ ...fault });
    },
    clear: () => {
      faults = [];
    },
    all: () => faults,
    take: (method) => {
      const hits = ({ method: wanted }: Fault): boolean =>
        wanted === '*' || wanted.toLowerCase() === method.toLowerCase();
      return use(faults.find((fault) => updateMode(fault) === undefined && hits(fault)));
    },
    takeForUpdate: () => {
      const fault = use(faults.find((it) => updateMode(it) !== undefined));
      return fault === undefined ? undefined : updateMode(fault);
    },
  };
}
