import { type Role, readRoles } from './roles.ts';
import { settings } from './settings.ts';

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
  /** The address that ports listen on, and the port on which the process can be watched. */
  readonly listenOn: string;
  readonly healthPort: number | undefined;
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
      /** How updates come in; absent, the process asks for them. */
      readonly webhook: Webhook | undefined;
    }
);

/** Where the service brings updates: the address that it calls, and the port behind it. */
export interface Webhook {
  readonly url: string;
  readonly port: number;
}

const SERVICE = 'https://api.telegram.org';
/** Bot API, setWebhook, "Notes": the ports that are supported. A server of one's own takes any, and HTTP too. */
const WEBHOOK_PORTS = ['443', '80', '88', '8443'];

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
    listenOn: rest.LISTEN_ON,
    healthPort: rest.HEALTH_PORT,
    clockStart: CLOCK_START ? new Date(CLOCK_START) : undefined,
  };
  const { roles, isPart } = rolesOf(args, { DATABASE_URL: rest.DATABASE_URL, BOT_TOKEN });
  if (!BOT_TOKEN && !isPart) return { ...common, mode: 'rehearsal', port: rest.PORT };
  const { WEBHOOK_URL: url, WEBHOOK_PORT: port } = rest;
  if (url !== undefined) checkWebhook(url, API_ROOT !== undefined);
  return {
    ...{ ...common, mode: 'live', roles, isPart, sendsASecond: rest.SENDS_A_SECOND },
    webhook: url === undefined ? undefined : { url, port },
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

/** What the service itself would refuse, or call in vain. */
function checkWebhook(address: string, isOwnServer: boolean): void {
  const { protocol, port, pathname, search, hash } = new URL(address);
  if (pathname !== '/' || search !== '' || hash !== '') {
    throw new ConfigError(
      'WEBHOOK_URL: is an address without a path, like https://bot.example.org. The path is ours, and secret.',
    );
  }
  if (isOwnServer) return;
  if (protocol !== 'https:' || !WEBHOOK_PORTS.includes(port || '443')) {
    throw new ConfigError(
      `WEBHOOK_URL: the chat service calls https:// on port ${WEBHOOK_PORTS.join(', ')} only. Put a proxy with a certificate there.`,
    );
  }
}

function isLoopback(url: string): boolean {
  return ['127.0.0.1', 'localhost', '[::1]'].includes(new URL(url).hostname);
}
