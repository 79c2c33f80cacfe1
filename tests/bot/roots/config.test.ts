import { describe, expect, it } from 'vitest';
import { ConfigError, readConfig } from '../../../bot/roots/config.ts';

const TOKEN = '123456:ABC-DEF';

function problemOf(environment: Record<string, string>, args: string[] = []): string {
  try {
    readConfig(environment, args);
  } catch (error) {
    if (error instanceof ConfigError) return error.message;
    throw error;
  }
  return 'no problem';
}

describe('settings', () => {
  it('that are absent mean a rehearsal', () => {
    expect(readConfig({})).toEqual({
      mode: 'rehearsal',
      port: 8080,
      dataDir: 'data',
      databaseUrl: undefined,
      logLevel: 'warn',
      ffmpeg: undefined,
      teachers: 'invite',
      clockStart: undefined,
      listenOn: '127.0.0.1',
      healthPort: undefined,
    });
  });

  it('that are empty count as absent', () => {
    expect(readConfig({ BOT_TOKEN: '', PORT: '', DATA_DIR: '', LOG_LEVEL: '' })).toEqual(
      readConfig({}),
    );
  });

  it('with a token mean the real service, and more is logged', () => {
    expect(readConfig({ BOT_TOKEN: TOKEN })).toMatchObject({
      mode: 'live',
      tokens: [TOKEN],
      apiRoot: 'https://api.telegram.org',
      logLevel: 'info',
    });
  });

  it('are taken as they are given', () => {
    const environment = {
      BOT_TOKEN: TOKEN,
      DATABASE_URL: 'postgresql://user@127.0.0.1/suppersums',
      DATA_DIR: '/var/lib/suppersums',
      LOG_LEVEL: 'debug',
      API_ROOT: 'http://127.0.0.1:8081',
      FFMPEG: '/usr/bin/ffmpeg',
    };
    expect(readConfig(environment)).toMatchObject({
      databaseUrl: environment.DATABASE_URL,
      dataDir: environment.DATA_DIR,
      logLevel: 'debug',
      apiRoot: environment.API_ROOT,
      ffmpeg: environment.FFMPEG,
    });
    expect(readConfig({ PORT: '0' })).toMatchObject({ port: 0 });
  });

  it('of others are passed over', () => {
    expect(readConfig({ HOME: '/root', PATH: '' })).toEqual(readConfig({}));
  });
});

describe('a setting that cannot be used', () => {
  it.each([
    ['BOT_TOKEN', 'hello', 'looks like 123456:ABC-DEF'],
    ['BOT_TOKEN', '123456:ABC DEF', 'looks like 123456:ABC-DEF'],
    ['BOT_TOKEN', '123456:ABC-DEF,123456:GHI', 'names the same bot twice'],
    ['SENDS_A_SECOND', '0', 'is more than 0'],
    ['DATABASE_URL', 'mysql://127.0.0.1/x', 'begins with postgres://'],
    ['PORT', 'eighty', 'is a port from 0'],
    ['PORT', '70000', '65535'],
    ['PORT', '-1', '0'],
    ['PORT', '80.5', 'is a whole number'],
    ['LOG_LEVEL', 'loud', 'debug'],
    ['API_ROOT', 'nowhere', 'is an address like http://127.0.0.1:8081'],
    ['WEBHOOK_URL', 'nowhere', 'is an address like https://bot.example.org'],
    ['WEBHOOK_PORT', '70000', '65535'],
    ['HEALTH_PORT', 'x', 'is a port from 0'],
    ['LISTEN_ON', 'everywhere', 'is an address of this computer'],
    ['CLOCK_START', 'monday', 'is an instant like 2026-09-14T17:25:00Z'],
    ['CLOCK_START', '2026-09-14', 'is an instant like'],
    ['CLOCK_START', '2026-09-14T17:25:00', 'is an instant like'],
  ])('is named, and so is what it should be: %s=%s', (name, value, should) => {
    const [head, ...problems] = problemOf({ [name]: value }).split('\n');
    expect(head).toBe('Please mend these settings.');
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatch(new RegExp(`^${name}: `));
    expect(problems[0]).toContain(should);
  });

  it('never hides another one', () => {
    const message = problemOf({ PORT: 'x', LOG_LEVEL: 'x', API_ROOT: 'x' });
    expect(
      message
        .split('\n')
        .slice(1)
        .map((line) => line.split(':')[0]),
    ).toEqual(['PORT', 'LOG_LEVEL', 'API_ROOT']);
  });

  it('never shows the token', () => {
    expect(problemOf({ BOT_TOKEN: 'secret words' })).not.toContain('secret');
  });
});

describe('the time a clock starts at', () => {
  const CLOCK_START = '2026-09-14T17:25:00Z';

  it('may be chosen in a rehearsal', () => {
    expect(readConfig({ CLOCK_START }).clockStart).toEqual(new Date(CLOCK_START));
  });

  it.each(['http://127.0.0.1:8081', 'http://localhost:8081', 'http://[::1]:8081'])(
    'may be chosen for a service on this computer: %s',
    (API_ROOT) => {
      const config = readConfig({ CLOCK_START, BOT_TOKEN: TOKEN, API_ROOT });
      expect(config.clockStart).toEqual(new Date(CLOCK_START));
    },
  );

  it.each([
    undefined,
    'https://api.telegram.org',
    'http://127.0.0.1.example.org',
    'http://localhost.example.org',
    'http://127.0.0.1@example.org',
    'http://192.168.0.7:8081',
  ])('is refused for a real address: %s', (API_ROOT) => {
    expect(() => readConfig({ CLOCK_START, BOT_TOKEN: TOKEN, API_ROOT })).toThrow(
      'CLOCK_START: only a rehearsal may choose its time. Unset it.',
    );
  });
});

describe('the roles of a process', () => {
  const SHARED = { BOT_TOKEN: TOKEN, DATABASE_URL: 'postgres://127.0.0.1/suppersums' };

  it('are all of them, unless some are asked for', () => {
    const all = ['receive', 'work', 'send', 'tick'];
    expect(readConfig(SHARED)).toMatchObject({ roles: new Set(all), isPart: false });
    const some = readConfig(SHARED, ['--role=receive,tick']);
    expect(some).toMatchObject({ roles: new Set(['receive', 'tick']), isPart: true });
    expect(readConfig(SHARED, ['--role', 'send'])).toMatchObject({ roles: new Set(['send']) });
  });

  it('need a database that processes can share, and a token unless they only plan', () => {
    expect(problemOf({ BOT_TOKEN: TOKEN }, ['--role=send'])).toContain('DATABASE_URL: ');
    const { DATABASE_URL } = SHARED;
    expect(problemOf({ DATABASE_URL }, ['--role=send,tick'])).toContain('BOT_TOKEN: ');
    expect(readConfig({ DATABASE_URL }, ['--role=tick'])).toMatchObject({ tokens: [] });
  });

  it.each(['--role=sender', '--role=', '--roles=send', 'send'])(
    'that are not known are named with those that are: %s',
    (arg) => {
      expect(problemOf(SHARED, [arg])).toContain('receive, work, send, tick');
    },
  );

  it('work for several bots, whose tokens are parted by commas', () => {
    const tokens = ['1:a-b', '2:c_d'];
    expect(readConfig({ BOT_TOKEN: tokens.join(', ') })).toMatchObject({ tokens });
  });
});

describe('who may become a teacher', () => {
  it('is whoever is invited, unless the operator opens it to anybody', () => {
    expect(readConfig({}).teachers).toBe('invite');
    expect(readConfig({ TEACHERS: 'open' }).teachers).toBe('open');
    expect(problemOf({ TEACHERS: 'all' })).toContain('TEACHERS: is invite or open');
  });
});

describe('the address of a webhook', () => {
  const url = (WEBHOOK_URL: string, more: Record<string, string> = {}) => ({
    ...{ BOT_TOKEN: TOKEN, WEBHOOK_URL },
    ...more,
  });

  it('makes the service bring the updates; without it the bot asks for them', () => {
    const webhook = { url: 'https://bot.example.org', port: 8082 };
    expect(readConfig(url(webhook.url))).toMatchObject({ webhook });
    expect(readConfig({ BOT_TOKEN: TOKEN })).toMatchObject({ webhook: undefined });
    const more = { WEBHOOK_PORT: '9000', HEALTH_PORT: '9000', LISTEN_ON: '0.0.0.0' };
    expect(readConfig(url(webhook.url, more))).toMatchObject({
      ...{ webhook: { port: 9000 }, healthPort: 9000, listenOn: '0.0.0.0' },
    });
  });

  // Bot API, setWebhook, notes: "Ports currently supported for webhooks: 443, 80, 88, 8443".
  it.each([
    'https://a.example',
    'https://a.example:443/',
    'https://a.example:88',
    'https://a.example:8443',
  ])('is one that the service calls: %s', (address) => {
    expect(problemOf(url(address))).toBe('no problem');
  });

  it.each(['http://a.example', 'https://a.example:8080', 'http://a.example:80'])(
    'is not one that it never calls: %s; a server of one’s own may',
    (address) => {
      expect(problemOf(url(address))).toContain('WEBHOOK_URL: the chat service calls https://');
      const own = url(address, { API_ROOT: 'http://127.0.0.1:8081' });
      expect(problemOf(own)).toBe('no problem');
    },
  );

  it.each(['https://a.example/bot', 'https://a.example/?x=1', 'https://a.example/#x'])(
    'has no path of its own: %s',
    (address) => {
      expect(problemOf(url(address))).toContain('WEBHOOK_URL: is an address without a path');
    },
  );
});
