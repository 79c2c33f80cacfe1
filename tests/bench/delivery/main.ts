import { parseArgs } from 'node:util';
import { benchBroadcast } from './broadcast.ts';
import { say } from './figures.ts';
import { benchPlanner } from './planner.ts';
import { type BenchServer, startServer } from './server.ts';
import { benchProcesses, benchSpeed, benchTaps } from './speed.ts';
import { wholeClasses } from './stage.ts';

const USAGE = `npm run bench:delivery -- [--only planner,broadcast,speed,taps,processes] [--families 10000]
  [--fast 2000] [--sizes 1000,100000,1000000]
Families are those of a broadcast in real time (10,000 take six minutes each of three ways); --fast those of the parts without limits.`;

/** Measures delivery and planning as ratios in one run, on a Postgres server of its own. */
async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      only: { type: 'string', default: 'planner,broadcast,speed,taps,processes' },
      families: { type: 'string', default: '10000' },
      fast: { type: 'string', default: '2000' },
      sizes: { type: 'string', default: '1000,100000,1000000' },
    },
  });
  const families = wholeClasses(wholeNumber('families', values.families));
  const fast = wholeClasses(wholeNumber('fast', values.fast));
  const sizes = values.sizes.split(',').map((size) => wholeClasses(wholeNumber('sizes', size)));
  const parts: Readonly<Record<string, (server: BenchServer) => Promise<void>>> = {
    planner: (server) => benchPlanner(server, sizes),
    broadcast: (server) => benchBroadcast(server, families),
    speed: (server) => benchSpeed(server, fast),
    taps: (server) => benchTaps(server, families),
    processes: (server) => benchProcesses(server, fast),
  };
  const wanted = values.only.split(',');
  if (wanted.some((part) => !parts[part])) throw new RangeError(USAGE);
  const server = await startServer();
  try {
    for (const part of wanted) await parts[part]?.(server);
  } finally {
    await server.stop();
  }
}

function wholeNumber(name: string, text: string): number {
  const value = Number(text);
  if (Number.isInteger(value) && value >= 1 && value <= 1_000_000) return value;
  throw new RangeError(
    `Got ${text} for --${name}: give whole numbers from 1 to 1000000.\n${USAGE}`,
  );
}

main().catch((error) => {
  say(error instanceof Error ? error.message : String(error));
  process.exit(1);
});
