import { parseArgs } from 'node:util';
import { benchBytes } from './bytes.ts';
import { benchEvenings } from './evening.ts';
import { say } from './measure.ts';
import { benchMemory } from './memory.ts';
import { benchSpeed } from './speed.ts';
import { benchWordsOnly } from './words-only.ts';

/** Measures clips: bytes, speed, an evening of many children, memory. `--children` and `--clips` say how many. */
async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      children: { type: 'string', default: '200' },
      clips: { type: 'string', default: '200' },
    },
  });
  await benchBytes();
  benchWordsOnly();
  await benchSpeed();
  await benchEvenings(wholeNumber('children', values.children));
  await benchMemory(wholeNumber('clips', values.clips));
}

function wholeNumber(name: string, text: string): number {
  const value = Number(text);
  if (Number.isInteger(value) && value >= 8 && value <= 100_000) return value;
  throw new RangeError(`Got ${text} for --${name}: give a whole number from 8 to 100000.`);
}

main().catch((error) => {
  say(error instanceof Error ? error.message : String(error));
  process.exit(1);
});
