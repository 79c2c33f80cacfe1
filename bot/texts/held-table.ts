import { say } from '../language/index.ts';

const CODES = [
  ...(['clip', 'pictures', 'single', 'words', 'card', 'unmissed'] as const),
  ...(['greeting', 'evening', 'reminder', 'nudge', 'moved', 'fewer_evenings'] as const),
  ...(['class_stopped', 'class_resumed', 'erasing', 'kept_after_all'] as const),
  ...(['parent', 'sibling', 'adult'] as const),
  ...(['planned', 'attempting', 'sent', 'failed', 'unknown'] as const),
] as const;

/**
 * A stored code (a way, a kind of message, how its sending ended, who a helper is) in the reader's language; one without words of its own, as
 * it is stored.
 *
 * @example
 * heldCode('sent'); // 'sent', in German 'gesendet'
 */
export function heldCode(stored: string): string {
  const code = CODES.find((each) => each === stored);
  return code ? say(`held-table-code-${code}`) : stored;
}
