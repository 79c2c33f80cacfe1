import { readFileSync } from 'node:fs';

/** Repeats the test runner's own closing lines after the smoke run, and the counts on a plain line. */
const [, , json = '', log = ''] = process.argv;
const escapes = new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, 'g');
const lines = readFileSync(log, 'utf8').replace(escapes, '').split('\n');
const own = lines.filter((line) => /^\s*(Test Files|Tests|Start at|Duration)\s{2}/.test(line));
const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(json, 'utf8'));
process.stdout.write(`${own.join('\n')}\n`);
process.stdout.write(
  `Tests: ${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped\n`,
);
// Said once more, in case a runner's exit code is lost on the way.
if (numFailedTests > 0) process.exitCode = 1;
