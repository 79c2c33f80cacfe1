import { spawnSync } from 'node:child_process';

/** From here on a known weakness fails the run; npm's own scale is info, low, moderate, high, critical. */
const FAILS = ['moderate', 'high', 'critical'];

/** Asks the registry about known weaknesses of what is installed. Where the registry does not answer such questions, it says so. */
function main(): void {
  const asked = spawnSync('npm', ['audit', '--json'], { encoding: 'utf8', shell: false });
  const { metadata, vulnerabilities, message } = readJson(asked.stdout);
  if (metadata === undefined) {
    // Not an answer: the registry is a mirror without this service, or there is no network.
    const why = String(message ?? asked.error?.message ?? `npm ended with ${asked.status}`);
    say(`audit: NOT MADE, the registry gave no answer (${why.split('\n')[0]})`);
    return;
  }
  const counts = FAILS.map((level) => [level, Number(metadata.vulnerabilities?.[level] ?? 0)]);
  const found = counts.filter(([, count]) => Number(count) > 0);
  if (found.length === 0) {
    say(`audit: nothing from ${FAILS[0]} on among ${metadata.dependencies?.total ?? '?'} packages`);
    return;
  }
  for (const { name, severity, range } of Object.values(vulnerabilities ?? {})) {
    if (FAILS.includes(severity)) say(`audit: ${severity} in ${name} ${range}`);
  }
  say(`audit: ${found.map(([level, count]) => `${count} ${level}`).join(', ')}; see npm audit`);
  process.exitCode = 1;
}

/** As much of npm's answer as is used. */
interface Answer {
  readonly message?: string;
  readonly metadata?: {
    readonly vulnerabilities?: Readonly<Record<string, number>>;
    readonly dependencies?: { readonly total?: number };
  };
  readonly vulnerabilities?: Readonly<
    Record<string, { readonly name: string; readonly severity: string; readonly range: string }>
  >;
}

function readJson(text: string): Answer {
  try {
    return JSON.parse(text);
  } catch {
    return {};
  }
}

function say(line: string): void {
  process.stdout.write(`${line}\n`);
}

main();
