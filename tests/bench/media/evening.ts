import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  type ClipMaker,
  createCachedClipMaker,
  createClipMaker,
  createClipStore,
} from '../../../bot/clip/index.ts';
import { rungClip } from './drills.ts';
import { coreMs, say, table } from './measure.ts';

/** One part for each child of an evening: eight different drills among all, and one of their own each. */
export async function benchEvenings(children: number): Promise<void> {
  say(`One clip of 10 cards for each of ${children} children through the store:`);
  const rows: (string | number)[][] = [
    ['different drills', 'asked', 'made', 'core seconds', 'clips/s'],
  ];
  const seconds: number[] = [];
  for (const drills of [8, children]) {
    const { made, ms } = await playEvening(children, drills);
    seconds.push(ms / 1000);
    rows.push([
      drills,
      children,
      made,
      (ms / 1000).toFixed(1),
      ((1000 * children) / ms).toFixed(0),
    ]);
  }
  table(rows);
  say(
    `The store makes the evening ${((seconds[1] ?? 0) / (seconds[0] ?? 1)).toFixed(0)} times shorter.`,
  );
  say();
}

async function playEvening(
  children: number,
  drills: number,
): Promise<{ made: number; ms: number }> {
  const folder = await mkdtemp(join(tmpdir(), 'bench-clips-'));
  const maker = createClipMaker();
  await maker.make(rungClip('bonds.to10', 'warm up'));
  let made = 0;
  const counted: ClipMaker = {
    make: (input) => {
      made += 1;
      return maker.make(input);
    },
    close: maker.close,
  };
  const store = createClipStore({ folder, maxBytes: 500_000_000 });
  const clips = createCachedClipMaker({ maker: counted, store });
  const ms = await coreMs(() =>
    Promise.all(
      Array.from({ length: children }, (_, i) =>
        clips.make(rungClip('bonds.to10', `${i % drills}`)),
      ),
    ),
  );
  await clips.close();
  await rm(folder, { recursive: true });
  return { made, ms };
}
