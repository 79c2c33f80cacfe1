import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { localeOf } from '../../bot/language/index.ts';
import { LANGUAGES, type Language } from '../../drills/index.ts';
import { type FluentMessage, fluentFiles, readFluent } from './fluent-files.ts';
import { messageTypes } from './message-types.ts';

const TAGS: readonly Language[] = ['en', 'af', 'es', 'de', 'fr'];
const OTHERS = TAGS.filter((tag) => tag !== 'en');
const files = new Map(TAGS.map((tag) => [tag, fluentFiles(tag)]));
const messagesOf = (tag: Language) => (files.get(tag) ?? []).flatMap(({ messages }) => messages);
const english = messagesOf('en');
const byKey = (tag: Language) => new Map(messagesOf(tag).map((each) => [each.key, each]));

it('there is a folder of messages for each language a class can have', () => {
  expect(TAGS.toSorted()).toEqual(Object.keys(LANGUAGES).toSorted());
  expect(english.length).toBeGreaterThan(900);
});

it('the types the compiler checks with are those of the English files', () => {
  const written = readFileSync(new URL('../../bot/language/messages.ts', import.meta.url), 'utf8');
  expect(written, 'run `npm run texts`').toBe(messageTypes(english));
});

describe.each(TAGS)('%s', (tag) => {
  it('has no line that Fluent cannot read', () => {
    expect(
      (files.get(tag) ?? []).flatMap(({ name, junk }) => junk.map((text) => [name, text])),
    ).toEqual([]);
  });

  it('has no key twice', () => {
    const keys = messagesOf(tag).map(({ key }) => key);
    expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
  });

  it('keeps each message in the file its key begins with', () => {
    const strays = messagesOf(tag).filter(
      ({ key, file }) => !key.startsWith(`${file.slice(0, -4)}-`),
    );
    expect(strays.map(({ key, file }) => [key, file])).toEqual([]);
  });

  it('names each plural its language has (CLDR, by way of ICU), but the one for millions', () => {
    const { pluralCategories } = new Intl.PluralRules(localeOf(tag)).resolvedOptions();
    const needed = pluralCategories.filter((category) => category !== 'many').toSorted();
    const odd = messagesOf(tag).flatMap(({ key, plurals }) =>
      plurals
        .map((named) => named.filter((each) => !/^\d+$/.test(each)).toSorted())
        .filter((named) => !isGoodChoice(named, needed))
        .map((named) => ({ key, named })),
    );
    expect(odd).toEqual([]);
  });
});

/** With a numeral's own sentence beside it, `one` may go without saying. */
function isGoodChoice(named: readonly string[], needed: readonly string[]): boolean {
  return (
    named.includes('other') && named.every((each) => needed.includes(each)) && named.length > 0
  );
}

describe.each(OTHERS)('%s beside English', (tag) => {
  const known = byKey(tag);

  it('has every message and no other', () => {
    expect([...known.keys()].toSorted()).toEqual(english.map(({ key }) => key).toSorted());
  });

  it('uses the same variables in each', () => {
    const differing = english.filter(({ key, variables }) => {
      const other = known.get(key);
      return other && !sameNames(variables, other.variables);
    });
    expect(differing.map(({ key }) => key)).toEqual([]);
  });

  it('chooses a plural wherever English does', () => {
    const missing = english.filter(({ key, counts }) => {
      const other = known.get(key);
      return other && [...counts].some((name) => !other.counts.has(name));
    });
    expect(missing.map(({ key }) => key)).toEqual([]);
  });

  it('is said in its own words: no sentence of three words is the English one', () => {
    const same = english.filter(
      (message) => wordsOf(message) >= 3 && textOf(known.get(message.key)) === textOf(message),
    );
    expect(same.map(({ key }) => key)).toEqual([]);
  });

  it('is marked as not checked, file by file', () => {
    const folder = new URL(`../../bot/texts/${tag}/`, import.meta.url);
    for (const { name } of files.get(tag) ?? []) {
      const [first] = readFileSync(new URL(name, folder), 'utf8').split('\n');
      expect(first, name).toBe('# Not checked by a native speaker.');
    }
  });
});

function sameNames(a: ReadonlySet<string>, b: ReadonlySet<string>): boolean {
  return a.size === b.size && [...a].every((name) => b.has(name));
}

function textOf(message: FluentMessage | undefined): string {
  return JSON.stringify(message?.entry.value?.elements ?? null);
}

function wordsOf({ entry }: FluentMessage): number {
  const texts = (entry.value?.elements ?? []).flatMap((element) =>
    element.type === 'TextElement' ? [element.value] : [],
  );
  return texts.join(' ').match(/\p{L}{2,}/gu)?.length ?? 0;
}

describe('reading a Fluent file', () => {
  it('tells what it cannot read', () => {
    expect(readFluent('x.ftl', 'x-a = { $n ->\n').junk).toHaveLength(1);
  });

  it('finds the variables and what chooses a plural', () => {
    const text =
      'x-a = { $n ->\n    [one] { $n } card of { $who }\n   *[other] { $n } cards\n  }\n';
    const [message] = readFluent('x.ftl', text).messages;
    expect([...(message?.variables ?? [])]).toEqual(['n', 'who']);
    expect([...(message?.counts ?? [])]).toEqual(['n']);
    expect(message?.plurals).toEqual([['one', 'other']]);
  });
});
