import { randomUUID } from 'node:crypto';
import postgres from 'postgres';
import { inject } from 'vitest';
import { type OpenStore, openEmbedded, openServer } from '../../db/index.ts';
import { TEMPLATE } from './global-postgres.ts';

/** A back end to run the same test on. */
export interface Backend {
  readonly name: string;
  open(): Promise<OpenStore>;
}

const ignoreEngineNoise = () => {};

/** A fresh database in this process's memory. */
export const embedded: Backend = {
  name: 'the embedded database',
  open: () => openEmbedded(undefined, ignoreEngineNoise),
};

/** A fresh database on the real server. */
export const server: Backend = {
  name: 'a Postgres server',
  open: async () => openServer(await createDatabase(), ignoreEngineNoise),
};

/** Both back ends, for `describe.each`. */
export const backends: readonly Backend[] = [embedded, server];

/** Copies the migrated template to a new database and returns its address. */
export async function createDatabase(): Promise<string> {
  return createFrom(TEMPLATE);
}

/** Creates a database that nobody has migrated yet and returns its address. */
export async function createEmptyDatabase(): Promise<string> {
  return createFrom('template0');
}

async function createFrom(template: string): Promise<string> {
  const base = inject('postgresUrl');
  const name = `test_${randomUUID().replaceAll('-', '')}`;
  const admin = postgres(`${base}/postgres`, { max: 1, onnotice: () => {} });
  await admin.unsafe(`create database ${name} template ${template}`);
  await admin.end();
  return `${base}/${name}`;
}
