import type { Action, ActionKind } from '../callback/actions.ts';
import { classTaps } from './class-taps.ts';
import { eveningTaps } from './evening-taps.ts';
import { gradeTaps } from './grade-taps.ts';
import { joinTaps } from './join-taps.ts';
import { linkTaps } from './link-taps.ts';
import { planTaps } from './plan-taps.ts';
import { printTaps } from './print-taps.ts';
import type { Tap, TapHandlers } from './tap.ts';
import { wayTaps } from './way-taps.ts';

/** Every action has its handler here; the compiler says so when one is missing. */
const handlers: TapHandlers<ActionKind> = {
  ...joinTaps,
  ...eveningTaps,
  ...classTaps,
  ...linkTaps,
  ...planTaps,
  ...printTaps,
  ...gradeTaps,
  ...wayTaps,
};

/** Hands a tap to its handler. */
export async function routeTap(tap: Tap, action: Action): Promise<void> {
  await handle(action.kind, tap, action);
}

function handle<K extends ActionKind>(
  kind: K,
  tap: Tap,
  action: Extract<Action, { kind: K }>,
): Promise<void> {
  return handlers[kind](tap, action);
}
