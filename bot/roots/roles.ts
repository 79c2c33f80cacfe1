import { parseArgs } from 'node:util';

/**
 * What a process can do. `receive` takes updates in, `work` handles them, `send` sends what is owed, `tick` plans what falls
 * due. Any number of processes may do each; they agree by the database.
 */
export const ROLES = ['receive', 'work', 'send', 'tick'] as const;
export type Role = (typeof ROLES)[number];

/** Roles as they were asked for on the command line, or what is wrong with them. Nothing asked for is all of them. */
export type RolesAsked =
  | { readonly roles: ReadonlySet<Role>; readonly asked: boolean }
  | { readonly problem: string };

/**
 * Reads `--role=send`, or several as `--role=receive,tick`.
 *
 * @example
 * readRoles(['--role=receive,tick']); // { roles: new Set(['receive', 'tick']), asked: true }
 */
export function readRoles(args: readonly string[]): RolesAsked {
  const usage = `--role takes one or more of ${ROLES.join(', ')}, as in --role=receive,tick. Leave it out for all of them.`;
  try {
    const { values } = parseArgs({ args: [...args], options: { role: { type: 'string' } } });
    if (values.role === undefined) return { roles: new Set(ROLES), asked: false };
    const names = values.role.split(',').map((name) => name.trim());
    const roles = names.map((name) => ROLES.find((role) => role === name));
    const unknown = names.filter((_, place) => roles[place] === undefined);
    if (unknown.length > 0) return { problem: `“${unknown.join(', ')}” is no role. ${usage}` };
    return { roles: new Set(roles.flatMap((role) => role ?? [])), asked: true };
  } catch (error) {
    return { problem: `${error instanceof Error ? error.message : String(error)}. ${usage}` };
  }
}
