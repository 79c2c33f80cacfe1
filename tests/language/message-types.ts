import type { FluentMessage } from './fluent-files.ts';

/** The text of bot/language/messages.ts: each message of the English files with its variables. */
export function messageTypes(messages: readonly FluentMessage[]): string {
  const lines = messages
    .toSorted((a, b) => (a.key < b.key ? -1 : 1))
    .map((message) => `  ${quoted(message.key)}: ${shape(message)};`);
  return [
    '// Written by `npm run texts` from the files in bot/texts/en. Do not edit.',
    '',
    '/** Shown as it is. */',
    'export type Shown = string | number;',
    '',
    '/** No variables. */',
    'export type None = Record<never, never>;',
    '',
    '/** Every message and its variables; a number chooses a plural. */',
    'export interface Messages {',
    ...lines,
    '}',
    '',
  ].join('\n');
}

function shape({ variables, counts }: FluentMessage): string {
  const fields = [...variables]
    .toSorted()
    .map((name) => `${name}: ${counts.has(name) ? 'number' : 'Shown'}`);
  return fields.length === 0 ? 'None' : `{ ${fields.join('; ')} }`;
}

/** As the formatter would write it: quotes only where they are needed. */
function quoted(key: string): string {
  return /^[a-z_$][\w$]*$/i.test(key) ? key : `'${key}'`;
}
