import { machineClock } from '../roots/clocks.ts';
import { openStore } from '../roots/open-store.ts';
import { runCli } from './program.ts';

process.exit(
  await runCli(process.argv.slice(2), {
    environment: process.env,
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(`${text}\n`),
    terminal: process.stderr.isTTY ? process.stderr : null,
    now: machineClock.now,
    open: openStore,
  }),
);
