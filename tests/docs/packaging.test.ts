import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { parse } from 'yaml';
import { z } from 'zod';
import { readConfig } from '../../bot/roots/config.ts';
import { EXIT } from '../../bot/roots/failure.ts';
import { ROLES } from '../../bot/roots/roles.ts';
import { LONGEST_STOP_MS } from '../../bot/roots/stop-in-time.ts';
import { SET_BY_COMPOSE } from './env-example.ts';

const ROOT = join(import.meta.dirname, '..', '..');
const read = (file: string) => readFileSync(join(ROOT, file), 'utf8');

const service = z.object({
  command: z.tuple([z.literal('start'), z.string()]),
  environment: z.record(z.string(), z.string()),
  read_only: z.literal(true),
  tmpfs: z.array(z.string()),
  volumes: z.array(z.string()),
  stop_grace_period: z.string(),
  ports: z.array(z.string()).default([]),
});
const file = parse(read('docker-compose.yml'), { merge: true });
const BOTS = Object.entries(file.services).flatMap(([name, each]) =>
  name === 'postgres' ? [] : [{ name, ...service.parse(each) }],
);
const DOCKERFILE = read('bot/Dockerfile');
const UNIT = read('bot/guides/suppersums.service');

/** The value of an instruction of the Dockerfile, or of a line of the unit. */
function after(text: string, start: string): string {
  const line = text.split('\n').find((each) => each.startsWith(start));
  if (line === undefined) throw new Error(`no line begins with ${start}`);
  return line.slice(start.length);
}

it('the services take every role once, with settings that the bot accepts', () => {
  const roles = BOTS.flatMap(({ environment, command: [, role] }) => {
    const given = { ...environment, BOT_TOKEN: '123456:ABC-DEF' };
    const config = readConfig(given, [role]);
    return config.mode === 'live' ? [...config.roles] : [];
  });
  expect(roles.sort()).toEqual([...ROLES].sort());
});

it('the example of a file of settings says which of them the services set themselves', () => {
  for (const { environment } of BOTS) {
    expect(Object.keys(environment).sort()).toEqual([...SET_BY_COMPOSE].sort());
  }
});

it('no port is open to other computers', () => {
  const ports = Object.values(z.record(z.string(), z.looseObject({})).parse(file.services)).flatMap(
    ({ ports = [] }) => z.array(z.string()).parse(ports),
  );
  expect(ports).toHaveLength(2);
  expect(ports.filter((port) => !port.startsWith('127.0.0.1:'))).toEqual([]);
});

it('a bot writes to its volume and to memory only, both where the image expects them', () => {
  const folder = after(DOCKERFILE, 'ENV DATA_DIR=');
  expect(JSON.parse(after(DOCKERFILE, 'VOLUME '))).toEqual([folder]);
  for (const { environment, volumes, tmpfs } of BOTS) {
    expect(volumes).toEqual([`data:${folder}`]);
    expect(tmpfs).toEqual(['/tmp']);
    expect(environment.DATA_DIR).toBe(folder);
  }
});

it('the image runs what exists, not as root, and is stopped as the bot expects', () => {
  const [, entry] = JSON.parse(after(DOCKERFILE, 'ENTRYPOINT '));
  const [, probe] = JSON.parse(after(DOCKERFILE, 'HEALTHCHECK ').replace(/^.*CMD /, ''));
  expect([entry, probe].filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  expect(after(DOCKERFILE, 'USER ')).toBe('node');
  expect(after(DOCKERFILE, 'STOPSIGNAL ')).toBe('SIGTERM');
  for (const { environment } of BOTS) {
    expect(after(DOCKERFILE, 'ENV HEALTH_PORT=')).toBe(environment.HEALTH_PORT);
  }
});

it('whoever stops the bot waits longer than its own stop takes', () => {
  const grace = BOTS.map((each) => Number.parseInt(each.stop_grace_period, 10) * 1000);
  const unit = Number(after(UNIT, 'TimeoutStopSec=')) * 1000;
  expect([...grace, unit].filter((ms) => ms <= LONGEST_STOP_MS)).toEqual([]);
});

it('the service of the system starts what exists, and does not try again what cannot work', () => {
  const [, path = ''] = after(UNIT, 'ExecStart=').split(' ');
  expect(existsSync(join(ROOT, path))).toBe(true);
  expect(Number(after(UNIT, 'RestartPreventExitStatus='))).toBe(EXIT.wrongUse);
});

it('nothing but what it needs is sent to the image: no data, no settings, no tests', () => {
  const lines = read('.dockerignore')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const letIn = lines.filter((line) => line.startsWith('!')).map((line) => line.slice(1));
  expect(lines[0]).toBe('*');
  const copied = [...DOCKERFILE.matchAll(/^COPY (?!--from)(.*) \S+$/gm)].flatMap(([, what = '']) =>
    what.split(' '),
  );
  expect([...new Set(copied)].sort()).toEqual(letIn.sort());
});
