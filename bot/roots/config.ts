import { z } from 'zod';

/** Every setting, in one table: what it means is said here and in the README. All are optional. */
const settings = z.object({
  BOT_TOKEN: z
    .string()
    .regex(/^\d+:[\w-]+$/, 'looks like 123456:ABC-DEF, as the chat service gave it to you')
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
  | { readonly mode: 'live'; readonly token: string; readonly apiRoot: string }
);

const SERVICE = 'https://api.telegram.org';

/** A setting that cannot be used; the message says which, why, and what to do. */
export class ConfigError extends Error {}

/**
 * Reads the settings. Without BOT_TOKEN it is a rehearsal.
 *
 * @throws {ConfigError} one line for each setting that cannot be used.
 * @example
 * readConfig({}).mode; // 'rehearsal'
 */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
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
  if (!BOT_TOKEN) return { ...common, mode: 'rehearsal', port: rest.PORT };
  return { ...common, mode: 'live', token: BOT_TOKEN, apiRoot: API_ROOT ?? SERVICE };
}

function isLoopback(url: string): boolean {
  return ['127.0.0.1', 'localhost', '[::1]'].includes(new URL(url).hostname);
}
