import { FluentNumber, type FluentVariable } from '@fluent/bundle';
import { bundleOf } from './bundles.ts';
import type { Messages } from './messages.ts';
import { readerLanguage } from './reader.ts';

/** The name of a message. */
export type MessageKey = keyof Messages;

/** What a message is given: nothing, or its variables by name. */
type Given<K extends MessageKey> = [keyof Messages[K]] extends [never] ? [] : [values: Messages[K]];

/**
 * A message in the language of whoever reads it. Keys and variables are checked by the compiler against the English files;
 * tests/language proves that each language has the same.
 *
 * @example
 * say('words-minutes', { count: 1 }); // '1 minute'
 */
export function say<K extends MessageKey>(key: K, ...given: Given<K>): string {
  const bundle = bundleOf(readerLanguage());
  const message = bundle.getMessage(key);
  // Nothing but a broken installation leads here. Better a key in the log than an empty message on a phone.
  if (!message?.value) throw new Error(`there is no message "${key}"`);
  return bundle.formatPattern(message.value, shown(given[0] ?? {}));
}

/** Numbers are written as they are: no point or blank between thousands. */
function shown(values: object): Record<string, FluentVariable> {
  return Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      typeof value === 'number' ? new FluentNumber(value, { useGrouping: false }) : value,
    ]),
  );
}
