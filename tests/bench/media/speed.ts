import { createClipMaker } from '../../../bot/clip/index.ts';
import { rungClip } from './drills.ts';
import { coreMs, median, say, table } from './measure.ts';

const ROUNDS = 15;

/** How long a clip takes: the first of a process's thread against later ones, and two pictures a second against one. */
export async function benchSpeed(): Promise<void> {
  say(`Core milliseconds for a clip of 15 cards, medians of ${ROUNDS} (cold: 5):`);
  const rows: string[][] = [
    ['rung', 'cold', 'warm', 'cold/warm', 'clips/s', 'at 1 a second', '2 / 1'],
  ];
  for (const rung of ['bonds.to10', 'halves.to20', 'clock.mixed']) rows.push(await speedOf(rung));
  table(rows);
}

async function speedOf(rung: string): Promise<string[]> {
  const cold: number[] = [];
  for (let i = 0; i < 5; i += 1) {
    const fresh = createClipMaker();
    cold.push(await coreMs(() => fresh.make(rungClip(rung, `cold ${i}`, 15))));
    await fresh.close();
  }
  const two = createClipMaker();
  const one = createClipMaker({ picturesPerSecond: 1 });
  await Promise.all([two, one].map((maker) => maker.make(rungClip(rung, 'warm up', 15))));
  const [twos, ones]: [number[], number[]] = [[], []];
  for (let i = 0; i < ROUNDS; i += 1) {
    const input = rungClip(rung, `warm ${i}`, 15);
    twos.push(await coreMs(() => two.make(input)));
    ones.push(await coreMs(() => one.make(input)));
  }
  await Promise.all([two.close(), one.close()]);
  const [first, later, slow] = [median(cold), median(twos), median(ones)];
  return [
    rung,
    first.toFixed(0),
    later.toFixed(0),
    (first / later).toFixed(1),
    (1000 / later).toFixed(1),
    slow.toFixed(0),
    (later / slow).toFixed(2),
  ];
}
