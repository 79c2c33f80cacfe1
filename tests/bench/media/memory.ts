import { createClipMaker } from '../../../bot/clip/index.ts';
import { rungClip } from './drills.ts';
import { residentMb, say } from './measure.ts';

const POINTS = 10;

/** The memory of the process while it makes many clips, with its thread kept for all of them and replaced as usual. */
export async function benchMemory(clips: number): Promise<void> {
  for (const kept of [true, false]) {
    const maker = createClipMaker(kept ? { recycleAfter: Number.POSITIVE_INFINITY } : {});
    const curve: string[] = [residentMb().toFixed(0)];
    for (let i = 1; i <= clips; i += 1) {
      await maker.make(rungClip('bonds.to10', `memory ${i}`, 10));
      if (i % Math.ceil(clips / POINTS) === 0) curve.push(residentMb().toFixed(0));
    }
    await maker.close();
    const what = kept ? 'one thread throughout' : 'threads replaced as usual';
    say(`MB over ${clips} clips, ${what}: ${curve.join(' ')}`);
  }
  say();
}
