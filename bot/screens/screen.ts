import type { Action } from '../callback/actions.ts';
import { pack } from '../callback/codec.ts';
import type { Text } from '../texts/words.ts';

/** A picture that is only drawn when it has to be uploaded. `hash` names its content. */
export interface Picture {
  readonly hash: string;
  paint(): Uint8Array;
}

/** A short video that is only made when it has to be uploaded. `hash` names its content, `seconds` is how long it lasts. */
export interface Clip {
  readonly hash: string;
  readonly seconds: number;
  /** The file, or null when it is not there soon enough. Never rejects. */
  make(): Promise<Uint8Array | null>;
}

/** A button: what it says and what it asks for. */
export interface Button {
  readonly label: string;
  readonly data: string;
}

/**
 * What one message shows. The clip comes first, the picture replaces it when it is not ready or is refused, and `words` replace
 * the picture when it cannot be drawn or sent.
 */
export interface Screen {
  readonly text: Text;
  readonly buttons: readonly (readonly Button[])[];
  readonly clip?: Clip | undefined;
  readonly picture?: Picture | undefined;
  readonly words?: string | undefined;
}

/** A button for an action. */
export function button(label: string, action: Action): Button {
  return { label, data: pack(action) };
}

/**
 * Buttons in rows of `width`.
 *
 * @example
 * rows(['a', 'b', 'c'], 2); // [['a', 'b'], ['c']]
 */
export function rows<T>(items: readonly T[], width: number): T[][] {
  const out: T[][] = [];
  for (let at = 0; at < items.length; at += width) out.push(items.slice(at, at + width));
  return out;
}
