import type { Gate, GateCall } from '../../rehearsal/server.ts';

/** A call of the bot that the service has received and not yet looked at. */
export interface HeldCall {
  readonly params: GateCall['params'];
  release(verdict: 'apply' | 'drop'): void;
}

/** A hand on the service's door: counts the calls that pass, and stops them there. */
export interface Door {
  readonly gate: Gate;
  /** Lets `count` more calls of a method pass and resolves once the last one is there. */
  passed(method: string, count: number): Promise<void>;
  /**
   * Lets `after` more calls of a method pass and holds those that follow. Resolves once `count` of them are held; later ones
   * are held too, until the door is opened.
   */
  hold(method: string, after: number, count: number): Promise<readonly HeldCall[]>;
  /** Resolves when the bot asks for updates beyond this one: all up to it are its own then. */
  acknowledged(updateId: number): Promise<void>;
  /** Holds nothing any more. What is held stays so until it is released. */
  open(): void;
}

interface Watch {
  /** Says what becomes of a call; undefined when it is none of this watch's business. */
  look(call: GateCall): Promise<'apply' | 'drop'> | undefined;
  readonly holds: boolean;
}

/** A door that lets everything pass until told otherwise. */
export function createDoor(): Door {
  let watches: Watch[] = [];
  return {
    gate: async (call) => {
      const verdicts = watches.map((watch) => watch.look(call));
      return (await verdicts.find((verdict) => verdict !== undefined)) ?? 'apply';
    },
    passed: (method, count) =>
      new Promise((resolve) => {
        let seen = 0;
        const look = (call: GateCall) => {
          if (call.method !== method) return undefined;
          seen += 1;
          if (seen === count) resolve();
          return undefined;
        };
        watches.push({ look, holds: false });
      }),
    hold: (method, after, count) =>
      new Promise((resolve) => {
        let seen = 0;
        const held: HeldCall[] = [];
        const look = (call: GateCall) => {
          if (call.method !== method) return undefined;
          seen += 1;
          if (seen <= after) return undefined;
          return new Promise<'apply' | 'drop'>((release) => {
            held.push({ params: call.params, release });
            if (held.length === count) resolve(held);
          });
        };
        watches.push({ look, holds: true });
      }),
    acknowledged: (updateId) =>
      new Promise((resolve) => {
        const look = (call: GateCall) => {
          if (call.method === 'getUpdates' && Number(call.params.offset) > updateId) resolve();
          return undefined;
        };
        watches.push({ look, holds: false });
      }),
    open: () => {
      watches = watches.filter((watch) => !watch.holds);
    },
  };
}
