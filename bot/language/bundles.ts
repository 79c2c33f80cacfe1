import { readdirSync, readFileSync } from 'node:fs';
import { FluentBundle, FluentResource } from '@fluent/bundle';
import type { Language } from '../../drills/index.ts';
import { localeOf } from './locale.ts';

const FOLDER = new URL('../texts/', import.meta.url);
const bundles = new Map<Language, FluentBundle>();

/**
 * All messages of a language, from the Fluent files in its folder of bot/texts. Read once, when somebody first needs them.
 * Throws what the file system throws when the folder is not there.
 *
 * @example
 * bundleOf('fr').hasMessage('buttons-done'); // true
 */
export function bundleOf(language: Language): FluentBundle {
  const known = bundles.get(language);
  if (known) return known;
  // Names are isolated in `name()`, only where it is needed: marks round every number would show on some phones.
  const bundle = new FluentBundle(localeOf(language), { useIsolating: false });
  const folder = new URL(`${language}/`, FOLDER);
  for (const file of readdirSync(folder).filter((entry) => entry.endsWith('.ftl'))) {
    bundle.addResource(new FluentResource(readFileSync(new URL(file, folder), 'utf8')));
  }
  bundles.set(language, bundle);
  return bundle;
}
