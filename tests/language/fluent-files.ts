import { readdirSync, readFileSync } from 'node:fs';
import {
  FluentParser,
  type Message,
  type SelectExpression,
  type VariableReference,
  Visitor,
} from '@fluent/syntax';
import type { Language } from '../../drills/index.ts';

/** A message of a Fluent file: its variables, those that choose a plural, and the plurals each choice names. */
export interface FluentMessage {
  readonly key: string;
  readonly file: string;
  readonly variables: ReadonlySet<string>;
  readonly counts: ReadonlySet<string>;
  readonly plurals: readonly (readonly string[])[];
  readonly entry: Message;
}

/** What a person reads in a file, message by message; `junk` is what Fluent could not read. */
export interface FluentFile {
  readonly name: string;
  readonly messages: readonly FluentMessage[];
  readonly junk: readonly string[];
}

const FOLDER = new URL('../../bot/texts/', import.meta.url);
const PLURAL = /^(zero|one|two|few|many|other)$/;

/** The Fluent files of a language, by name. */
export function fluentFiles(language: Language): FluentFile[] {
  const folder = new URL(`${language}/`, FOLDER);
  return readdirSync(folder)
    .filter((name) => name.endsWith('.ftl'))
    .toSorted()
    .map((name) => readFluent(name, readFileSync(new URL(name, folder), 'utf8')));
}

/** Reads one file's text. */
export function readFluent(name: string, text: string): FluentFile {
  const { body } = new FluentParser({ withSpans: false }).parse(text);
  return {
    name,
    messages: body
      .filter((entry) => entry.type === 'Message')
      .map((entry) => describe(name, entry as Message)),
    junk: body.filter((entry) => entry.type === 'Junk').map((entry) => entry.content),
  };
}

function describe(file: string, entry: Message): FluentMessage {
  const variables = new Set<string>();
  const counts = new Set<string>();
  const plurals: string[][] = [];
  class Reader extends Visitor {
    override visitVariableReference({ id }: VariableReference) {
      variables.add(id.name);
    }
    override visitSelectExpression(node: SelectExpression) {
      const keys = node.variants.map(({ key }) =>
        key.type === 'Identifier' ? key.name : key.value,
      );
      const named = keys.filter((key) => PLURAL.test(key));
      if (named.length > 0 && node.selector.type === 'VariableReference') {
        const isCount = keys.every((key) => PLURAL.test(key) || /^\d+$/.test(key));
        if (isCount && (named.length > 1 || keys.length > named.length)) {
          counts.add(node.selector.id.name);
          plurals.push(keys);
        }
      }
      this.genericVisit(node);
    }
  }
  new Reader().visit(entry);
  return { key: entry.id.name, file, variables, counts, plurals, entry };
}
