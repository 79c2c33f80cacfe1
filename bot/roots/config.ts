import { z } from 'zod';
import { type Role, readRoles } from './roles.ts';

/** Every setting, in one table: what it means is said here and in the README. All are optional. */
const settings = z.object({
  BOT_TOKEN: z
    .string()
    .transform((text) => text.split(',').map((token) => token.trim()))
    .refine(
      (tokens) => tokens.every((token) => /^\d+:[\w-]+$/.test(token)),
      'looks like 123456:ABC-DEF, as the chat service gave it to you; several are parted by commas',
    )
    .refine(
      (tokens) => new Set(tokens.map((token) => token.split(':')[0])).size === tokens.length,
      'names the same bot twice',
    )
    .optional(),
  DATABASE_URL: z
    .string()
    .regex(/^postgres(ql)?:\/\//, 'begins with postgres://')
    .optional(),
  DATA_DIR: z.string().min(1).default('data'),
  PORT: z.coerce
    .number('is a port from 0 (any that is free) to 65535')
    .int('is a whole number')
    .min(0, 'is 0 or more')
    .max(65_535, 'is at most 65535')
    .default(8080),
  LOG_LEVEL: z
    .enum(['debug', 'info', 'warn', 'error', 'silent'], 'is debug, info, warn, error or silent')
    .optional(),
  TEACHERS: z.enum(['invite', 'open'], 'is invite or open').default('invite'),
  API_ROOT: z.url('is an address like http://127.0.0.1:8081').optional(),
  SENDS_A_SECOND: z.coerce
    .number('is a number of messages a second')
    .positive('is more than 0')
    .max(100_000, 'is at most 100000')
    .optional(),
  FFMPEG: z.string().min(1).optional(),
  CLOCK_START: z.iso.datetime('is an instant like 2026-09-14T17:25:00Z').optional(),
});

/** How this process runs. In rehearsal nothing leaves the computer. */
export type Config = {
  readonly databaseUrl: string | undefined;
  readonly dataDir: string;
  readonly logLevel: string;
  /** A program that codes clips in place of the one we bring; it is only ever called as a program of its own. */
  readonly ffmpeg: string | undefined;
  readonly clockStart: Date | undefined;
  /** Who may become a teacher: who is invited, or anybody. */
  readonly teachers: 'invite' | 'open';
} & (
  | { readonly mode: 'rehearsal'; readonly port: number }
  | {
      readonly mode: 'live';
      /** One for each bot. */
      readonly tokens: readonly string[];
      readonly apiRoot: string;
      /** What this process does. `isPart`: other processes do the rest. */
      readonly roles: ReadonlySet<Role>;
      readonly isPart: boolean;
      /** For bots that are allowed another rate than most. */
      readonly sendsASecond: number | undefined;
    }
);

const SERVICE = 'https://api.telegram.org';

/** A setting that cannot be used; the message says which, why, and what to do. */
export class ConfigError extends Error {}

/**
 * Reads the settings, and the roles from the command line. Without BOT_TOKEN it is a rehearsal.
 *
 * @throws {ConfigError} one line for each setting that cannot be used.
 * @example
 * readConfig({}).mode; // 'rehearsal'
 */
export function readConfig(
  environment: Readonly<Record<string, string | undefined>>,
  args: readonly string[] = [],
): Config {
  const given = Object.fromEntries(Object.entries(environment).filter(([, value]) => value !== ''));
  const parsed = settings.safeParse(given);
  if (!parsed.success) {
    const problems = parsed.error.issues.map(
      (issue) => `${issue.path.join('.')}: ${issue.message}`,
    );
    throw new ConfigError(`Please mend these settings.\n${problems.join('\n')}`);
  }
  const { BOT_TOKEN, API_ROOT, CLOCK_START, ...rest } = parsed.data;
  const isHere = API_ROOT !== undefined && isLoopback(API_ROOT);
  if (CLOCK_START && BOT_TOKEN && !isHere) {
    throw new ConfigError('CLOCK_START: only a rehearsal may choose its time. Unset it.');
  }
  const common = {
    databaseUrl: rest.DATABASE_URL,
    dataDir: rest.DATA_DIR,
    logLevel: rest.LOG_LEVEL ?? (BOT_TOKEN ? 'info' : 'warn'),
    ffmpeg: rest.FFMPEG,
    teachers: rest.TEACHERS,
    clockStart: CLOCK_START ? new Date(CLOCK_START) : undefined,
  };
  const { roles, isPart } = rolesOf(args, { DATABASE_URL: rest.DATABASE_URL, BOT_TOKEN });
  if (!BOT_TOKEN && !isPart) return { ...common, mode: 'rehearsal', port: rest.PORT };
  return {
    ...{ ...common, mode: 'live', roles, isPart, sendsASecond: rest.SENDS_A_SECOND },
    ...{ tokens: BOT_TOKEN ?? [], apiRoot: API_ROOT ?? SERVICE },
  };
}

/** A process that does a part of the work shares a server's database with the others; only planning calls no chat service. */
function rolesOf(
  args: readonly string[],
  given: { readonly DATABASE_URL: string | undefined; readonly BOT_TOKEN: unknown },
): { readonly roles: ReadonlySet<Role>; readonly isPart: boolean } {
  const read = readRoles(args);
  if ('problem' in read) throw new ConfigError(read.problem);
  const { roles, asked } = read;
  if (asked && !given.DATABASE_URL) {
    throw new ConfigError(
      'DATABASE_URL: a process with --role shares its database with others. Set it to a Postgres server, or leave --role out.',
    );
  }
  const plansOnly = roles.size === 1 && roles.has('tick');
  if (asked && !given.BOT_TOKEN && !plansOnly) {
    throw new ConfigError(
      'BOT_TOKEN: --role is for a bot of the chat service; only --role=tick does without a token. Set it, or leave --role out to rehearse.',
    );
  }
  return { roles, isPart: asked };
}

function isLoopback(url: string): boolean {
  return ['127.0.0.1', 'localhost', '[::1]'].includes(new URL(url).hostname);
}
