import { readTable } from './raw-rows.ts';
import type { LogLine, World } from './world.ts';

/**
 * What no log line may contain: the token, every join code and invitation that was told, every child's nickname, the titles of
 * classes, and everything that anybody typed, commands without words aside.
 */
export async function secretsOf(world: World): Promise<string[]> {
  const children = await readTable(world.store, 'child');
  const accounts = await world.client.accounts();
  const chats = await Promise.all(accounts.map(({ id }) => world.client.chat(id)));
  const typed = chats
    .flat()
    .filter((message) => message.from === 'person')
    .flatMap((message) => message.text.split('\n'))
    .filter((line) => line.length > 3 && !/^\/[a-z]+$/.test(line));
  const classes = await readTable(world.store, 'class');
  return [
    ...new Set([
      world.rehearsal.token,
      ...codesIn(chats.flat().map((message) => message.text)),
      ...children.map((child) => String(child.nickname)),
      ...classes.map((row) => String(row.title)),
      ...typed,
    ]),
  ];
}

/** The codes of the links in some texts. */
function codesIn(texts: readonly string[]): string[] {
  return texts.flatMap((text) =>
    [...text.matchAll(/\bstart[= ](?:t-)?([\w-]{22})(?![\w-])/g)].flatMap(([, code]) => code ?? []),
  );
}

/** The log lines that contain a secret as a word of its own, in their event or in any field, in capitals or not. */
export function leaksIn(lines: readonly LogLine[], secrets: readonly string[]): LogLine[] {
  const wanted = secrets.map(
    (secret) => new RegExp(`(?<![\\p{L}\\d])${escaped(secret)}(?![\\p{L}\\d])`, 'iu'),
  );
  return lines.filter((line) =>
    wanted.some((secret) => textsIn(line).some((text) => secret.test(text))),
  );
}

function escaped(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');
}

/** Every text in a value, however deep, names of fields included. */
export function textsIn(value: unknown): string[] {
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, inner]) => [key, ...textsIn(inner)]);
  }
  return [String(value)];
}

/** The log lines of a world that tell a nickname or what somebody typed. There must be none. */
export async function leaksOf(world: World): Promise<LogLine[]> {
  return leaksIn(world.logged, await secretsOf(world));
}
